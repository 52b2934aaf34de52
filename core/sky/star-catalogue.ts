/**
 * Place of a star in the International Celestial Reference System at J2000.0: right
 * ascension and declination in degrees, proper motion in right ascension (times cos
 * declination) and declination and parallax in thousandths of a second of arc (motion a
 * year), visual magnitude.
 */
export type StarPlace = readonly [number, number, number, number, number, number];

/**
 * The 57 navigational stars in the order of their almanac numbers, 1 to 57, and Polaris.
 * Source: the fixed-star catalogue of the Debian package swe-basic-data (SIMBAD data),
 * compared with the Hipparcos places of PyEphem. Two stars agree less well than the rest
 * (0.03″): Acamar, 0.5″, and Rigil Kentaurus, a binary, up to 8″.
 */
export const starCatalogue = {
  Alpheratz: [2.096916, 29.090431, 137, -163, 34, 2.06],
  Ankaa: [6.571047, -42.305987, 233, -356, 39, 2.37],
  Schedar: [10.126838, 56.537331, 51, -32, 14, 2.23],
  Diphda: [10.897379, -17.986606, 233, 32, 34, 2.01],
  Achernar: [24.428523, -57.236753, 87, -38, 23, 0.46],
  Hamal: [31.793357, 23.462418, 189, -148, 50, 2.01],
  Acamar: [44.565479, -40.304731, -45, 19, 28, 3.18],
  Menkar: [45.569888, 4.089739, -10, -77, 13, 2.53],
  Mirfak: [51.080709, 49.861179, 24, -26, 6, 1.79],
  Aldebaran: [68.980163, 16.509302, 63, -189, 49, 0.86],
  Rigel: [78.634467, -8.201638, 1, 1, 4, 0.13],
  Capella: [79.172328, 45.997991, 75, -427, 76, 0.08],
  Bellatrix: [81.282764, 6.349703, -8, -13, 13, 1.64],
  Elnath: [81.572971, 28.607452, 23, -174, 24, 1.65],
  Alnilam: [84.053389, -1.201919, 1, -1, 2, 1.69],
  Betelgeuse: [88.792939, 7.407064, 28, 11, 7, 0.42],
  Canopus: [95.987958, -52.695661, 20, 23, 11, -0.74],
  Sirius: [101.287155, -16.716116, -546, -1223, 379, -1.46],
  Adhara: [104.656453, -28.972086, 3, 1, 8, 1.5],
  Procyon: [114.825498, 5.224988, -715, -1037, 285, 0.37],
  Pollux: [116.328958, 28.026199, -627, -46, 97, 1.14],
  Avior: [125.62848, -59.509484, -26, 22, 5, 1.95],
  Suhail: [136.998991, -43.432591, -24, 14, 6, 2.21],
  Miaplacidus: [138.299906, -69.717208, -156, 109, 29, 1.69],
  Alphard: [141.896845, -8.6586, -15, 34, 18, 1.97],
  Regulus: [152.092962, 11.967209, -249, 6, 41, 1.4],
  Dubhe: [165.931965, 61.751035, -134, -35, 27, 1.79],
  Denebola: [177.26491, 14.572058, -498, -115, 91, 2.13],
  Gienah: [183.951545, -17.54193, -159, 22, 21, 2.58],
  Acrux: [186.649563, -63.099093, -36, -15, 10, 0.81],
  Gacrux: [187.791498, -57.113213, 28, -265, 37, 1.64],
  Alioth: [193.50729, 55.959823, 112, -8, 40, 1.77],
  Spica: [201.298247, -11.161319, -42, -31, 13, 0.97],
  Alkaid: [206.885157, 49.313267, -121, -15, 31, 1.86],
  Hadar: [210.955856, -60.373035, -33, -23, 8, 0.6],
  Menkent: [211.670615, -36.369955, -521, -518, 55, 2.05],
  Arcturus: [213.9153, 19.182409, -1093, -2000, 89, -0.05],
  'Rigil Kentaurus': [219.90085, -60.835619, -3608, 686, 742, -0.1],
  Zubenelgenubi: [222.719638, -16.041777, -106, -68, 43, 2.75],
  Kochab: [222.676357, 74.155504, -33, 11, 25, 2.08],
  Alphecca: [233.67195, 26.714693, 120, -90, 43, 2.24],
  Antares: [247.351915, -26.432003, -12, -23, 6, 0.91],
  Atria: [252.166229, -69.027712, 18, -32, 8, 1.92],
  Sabik: [257.594529, -15.724907, 40, 99, 37, 2.42],
  Shaula: [263.402167, -37.103824, -9, -31, 6, 1.62],
  Rasalhague: [263.733623, 12.560037, 108, -222, 67, 2.07],
  Eltanin: [269.151541, 51.488896, -8, -23, 21, 2.23],
  'Kaus Australis': [276.042993, -34.384616, -39, -124, 23, 1.85],
  Vega: [279.234735, 38.783689, 201, 286, 130, 0.03],
  Nunki: [283.81636, -26.296724, 15, -53, 14, 2.07],
  Altair: [297.695827, 8.868321, 536, 385, 195, 0.76],
  Peacock: [306.411904, -56.73509, 7, -86, 18, 1.92],
  Deneb: [310.35798, 45.280339, 2, 2, 2, 1.25],
  Enif: [326.046484, 9.875009, 27, 0, 5, 2.39],
  "Al Na'ir": [332.05827, -46.960974, 127, -147, 32, 1.71],
  Fomalhaut: [344.412693, -29.622237, 329, -165, 130, 1.16],
  Markab: [346.190223, 15.205267, 60, -41, 24, 2.48],
  Polaris: [37.954561, 89.264109, 44, -12, 8, 2.02],
} as const satisfies Record<string, StarPlace>;

/** A navigational star, spelled as the Nautical Almanac spells it. */
export type StarName = keyof typeof starCatalogue;

export const starNames = /* @__PURE__ */ Object.keys(starCatalogue) as readonly StarName[];

/** Number of a star in the Nautical Almanac, 1 to 57; null for Polaris, which has a table of its own. */
export function almanacNumber(star: StarName): number | null {
  return star === 'Polaris' ? null : starNames.indexOf(star) + 1;
}
