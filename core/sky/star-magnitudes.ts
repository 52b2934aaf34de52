/**
 * Visual magnitudes of the stars in the order of their catalogue, in hundredths. Source: as of
 * their places. Only what asks how bright a star is has to carry them.
 */
export const starMagnitudes: readonly number[] = [
  // Alpheratz to Aldebaran.
  206, 237, 223, 201, 46, 201, 318, 253, 179, 86,
  // Rigel to Procyon.
  13, 8, 164, 165, 169, 42, -74, -146, 150, 37,
  // Pollux to Acrux.
  114, 195, 221, 169, 197, 140, 179, 213, 258, 81,
  // Gacrux to Kochab.
  164, 177, 97, 186, 60, 205, -5, -10, 275, 208,
  // Alphecca to Nunki.
  224, 91, 192, 242, 162, 207, 223, 185, 3, 207,
  // Altair to Polaris.
  76, 192, 125, 239, 171, 116, 248, 202,
];
