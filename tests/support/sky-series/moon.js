/** The table of the Moon, from ELP/MPP02: Chapront and Francou, Astronomy and Astrophysics 404, 2003. */
import elp from 'astronomia/data/elpMppDe';
import { delaunayArguments } from '../../../core/sky/delaunay-arguments.js';
import { cubicColumns, DEGREES, fitted, linesOf, seriesText, unitOf, waveColumns, waveOf } from './abridge.js';

const SECOND = 1 / 3600 / DEGREES;
const KILOMETRES = 1 / 149597870.7;
const QUARTER = Math.PI / 2;
/** Of the anomaly, radians a century: what the planets raise comes again one anomaly faster. */
const MEAN_MOTION = elp.L[0][0][2];

/** The smallest term kept of what the Sun raises and of what the planets raise, radians or astronomical units. */
const smallest = { L: [3e-7, 5e-7], B: [4e-7, 6e-7], R: [2e-8, 3e-8] };

/** General precession in longitude, seconds of arc by powers of the century, as ELP/MPP02 has it. */
const PRECESSION = [0, 5028.79695, 1.112, 0.000077];

/** By power of the century, terms of cosines; the phases are no straight lines, and their bend goes to the power two higher. */
function termsOf(powers, unit) {
  const terms = [[], [], [], [], [], []];
  for (const [power, rows] of Object.entries(powers)) {
    for (const [size, phase, speed, bend = 0] of rows) {
      terms[power].push([size * unit, phase - QUARTER, speed]);
      terms[Number(power) + 2].push([size * unit * bend, phase, speed]);
    }
  }
  return terms;
}

const longitude = termsOf(elp.L, SECOND);
elp.W1.forEach((value, power) => longitude[power].push([value + (PRECESSION[power] ?? 0) * SECOND, 0, 0]));

const fading = (century) => 1 - (0.002516 + 0.0000074 * century) * century;

const speeds = (({ elongation, sunAnomaly, latitudeArgument, moonAnomaly }) => [elongation, sunAnomaly, latitudeArgument, moonAnomaly]);
const [atEpoch, later] = [speeds(delaunayArguments(0)), speeds(delaunayArguments(0.01))];

/** The multiples of D, M, F and M′ that make a wave, and its sign; null for one the planets raise. */
function multiplesOf([size, phase, speed], sine) {
  for (let d = -8; d <= 8; d += 1) {
    for (let m = -4; m <= 4; m += 1) {
      for (let f = -6; f <= 6; f += 1) {
        for (let moon = -6; moon <= 6; moon += 1) {
          const multiples = [d, m, f, moon];
          const sum = (angles) => multiples.reduce((total, multiple, index) => total + multiple * angles[index], 0) / DEGREES;
          if (Math.abs((sum(later) - sum(atEpoch)) / 0.01 - speed) > 1e-3) continue;
          // How far the wave is from the sine or cosine of the angle: half a turn is another sign.
          const aside = Math.cos(phase + (sine ? QUARTER : 0) - sum(atEpoch));
          if (Math.abs(aside) < 0.999) continue;
          const first = multiples.find((multiple) => multiple !== 0);
          // An angle and its opposite are one wave: the first multiple is made positive.
          return first > 0 ? { multiples, size: size * Math.sign(aside) } : { multiples: multiples.map((multiple) => 0 - multiple), size: size * Math.sign(aside) * (sine ? -1 : 1) };
        }
      }
    }
  }
  return null;
}

/** The theory lists some angles twice, for the Sun's own part and for what the planets add to it. */
function onceEach(found) {
  const sizes = new Map();
  for (const { multiples, size } of found) sizes.set(multiples.join(), { multiples, size: size + (sizes.get(multiples.join())?.size ?? 0) });
  return [...sizes.values()];
}

function angleAt(multiples, century) {
  return speeds(delaunayArguments(century)).reduce((sum, angle, index) => sum + multiples[index] * angle, 0) / DEGREES;
}

/** Rows of the table: D, M, F, the first multiple of M′, and the sizes from there on. */
function rowsOf(found, unit) {
  const rows = new Map();
  for (const { multiples: [d, m, f, moon], size } of found) {
    const key = [d, m, f].join(', ');
    rows.set(key, (rows.get(key) ?? new Map()).set(moon, Math.round(size / unit)));
  }
  return [...rows].map(([key, sizes]) => {
    const [first, last] = [Math.min(...sizes.keys()), Math.max(...sizes.keys())];
    return `[${[key, first, ...Array.from({ length: last - first + 1 }, (_, index) => sizes.get(first + index) ?? 0)].join(', ')}]`;
  });
}

function coordinateText(whole, [least, leastOfPlanets], sine, scale) {
  const waves = [0, 1].flatMap((power) =>
    whole[power]
      .filter(([size, , speed]) => speed !== 0 && Math.abs(size) >= Math.min(least, leastOfPlanets))
      .map((term) => ({ term, power, sun: multiplesOf(term, sine) })),
  );
  const ofSun = onceEach(waves.filter(({ term, power, sun }) => sun && power === 0 && Math.abs(term[0]) >= least).map(({ sun }) => sun));
  const ofPlanets = waves.filter(({ term, sun }) => !sun && Math.abs(term[0]) >= leastOfPlanets);
  const turn = sine ? Math.sin : Math.cos;
  const sunColumns = ofSun.map(({ multiples, size }) => ({ start: size, at: (century) => fading(century) ** Math.abs(multiples[1]) * turn(angleAt(multiples, century)) }));
  const amounts = fitted(whole, [...cubicColumns(whole), ...sunColumns, ...ofPlanets.flatMap(({ term, power }) => waveColumns(term, power))]);
  const found = ofSun.map(({ multiples }, index) => ({ multiples, size: amounts[4 + index] }));
  const byPower = [[], []];
  const before = 4 + ofSun.length;
  ofPlanets.forEach(({ term, power }, index) => byPower[power].push(waveOf(amounts[before + 2 * index], amounts[before + 2 * index + 1], term[2])));
  const unit = unitOf(least, scale);
  return `series: {\n${seriesText(amounts.slice(0, 4), byPower, { unit, scale, step: MEAN_MOTION })}},\nsun: [\n${linesOf(rowsOf(found, unit))}],\n`;
}

export function moonModule() {
  const text = `import type { MoonSeries } from './moon-coordinate.js';

/**
 * Where the Moon is: from the Earth, mean ecliptic and equinox of date; degrees and astronomical
 * units. Source: ELP/MPP02, Chapront and Francou 2003, abridged and fitted
 * to the whole over 1900 to 2100 by tests/support/make-sky-series.js, which see.
 */
export const moonSeries: MoonSeries = {
meanMotion: ${(MEAN_MOTION * DEGREES).toFixed(5)},
longitude: {
${coordinateText(longitude, smallest.L, true, DEGREES)}},
latitude: {
${coordinateText(termsOf(elp.B, SECOND), smallest.B, true, DEGREES)}},
distance: {
${coordinateText(termsOf(elp.R, KILOMETRES), smallest.R, false, 1)}},
};
`;
  return { name: 'moon', text };
}
