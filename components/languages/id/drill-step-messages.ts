import type { Catalogue } from '../../shared/catalogue.js';

export const drillStepMessages: Catalogue = {
  'step.drill.reciprocal': 'Garis yang sama dilihat dari laut',
  'step.drill.chart-variation': 'Nilai mawar pedoman dan perubahan tahunan untuk tahun-tahun yang lewat, timur positif',
  'step.drill.coefficient-A': 'A: rata-rata kedelapannya',
  'step.drill.coefficient-B': 'B: setengah dari timur dikurangi barat',
  'step.drill.coefficient-C': 'C: setengah dari utara dikurangi selatan',
  // unsure: "surat antara induk" for the intercardinals and "surat induk" for the cardinals
  'step.drill.coefficient-D': 'D: seperempat, surat antara induk dengan tandanya',
  'step.drill.coefficient-E': 'E: seperempat, surat induk dengan tandanya',
  'step.drill.deviation-from-coefficients': 'Deviasi: A + B sin + C cos + D sin 2 + E cos 2 dari haluan pedoman',
  'step.drill.permanent': 'Magnetisme permanen bekerja sebagai satu per H',
  'step.drill.induced': 'Besi lunak tegak bekerja sebagai Z per H',
  'step.drill.slope': 'Bagian induksi: bagaimana H kali B berubah dengan Z',
  'step.drill.third-place': 'Di tempat ketiga: H kali B dari yang pertama, dan perubahan Z',
};
