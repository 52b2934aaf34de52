import type { Catalogue } from '../../shared/catalogue.js';

export const deviationTableMessages: Catalogue = {
  'table.given': 'Yang ditampilkan berasal dari halaman atau kapal; yang diketik di sini didahulukan.',
  'table.how': 'Satu baris untuk setiap haluan: haluan pedoman, lalu deviasi. Tempel dari lembar hitung atau ketik, dalam urutan apa pun.',
  'table.count': '{count} haluan dimengerti.',
  'table.title': 'Dilewati sebagai judul: {title}',
  'table.line': 'Baris {line}, “{text}”:',
  'table.more': 'dan {count} baris lagi.',
  'accepted.table': 'Diterima, satu per baris: 045 2,5W, atau 045, tab dan −2,5. Angka tanpa huruf berarti timur hanya bila yang lain memakai tanda kurang.',
  'refusal.two-columns': 'Diperlukan haluan dan deviasi.',
  'refusal.given-twice': 'Haluan ini mempunyai deviasi lain di atas.',
};
