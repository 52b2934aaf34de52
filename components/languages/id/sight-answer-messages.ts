import type { Catalogue } from '../../shared/catalogue.js';

export const sightAnswerMessages: Catalogue = {
  // unsure: "sembir" for the error of a magnetic compass; "salah tunjuk" and "salah pedoman" mean the same
  'sight.error': 'Sembir',
  // unsure: "kesalahan gasing"; "salah pedoman gasing" and "gyro error" are also said
  'sight.gyroError': 'Kesalahan gasing',
  'sight.gyro.low': 'gasing rendah',
  'sight.gyro.high': 'gasing tinggi',
  'sight.practice': 'diambil {error}',
  'sight.split.true': 'baringan sejati',
  'sight.split.variation': 'variasi',
  'sight.split.deviation': 'deviasi yang diperoleh',
  'sight.split.card': 'menurut daftar',
  'sight.split.difference': 'selisih',
  'sight.worthless': 'jangan dipakai, lihat di bawah',
  'sight.split.onHeading': 'pada Hp {heading}',
  'sight.split.noHeading': 'haluan belum dimasukkan',
  'sight.split.given': 'yang dimasukkan',
  'sight.split.unknown': 'tidak diketahui',
  'sight.mark.true': 'sejati',
  'sight.mark.compass': 'pedoman',
  'sight.mark.gyro': 'gasing',
  'sight.mark.error': 'kesalahan',
  'doubt.reading': 'pembacaan baringan',
  'doubt.variation': 'variasi',
  'accepted.doubt.°': 'Diterima: 0 sampai 10°, satu simpangan baku.',
  'caution.gyro-high-latitude': 'Di atas lintang 75° hampir tidak ada yang menahan pedoman gasing pada derajah: kesalahannya membesar dan berubah menurut haluan dan kecepatan. Periksa sering-sering.',
  'caution.looks-like-magnetic': 'Kesalahan ini hampir sama dengan variasi, {variation}: apakah baringan dibaca dari pedoman magnet?',
  'caution.looks-like-gyro': 'Kesalahan ini hampir nol padahal variasinya {variation}: apakah baringan dibaca dari pedoman gasing?',
  'caution.variation-unlike-model': 'Variasi yang dimasukkan, {given}, jauh dari variasi model di sini, {modelled}: periksa namanya, E atau W, posisi, dan catatan anomali di peta.',
  'caution.variation-turned': 'Kesalahan ini hampir sama dengan variasi {variation} ke arah terbalik: apakah timur tertukar dengan barat?',
  'caution.variation-missing': 'Model magnetik berlaku dari 2015 sampai 2030. Masukkan variasi dari peta untuk memperoleh deviasi.',
};
