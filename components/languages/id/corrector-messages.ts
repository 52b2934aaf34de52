import type { Catalogue } from '../../shared/catalogue.js';

export const correctorMessages: Catalogue = {
  'card.correctors': 'Korektor',
  // The column of a narrow card is too small for the word: it may break at the soft hyphen.
  'card.corrector.foreAndAft': 'Magnet mem\u00ADbujur',
  'card.corrector.athwartships': 'Magnet melintang',
  'card.corrector.heeling': 'Magnet tegak',
  'card.corrector.spheres': 'Bola besi lunak',
  'card.corrector.flinders': 'Batang Flinders',
  'card.corrector.what': 'jumlah, ukuran',
  'card.corrector.end': 'ujung merah, sisi',
  'card.corrector.distance': 'jarak, tempat',
  'card.end.red-forward': 'merah ke depan',
  'card.end.red-aft': 'merah ke belakang',
  'card.end.red-starboard': 'merah ke kanan',
  'card.end.red-port': 'merah ke kiri',
  'card.end.red-up': 'merah ke atas',
  'card.end.red-down': 'merah ke bawah',
  'card.end.athwartships': 'melintang',
  'card.end.fore-and-aft': 'membujur',
  'card.end.slewed': 'diputar',
  'card.end.forward': 'di depan',
  'card.end.aft': 'di belakang',
  'card.place': 'Diputar di',
  // unsure: "juru timbal pedoman" for the compass adjuster; "penimbal pedoman" and "compass adjuster" are also said
  'card.sign.adjuster': 'Juru timbal pedoman, nama dan tanda tangan',
  'card.sign.master': 'Nakhoda',
  'card.sign.dated': 'Tanggal',
};
