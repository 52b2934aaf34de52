import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'posisi',
  'doubt.time': 'waktu',
  'accepted.doubt.s': 'Diterima: 0 sampai 600\u00a0s, satu simpangan baku.',
  'accepted.doubt.M': 'Diterima: 0 sampai 60\u00a0M, satu simpangan baku.',
  // unsure: "waktu zona" and "deskripsi zona" for zone time and zone description; older books say "waktu mintakat"
  'caution.time-by-hours': 'Benda angkasa akan berada di tempat ia terlihat bila waktunya diubah {hours} jam: apakah itu waktu zona, bukan UTC (deskripsi zona {hours}), atau jamnya keliru?',
  'caution.longitude-turned': 'Benda angkasa akan berada di tempat ia terlihat bila bujurnya {longitude}: apakah timur tertukar dengan barat?',
  'caution.latitude-turned': 'Benda angkasa akan berada di tempat ia terlihat bila lintangnya {latitude}: apakah utara tertukar dengan selatan?',
  'caution.lost-in-daylight': 'Pada waktu ini tinggi Matahari {sun}: dalam terang seperti ini {body} tidak tampak. Periksa tanggal, waktu dan benda angkasa.',
  'caution.lost-beside-sun': 'Pada waktu ini {body} terlalu dekat dengan Matahari untuk terlihat. Periksa tanggal, waktu dan benda angkasa.',
};
