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
  Alpheratz: [2.09692, 29.09043, 137, -163, 34, 2.06],
  Ankaa: [6.57105, -42.30599, 233, -356, 39, 2.37],
  Schedar: [10.12684, 56.53733, 51, -32, 14, 2.23],
  Diphda: [10.89738, -17.98661, 233, 32, 34, 2.01],
  Achernar: [24.42852, -57.23675, 87, -38, 23, 0.46],
  Hamal: [31.79336, 23.46242, 189, -148, 50, 2.01],
  Acamar: [44.56548, -40.30473, -45, 19, 28, 3.18],
  Menkar: [45.56989, 4.08974, -10, -77, 13, 2.53],
  Mirfak: [51.08071, 49.86118, 24, -26, 6, 1.79],
  Aldebaran: [68.98016, 16.5093, 63, -189, 49, 0.86],
  Rigel: [78.63447, -8.20164, 1, 1, 4, 0.13],
  Capella: [79.17233, 45.99799, 75, -427, 76, 0.08],
  Bellatrix: [81.28276, 6.3497, -8, -13, 13, 1.64],
  Elnath: [81.57297, 28.60745, 23, -174, 24, 1.65],
  Alnilam: [84.05339, -1.20192, 1, -1, 2, 1.69],
  Betelgeuse: [88.79294, 7.40706, 28, 11, 7, 0.42],
  Canopus: [95.98796, -52.69566, 20, 23, 11, -0.74],
  Sirius: [101.28715, -16.71612, -546, -1223, 379, -1.46],
  Adhara: [104.65645, -28.97209, 3, 1, 8, 1.5],
  Procyon: [114.8255, 5.22499, -715, -1037, 285, 0.37],
  Pollux: [116.32896, 28.0262, -627, -46, 97, 1.14],
  Avior: [125.62848, -59.50948, -26, 22, 5, 1.95],
  Suhail: [136.99899, -43.43259, -24, 14, 6, 2.21],
  Miaplacidus: [138.29991, -69.71721, -156, 109, 29, 1.69],
  Alphard: [141.89685, -8.6586, -15, 34, 18, 1.97],
  Regulus: [152.09296, 11.96721, -249, 6, 41, 1.4],
  Dubhe: [165.93196, 61.75104, -134, -35, 27, 1.79],
  Denebola: [177.26491, 14.57206, -498, -115, 91, 2.13],
  Gienah: [183.95155, -17.54193, -159, 22, 21, 2.58],
  Acrux: [186.64956, -63.09909, -36, -15, 10, 0.81],
  Gacrux: [187.7915, -57.11321, 28, -265, 37, 1.64],
  Alioth: [193.50729, 55.95982, 112, -8, 40, 1.77],
  Spica: [201.29825, -11.16132, -42, -31, 13, 0.97],
  Alkaid: [206.88516, 49.31327, -121, -15, 31, 1.86],
  Hadar: [210.95586, -60.37304, -33, -23, 8, 0.6],
  Menkent: [211.67061, -36.36995, -521, -518, 55, 2.05],
  Arcturus: [213.9153, 19.18241, -1093, -2000, 89, -0.05],
  'Rigil Kentaurus': [219.90085, -60.83562, -3608, 686, 742, -0.1],
  Zubenelgenubi: [222.71964, -16.04178, -106, -68, 43, 2.75],
  Kochab: [222.67636, 74.1555, -33, 11, 25, 2.08],
  Alphecca: [233.67195, 26.71469, 120, -90, 43, 2.24],
  Antares: [247.35191, -26.432, -12, -23, 6, 0.91],
  Atria: [252.16623, -69.02771, 18, -32, 8, 1.92],
  Sabik: [257.59453, -15.72491, 40, 99, 37, 2.42],
  Shaula: [263.40217, -37.10382, -9, -31, 6, 1.62],
  Rasalhague: [263.73362, 12.56004, 108, -222, 67, 2.07],
  Eltanin: [269.15154, 51.4889, -8, -23, 21, 2.23],
  'Kaus Australis': [276.04299, -34.38462, -39, -124, 23, 1.85],
  Vega: [279.23474, 38.78369, 201, 286, 130, 0.03],
  Nunki: [283.81636, -26.29672, 15, -53, 14, 2.07],
  Altair: [297.69583, 8.86832, 536, 385, 195, 0.76],
  Peacock: [306.4119, -56.73509, 7, -86, 18, 1.92],
  Deneb: [310.35798, 45.28034, 2, 2, 2, 1.25],
  Enif: [326.04648, 9.87501, 27, 0, 5, 2.39],
  "Al Na'ir": [332.05827, -46.96097, 127, -147, 32, 1.71],
  Fomalhaut: [344.41269, -29.62224, 329, -165, 130, 1.16],
  Markab: [346.19022, 15.20527, 60, -41, 24, 2.48],
  Polaris: [37.95456, 89.26411, 44, -12, 8, 2.02],
} as const satisfies Record<string, StarPlace>;

/** A navigational star, spelled as the Nautical Almanac spells it. */
export type StarName = keyof typeof starCatalogue;

export const starNames = /* @__PURE__ */ Object.keys(starCatalogue) as readonly StarName[];

/** Number of a star in the Nautical Almanac, 1 to 57; null for Polaris, which has a table of its own. */
export function almanacNumber(star: StarName): number | null {
  return star === 'Polaris' ? null : starNames.indexOf(star) + 1;
}
