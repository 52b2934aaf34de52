/**
 * Place of a star in the International Celestial Reference System at J2000.0, in whole
 * numbers: right ascension and declination in hundred-thousandths of a degree (0.036″),
 * proper motion a year in right ascension (times cos declination) and declination and
 * parallax in thousandths of a second of arc.
 */
export type StarPlace = readonly [number, number, number, number, number];

/**
 * The 57 navigational stars in the order of their almanac numbers, 1 to 57, and Polaris.
 * Source: the fixed-star catalogue of the Debian package swe-basic-data (SIMBAD data),
 * compared with the Hipparcos places of PyEphem. Two stars agree less well than the rest
 * (0.03″): Acamar, 0.5″, and Rigil Kentaurus, a binary, up to 8″.
 */
export const starCatalogue = {
  Alpheratz: [209692, 2909043, 137, -163, 34],
  Ankaa: [657105, -4230599, 233, -356, 39],
  Schedar: [1012684, 5653733, 51, -32, 14],
  Diphda: [1089738, -1798661, 233, 32, 34],
  Achernar: [2442852, -5723675, 87, -38, 23],
  Hamal: [3179336, 2346242, 189, -148, 50],
  Acamar: [4456548, -4030473, -45, 19, 28],
  Menkar: [4556989, 408974, -10, -77, 13],
  Mirfak: [5108071, 4986118, 24, -26, 6],
  Aldebaran: [6898016, 1650930, 63, -189, 49],
  Rigel: [7863447, -820164, 1, 1, 4],
  Capella: [7917233, 4599799, 75, -427, 76],
  Bellatrix: [8128276, 634970, -8, -13, 13],
  Elnath: [8157297, 2860745, 23, -174, 24],
  Alnilam: [8405339, -120192, 1, -1, 2],
  Betelgeuse: [8879294, 740706, 28, 11, 7],
  Canopus: [9598796, -5269566, 20, 23, 11],
  Sirius: [10128715, -1671612, -546, -1223, 379],
  Adhara: [10465645, -2897209, 3, 1, 8],
  Procyon: [11482550, 522499, -715, -1037, 285],
  Pollux: [11632896, 2802620, -627, -46, 97],
  Avior: [12562848, -5950948, -26, 22, 5],
  Suhail: [13699899, -4343259, -24, 14, 6],
  Miaplacidus: [13829991, -6971721, -156, 109, 29],
  Alphard: [14189685, -865860, -15, 34, 18],
  Regulus: [15209296, 1196721, -249, 6, 41],
  Dubhe: [16593196, 6175104, -134, -35, 27],
  Denebola: [17726491, 1457206, -498, -115, 91],
  Gienah: [18395155, -1754193, -159, 22, 21],
  Acrux: [18664956, -6309909, -36, -15, 10],
  Gacrux: [18779150, -5711321, 28, -265, 37],
  Alioth: [19350729, 5595982, 112, -8, 40],
  Spica: [20129825, -1116132, -42, -31, 13],
  Alkaid: [20688516, 4931327, -121, -15, 31],
  Hadar: [21095586, -6037304, -33, -23, 8],
  Menkent: [21167061, -3636995, -521, -518, 55],
  Arcturus: [21391530, 1918241, -1093, -2000, 89],
  'Rigil Kentaurus': [21990085, -6083562, -3608, 686, 742],
  Zubenelgenubi: [22271964, -1604178, -106, -68, 43],
  Kochab: [22267636, 7415550, -33, 11, 25],
  Alphecca: [23367195, 2671469, 120, -90, 43],
  Antares: [24735191, -2643200, -12, -23, 6],
  Atria: [25216623, -6902771, 18, -32, 8],
  Sabik: [25759453, -1572491, 40, 99, 37],
  Shaula: [26340217, -3710382, -9, -31, 6],
  Rasalhague: [26373362, 1256004, 108, -222, 67],
  Eltanin: [26915154, 5148890, -8, -23, 21],
  'Kaus Australis': [27604299, -3438462, -39, -124, 23],
  Vega: [27923474, 3878369, 201, 286, 130],
  Nunki: [28381636, -2629672, 15, -53, 14],
  Altair: [29769583, 886832, 536, 385, 195],
  Peacock: [30641190, -5673509, 7, -86, 18],
  Deneb: [31035798, 4528034, 2, 2, 2],
  Enif: [32604648, 987501, 27, 0, 5],
  "Al Na'ir": [33205827, -4696097, 127, -147, 32],
  Fomalhaut: [34441269, -2962224, 329, -165, 130],
  Markab: [34619022, 1520527, 60, -41, 24],
  Polaris: [3795456, 8926411, 44, -12, 8],
} as const satisfies Record<string, StarPlace>;

/** A navigational star, spelled as the Nautical Almanac spells it. */
export type StarName = keyof typeof starCatalogue;

/** The stars of the catalogue: 57 in the order of their almanac numbers, then Polaris. */
export const starNames = /* @__PURE__ */ Object.keys(starCatalogue) as readonly StarName[];

/**
 * Number of a star in the Nautical Almanac, 1 to 57; null for Polaris, which has a table of its
 * own. Throws `RangeError` naming `star` unless it is spelled as there.
 */
export function almanacNumber(star: StarName): number | null {
  if (!Object.hasOwn(starCatalogue, star)) throw new RangeError(`star: ${String(star)} is not a star of the almanac`);
  return star === 'Polaris' ? null : starNames.indexOf(star) + 1;
}
