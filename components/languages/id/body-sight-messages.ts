import type { Catalogue } from '../../shared/catalogue.js';

export const bodySightMessages: Catalogue = {
  'doubt.position': 'posisi',
  'doubt.time': 'waktu',
  'accepted.doubt.s': 'Diterima: 0 sampai 600 s, satu simpangan baku.',
  'accepted.doubt.M': 'Diterima: 0 sampai 60 M, satu simpangan baku.',
  'caution.other-side': 'Kesalahan {error} menempatkan benda angkasa di sisi lain pedoman: periksa baringan, benda angkasa dan waktu.',
  'caution.lost-in-daylight': 'Pada waktu ini tinggi Matahari {sun}: dalam terang seperti ini {body} tidak tampak. Periksa tanggal, waktu dan benda angkasa.',
  'caution.lost-beside-sun': 'Pada waktu ini Bulan begitu dekat dengan Matahari sehingga tidak tampak. Periksa tanggal, waktu dan benda angkasa.',
  'caution.gyro-error-large': 'Kesalahan gasing {error} itu besar: periksa benda angkasa, waktu, dan pedoman gasing beserta setelan kecepatan dan lintangnya.',
  'caution.far-from-card': 'Deviasi berbeda {difference} dari daftar, jauh melebihi ketidakpastian ± {doubt}: periksa benda angkasa, waktu dan pedoman, lalu daftar.',
  'caution.beyond-doubt-of-card': 'Deviasi berbeda {difference} dari daftar, lebih dari dua kali ketidakpastian ± {doubt}. Lakukan pengamatan kedua.',
  'caution.within-doubt-of-card': 'Selisih dengan daftar, {difference}, masih dalam ketidakpastian satu pengamatan (± {doubt}).',
  'caution.deviation-large': 'Deviasi {deviation} itu besar bagi pedoman yang sudah ditimbal: periksa benda angkasa, waktu dan pedoman.',
};
