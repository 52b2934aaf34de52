import type { Catalogue } from '../../shared/catalogue.js';

export const lmsMessages: Catalogue = {
  'lms.none': 'Tidak ada platform pembelajaran di sini: semuanya berfungsi, tidak ada yang dilaporkan.',
  'lms.opening': 'Menanyakan kepada platform pembelajaran…',
  'lms.open': 'Hasil dilaporkan kepada platform pembelajaran setelah setiap jawaban.',
  'lms.review': 'Dibuka untuk dilihat: tidak ada yang dilaporkan kepada platform pembelajaran.',
  'lms.refused': 'Platform pembelajaran tidak membuka sesi: semuanya berfungsi, tidak ada yang dilaporkan.',
  'lms.trouble': 'Platform pembelajaran tidak menerima laporan terakhir. Laporan berikutnya membawa semuanya lagi.',
  'lms.finished': 'Sesi dengan platform pembelajaran telah berakhir. Buka pelajaran lagi dari platform untuk melaporkan lebih banyak.',
};
