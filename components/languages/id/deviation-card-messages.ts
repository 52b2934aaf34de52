import type { Catalogue } from '../../shared/catalogue.js';

export const deviationCardMessages: Catalogue = {
  'card.problem': 'Daftar yang diberikan kepada widget ini tidak dapat dibaca: {where} {reason}.',
  'card.problem.not-an-object': 'bukan daftar',
  'card.problem.not-json': 'bukan JSON',
  'card.problem.unknown-kind': 'bukan table, approximate atau exact',
  'card.problem.no-rows': 'tidak mempunyai baris',
  'card.problem.too-many-rows': 'mempunyai terlalu banyak baris',
  'card.problem.not-a-number': 'bukan bilangan',
  'card.problem.out-of-range': 'di luar batas',
  'card.problem.headings-disagree': 'memberi satu haluan dua deviasi',
  'limit': 'Batas',
  'limit.flag-five': '5° semua haluan (bendera)',
  'limit.after-adjustment': '3° setelah penimbalan (ISO 25862)',
  'limit.in-service': '5° dalam dinas (ISO 25862)',
  'limit.panama-canal': 'di bawah 7° (Terusan Panama)',
  'limit.source': 'Sumber: {source}. Aturan negara bendera lebih menentukan.',
  'caution.beyond-limit': 'Deviasi {deviation} pada {heading} melewati batas {limit}.',
  'caution.slope-too-steep': 'Lengkung terlalu curam untuk satu jawaban: dari {from} sampai {to} magnetis lebih dari satu haluan pedoman cocok.',
  'caution.lost-headings': 'Pada {count} derajat pedoman daftar ini tidak memberi deviasi, atau memberi dua.',
  'caution.wide-gap': 'Tidak ada yang diketahui antara {from} dan {to}: di sana lengkung disambung dengan dugaan.',
  'caution.half-of-compass': 'Setengah pedoman atau lebih tanpa bacaan, dari {from} sampai {to}: yang dikatakan lengkung di sana adalah dugaan.',
  // unsure: "garis layar" for the lubber line and "pesawat baring" for the azimuth circle; "azimuth circle" in English is common on board
  'caution.constant-card': 'Daftar mengatakan hal yang sama, {mean}, pada semua haluan: periksa garis layar, pesawat baring dan variasi.',
  'caution.sum-not-zero': 'Rata-rata semua haluan adalah {mean}, suatu kesalahan tetap: periksa garis layar, pesawat baring dan variasi.',
};
