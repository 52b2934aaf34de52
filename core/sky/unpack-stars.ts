import { packedNumbers, signed } from '../text/packed-numbers.js';

/** The numbers of each star, as in its catalogue. */
const COUNT = 5;

/** The stars from the texts that the build makes of their catalogue: each right ascension is counted on from the star before. */
export function unpackStars(names: string, signs: string): Record<string, number[]> {
  const numbers = packedNumbers(signs).map(signed);
  let rightAscension = 0;
  return Object.fromEntries(
    names.split(',').map((name, star) => {
      const [further = 0, ...rest] = numbers.slice(star * COUNT, (star + 1) * COUNT);
      rightAscension += further;
      return [name, [rightAscension, ...rest]];
    }),
  );
}
