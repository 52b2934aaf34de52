/**
 * Makes the tables core/sky/*-series.ts: `node tests/support/make-sky-series.js`.
 *
 * The whole theories come from a package: VSOP87B (Bretagnon and Francou, Astronomy and
 * Astrophysics 202, 1988) and ELP/MPP02 (Chapront and Francou, Astronomy and Astrophysics
 * 404, 2003). Each coordinate keeps the terms above a size; their sizes and phases and a
 * cubic are then fitted to the whole theory over 1900 to 2100, which takes up what slow
 * terms were left out; and every figure is rounded to what the size of its term needs.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import elp from 'astronomia/data/elpMppDe';
import earth from 'astronomia/data/vsop87Bearth';
import jupiter from 'astronomia/data/vsop87Bjupiter';
import mars from 'astronomia/data/vsop87Bmars';
import saturn from 'astronomia/data/vsop87Bsaturn';
import venus from 'astronomia/data/vsop87Bvenus';

const DEGREES = 180 / Math.PI;
const SECOND = 1 / 3600 / DEGREES;
const KILOMETRES = 1 / 149597870.7;

/** The smallest term kept: longitude and latitude in radians, distance in astronomical units. */
const smallest = {
  earth: [4e-7, 6e-7, 1e-6],
  venus: [6e-7, 6e-7, 8e-7],
  mars: [8e-7, 1e-6, 1.3e-6],
  jupiter: [4e-6, 4e-6, 2.2e-5],
  saturn: [4e-6, 4e-6, 5e-5],
  moon: [6e-7, 7e-7, 3e-8],
};

/** General precession in longitude, seconds of arc by powers of the century, as ELP/MPP02 has it. */
const PRECESSION = [0, 5028.79695, 1.112, 0.000077];

/** A planet's coordinate: by power of the century, terms `[size, phase, speed]` of cosines; radians. */
function planetTerms(powers) {
  return Object.entries(powers).map(([power, rows]) => rows.map(([size, phase, speed]) => [size / 10 ** power, phase, speed / 10]));
}

/** The same of the Moon, whose phases are no straight lines: their bend goes to the power two higher. */
function moonTerms(powers, unit) {
  const terms = [[], [], [], [], [], []];
  for (const [power, rows] of Object.entries(powers)) {
    for (const [size, phase, speed, bend = 0] of rows) {
      terms[power].push([size * unit, phase - Math.PI / 2, speed]);
      terms[Number(power) + 2].push([size * unit * bend, phase, speed]);
    }
  }
  return terms;
}

function moonLongitude() {
  const terms = moonTerms(elp.L, SECOND);
  elp.W1.forEach((value, power) => terms[power].push([value + (PRECESSION[power] ?? 0) * SECOND, 0, 0]));
  return terms;
}

const theories = {
  ...Object.fromEntries(Object.entries({ earth, venus, mars, jupiter, saturn }).map(([name, { L, B, R }]) => [name, [L, B, R].map(planetTerms)])),
  moon: [moonLongitude(), moonTerms(elp.B, SECOND), moonTerms(elp.R, KILOMETRES)],
};

function valueAt(powers, century) {
  return powers.reduceRight((sum, terms) => terms.reduce((part, [size, phase, speed]) => part + size * Math.cos(phase + speed * century), 0) + sum * century, 0);
}

/** Solves a symmetric positive system (Cholesky); `matrix` row by row, its lower half. */
function solve(matrix, right) {
  const count = right.length;
  for (let row = 0; row < count; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let rest = matrix[row * count + column];
      for (let k = 0; k < column; k += 1) rest -= matrix[row * count + k] * matrix[column * count + k];
      matrix[row * count + column] = row === column ? Math.sqrt(rest) : rest / matrix[column * count + column];
    }
  }
  const forward = new Float64Array(count);
  for (let row = 0; row < count; row += 1) {
    let rest = right[row];
    for (let k = 0; k < row; k += 1) rest -= matrix[row * count + k] * forward[k];
    forward[row] = rest / matrix[row * count + row];
  }
  for (let row = count - 1; row >= 0; row -= 1) {
    for (let k = row + 1; k < count; k += 1) forward[row] -= matrix[k * count + row] * forward[k];
    forward[row] /= matrix[row * count + row];
  }
  return forward;
}

