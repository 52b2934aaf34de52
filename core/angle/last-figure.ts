import { normalise } from '../text/normalise.js';

/**
 * What the last figure of an angle as typed is worth, minutes of arc: 60 in `50N`, 1 in `50-06N`,
 * 0.1 in `50-06.3N`, a sixtieth in `50 06 18 N`. Of a text that `parseLatitude` or `parseLongitude` reads.
 */
export function lastFigure(text: string): number {
  const plain = normalise(text);
  // Figures behind a decimal mark are decimals, also in 06'.3, and no part of their own.
  const parts = plain.match(/(?<![\d.,])\d+/g)?.length ?? 1;
  const decimals = /[.,](\d*)\D*$/.exec(plain)?.[1]?.length ?? 0;
  return 60 ** (2 - parts) / 10 ** decimals;
}
