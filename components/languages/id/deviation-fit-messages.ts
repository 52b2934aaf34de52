import type { Catalogue } from '../../shared/catalogue.js';

export const deviationFitMessages: Catalogue = {
  'caution.no-readings': 'Tidak ada bacaan.',
  'caution.too-few-readings': '{count} haluan itu sedikit: biasanya diambil paling sedikit delapan.',
  'caution.too-few-to-find-slips': 'Dengan {count} haluan, kekeliruan beberapa derajat pada salah satunya tidak dapat ditemukan.',
  'caution.heading-twice': 'Haluan {heading} diambil lebih dari sekali: pembacaannya berbeda {apart}.',
  'caution.no-fit': 'Tidak ada lengkung yang dapat dibuat melalui bacaan ini.',
  'caution.not-determined': 'Haluan yang diambil tidak menentukan {coefficients}.',
  'caution.suspect-readings': 'Bacaan yang tidak cocok dengan yang lain: {count}. Periksa lagi.',
  'caution.exact-fit-better': 'Deret lima suku meleset {difference} pada {heading}: pakai koefisien eksak.',
  'caution.beyond-approximate': 'Deviasi {largest} melewati {limit}, batas berlakunya deret lima suku: pakai koefisien eksak.',
  'caution.constant-curve': 'Bacaan hanya berbeda sebesar suatu tetapan: periksa garis layar, pesawat baring, variasi dan pedoman gasing.',
  'caution.scatter-exceeds-doubt': 'Simpangan bacaan lebih besar daripada ketidakpastian yang dinyatakan.',
  'caution.reversed-naming': 'Bacaan ini sama dengan daftar lama dengan timur dan barat tertukar: apakah namanya terbalik?',
};
