import type { Catalogue } from '../../shared/catalogue.js';

export const markMessages: Catalogue = {
  'transit.frontLatitude': 'Benda depan, lintang',
  'transit.frontLongitude': 'Benda depan, bujur',
  'transit.rearLatitude': 'Benda belakang, lintang',
  'transit.rearLongitude': 'Benda belakang, bujur',
  'transit.none.same-place': '{line}Tidak ada garis: kedua tempat sama.',
  'transit.none.pole': '{line}Di kutub setiap arah sama: tidak ada baringan.',
  'transit.none.two-ways': '{line}Tempat ini berseberangan di bola bumi: periksa posisi.',
  'caution.mark-beyond-sight': '{line}Benda sejauh {distance} tidak dapat terlihat: periksa posisi, N atau S, E atau W.',
};
