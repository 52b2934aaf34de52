import type { Catalogue } from '../../shared/catalogue.js';

export const adviceMessages: Catalogue = {
  'swing.advice': 'Saran bagi juru timbal pedoman yang berwenang',
  'swing.advice.standing': 'Hanya saran: buku petunjuk pembuat dan juru timbal pedoman yang berwenang lebih menentukan. Kerjakan menurut urutan ini; periksa setelah setiap langkah, dan putar kapal lagi bila semuanya selesai.',
  'swing.advice.none': 'Tidak ada koefisien yang cukup besar, 0,5° atau lebih, untuk menggeser korektor; atau haluan yang ada belum menentukannya.',
  'swing.advice.source': 'Sumber: {source}.',
  'swing.advice.work': 'Pada {first} hilangkan semua yang tampak, {seen}; lalu pada {second}, yang seharusnya menunjukkan {left}, hilangkan setengahnya, {half}.',
  'swing.advice.clockwise': 'searah jarum jam sebesar {angle}',
  'swing.advice.anticlockwise': 'berlawanan arah jarum jam sebesar {angle}',
  'swing.advice.magnet.red-forward': 'B {B}: magnet membujur di bawah piringan, ujung merah ke depan.',
  'swing.advice.magnet.red-aft': 'B {B}: magnet membujur di bawah piringan, ujung merah ke belakang.',
  'swing.advice.magnet.red-starboard': 'C {C}: magnet melintang di bawah piringan, ujung merah ke kanan.',
  'swing.advice.magnet.red-port': 'C {C}: magnet melintang di bawah piringan, ujung merah ke kiri.',
  // unsure: "magnet tegak" for the heeling magnet; "magnet senget" is also said
  'swing.advice.spheres.place': 'Pasang bola-bola besi lunak sebelum magnet tegak disetel.',
  'swing.advice.spheres.athwartships': 'D {D}: bola besi lunak melintang; lebih dekat atau lebih besar menghilangkan lebih banyak.',
  'swing.advice.spheres.fore-and-aft': 'D {D}: bola besi lunak membujur; lebih dekat atau lebih besar menghilangkan lebih banyak.',
  'swing.advice.spheres.slew': 'E {E}: putar pasangan bola {slew}, dilihat dari atas, dari kedudukan melintang.',
  'swing.advice.spheres.slew-fore-and-aft': 'E {E}: putar pasangan bola {slew}, dilihat dari atas, dari kedudukan membujur.',
  'swing.advice.flinders.forward': 'Batang Flinders di depan pedoman.',
  'swing.advice.flinders.aft': 'Batang Flinders di belakang pedoman.',
  'swing.advice.heeling.red-up': 'Magnet tegak dengan ujung merah ke atas.',
  'swing.advice.heeling.red-down': 'Magnet tegak dengan ujung merah ke bawah.',
  'swing.advice.alignment.check': 'A {A} tidak dihilangkan oleh magnet apa pun: periksa garis layar, pesawat baring, variasi yang dipakai dan pedoman gasing.',
};