/** The terms kept, fitted anew: `constants` and `[cosine, sine, speed]` by power. */
function fit(whole, least) {
  const kept = whole.map((terms) => terms.filter(([size, , speed]) => speed !== 0 && Math.abs(size) >= least));
  while (kept.length > 4 && kept.at(-1).length === 0) kept.pop();
  while (kept.length < 4) kept.push([]);
  const constants = kept.map((_, power) => (whole[power] ?? []).filter(([, , speed]) => speed === 0).reduce((sum, [size, phase]) => sum + size * Math.cos(phase), 0));
  const waves = kept.map((terms) => terms.map(([size, phase, speed]) => [size * Math.cos(phase), -size * Math.sin(phase), speed]));
  const columns = waves.flatMap((terms, power) => terms.flatMap((wave) => [{ power, wave, part: 0 }, { power, wave, part: 1 }]));
  for (let power = 0; power < 4; power += 1) columns.push({ power });
  const count = columns.length;
  const samples = Math.max(3000, count * 12);
  const matrix = new Float64Array(count * count);
  const right = new Float64Array(count);
  for (let sample = 0; sample < samples; sample += 1) {
    // Denser towards the ends of the two centuries, where a cubic is loosest.
    const century = -Math.cos((Math.PI * (sample + 0.5)) / samples);
    const have = kept.map((terms, power) => [...terms, [constants[power], 0, 0]]);
    const missing = valueAt(whole, century) - valueAt(have, century);
    const row = columns.map(({ power, wave, part }) => century ** power * (wave ? [Math.cos, Math.sin][part](wave[2] * century) : 1));
    for (let i = 0; i < count; i += 1) {
      right[i] += row[i] * missing;
      for (let j = 0; j <= i; j += 1) matrix[i * count + j] += row[i] * row[j];
    }
  }
  // Two waves of nearly the same speed cannot be told apart in two centuries: none may run away.
  for (let i = 0; i < count; i += 1) matrix[i * count + i] += samples * 3e-5;
  solve(matrix, right).forEach((change, index) => {
    const { power, wave, part } = columns[index];
    if (wave) wave[part] += change;
    else constants[power] += change;
  });
  return { constants, waves };
}

const shortest = (value, digits) => String(Number(value.toFixed(Math.max(0, Math.min(12, digits))))).replace(/^(-?)0\./, '$1.');

/** One coordinate as text: `unit`, and by power the constant and then size, phase and speed of each wave. */
function written(whole, least, angle) {
  const { constants, waves } = fit(whole, least);
  const scale = angle ? DEGREES : 1;
  // Rounding keeps to an eighth of the smallest term.
  const unit = Number(((least * scale) / 4).toPrecision(1)) / scale;
  const powers = waves.map((terms, power) => {
    const rows = terms
      .map(([cosine, sine, speed]) => [Math.hypot(cosine, sine), Math.atan2(-sine, cosine), speed])
      .sort((a, b) => b[0] - a[0])
      .map(([size, phase, speed]) => {
        const digits = Math.ceil(Math.log10(size / unit)) + (size / unit > 1e5 ? 1 : 0) - 1;
        return [Math.round(size / unit), shortest((((phase * DEGREES) % 360) + 360) % 360, digits - 1), shortest(speed * DEGREES, digits - 1)].join(', ');
      });
    const constant = shortest(constants[power] * scale, 1 - Math.log10(unit * scale));
    return [constant, ...rows];
  });
  while (powers.length > 1 && powers.at(-1).length === 1 && Math.abs(Number(powers.at(-1)[0])) < (unit * scale) / 2) powers.pop();
  const lines = powers.map((parts) => {
    const rows = [];
    for (let index = 0; index < parts.length; index += 5) rows.push(`      ${parts.slice(index, index + 5).join(', ')},`);
    return `    [\n${rows.join('\n')}\n    ],`;
  });
  return `{\n    unit: ${Number((unit * scale).toPrecision(1))},\n    powers: [\n${lines.map((line) => line.replace(/^/gm, '  ')).join('\n')}\n    ],\n  }`;
}

const said = {
  earth: ['the Earth', 'VSOP87B, Bretagnon and Francou 1988', 'from the Sun, mean ecliptic and equinox of J2000.0'],
  venus: ['Venus', 'VSOP87B, Bretagnon and Francou 1988', 'from the Sun, mean ecliptic and equinox of J2000.0'],
  mars: ['Mars', 'VSOP87B, Bretagnon and Francou 1988', 'from the Sun, mean ecliptic and equinox of J2000.0'],
  jupiter: ['Jupiter', 'VSOP87B, Bretagnon and Francou 1988', 'from the Sun, mean ecliptic and equinox of J2000.0'],
  saturn: ['Saturn', 'VSOP87B, Bretagnon and Francou 1988', 'from the Sun, mean ecliptic and equinox of J2000.0'],
  moon: ['the Moon', 'ELP/MPP02, Chapront and Francou 2003', 'from the Earth, mean ecliptic and equinox of date'],
};

for (const [name, coordinates] of Object.entries(theories)) {
  const [who, source, frame] = said[name];
  const [longitude, latitude, distance] = coordinates.map((whole, index) => written(whole, smallest[name][index], index < 2));
  const text = `import type { OrbitSeries } from './series.js';

/**
 * Where ${who} is: ${frame}; degrees and astronomical
 * units. Source: ${source}, abridged and fitted
 * to the whole over 1900 to 2100 by tests/support/make-sky-series.js, which see.
 */
export const ${name}Series: OrbitSeries = {
  longitude: ${longitude},
  latitude: ${latitude},
  distance: ${distance},
};
`;
  writeFileSync(fileURLToPath(new URL(`../../core/sky/${name}-series.ts`, import.meta.url)), text);
  console.log(`${name}-series.ts: ${text.length} characters`);
}
