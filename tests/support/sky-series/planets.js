/** The tables of the Earth and the planets, from VSOP87B: Bretagnon and Francou, Astronomy and Astrophysics 202, 1988. */
import earth from 'astronomia/data/vsop87Bearth';
import jupiter from 'astronomia/data/vsop87Bjupiter';
import mars from 'astronomia/data/vsop87Bmars';
import saturn from 'astronomia/data/vsop87Bsaturn';
import venus from 'astronomia/data/vsop87Bvenus';
import { cubicColumns, DEGREES, fitted, seriesText, unitOf, waveColumns, waveOf } from './abridge.js';

/** Each theory, and the smallest term kept: longitude and latitude in radians, distance in astronomical units. */
const planets = {
  earth: { who: 'the Earth', theory: earth, smallest: [4e-7, 6e-7, 1e-6] },
  venus: { who: 'Venus', theory: venus, smallest: [6e-7, 6e-7, 8e-7] },
  mars: { who: 'Mars', theory: mars, smallest: [8e-7, 1e-6, 1.3e-6] },
  jupiter: { who: 'Jupiter', theory: jupiter, smallest: [4e-6, 4e-6, 2.2e-5] },
  saturn: { who: 'Saturn', theory: saturn, smallest: [4e-6, 4e-6, 5e-5] },
};

/** A coordinate: by power of the century, terms `[size, phase, speed]` of cosines. */
function termsOf(powers) {
  return Object.entries(powers).map(([power, rows]) => rows.map(([size, phase, speed]) => [size / 10 ** power, phase, speed / 10]));
}

/** Mean motion, radians a century: the second constant of the longitude. */
const meanMotion = ({ L }) => L[1].find(([, , speed]) => speed === 0)[0] / 10;

function coordinateText(powers, least, scale, step) {
  const whole = termsOf(powers);
  const kept = whole.slice(0, 4).map((terms) => terms.filter(([size, , speed]) => speed !== 0 && Math.abs(size) >= least));
  const waves = kept.flatMap((terms, power) => terms.map((term) => ({ term, power })));
  const amounts = fitted(whole, [...cubicColumns(whole), ...waves.flatMap(({ term, power }) => waveColumns(term, power))]);
  const found = kept.map(() => []);
  waves.forEach(({ term, power }, index) => found[power].push(waveOf(amounts[4 + 2 * index], amounts[5 + 2 * index], term[2])));
  return seriesText(amounts.slice(0, 4), found, { unit: unitOf(least, scale), scale, step });
}

/** The modules of all, by name. */
export function planetModules() {
  return Object.entries(planets).map(([name, { who, theory, smallest }]) => {
    const step = meanMotion(theory);
    // Longitude, latitude and distance.
    const coordinates = ['L', 'B', 'R'].map((key, index) => coordinateText(theory[key], smallest[index], index < 2 ? DEGREES : 1, step));
    const text = `import type { OrbitSeries } from './series.js';

/**
 * Where ${who} is: from the Sun, mean ecliptic and equinox of J2000.0; degrees and astronomical
 * units. Source: VSOP87B, Bretagnon and Francou 1988, abridged and fitted
 * to the whole over 1900 to 2100 by tests/support/make-sky-series.js, which see.
 */
export const ${name}Series: OrbitSeries = {
meanMotion: ${(step * DEGREES).toFixed(5)},
coordinates: [
${coordinates.map((text) => `{\n${text}},\n`).join('')}],
};
`;
    return { name, text };
  });
}
