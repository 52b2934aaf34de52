/** What the makers of the tables of the sky share: the sum of a theory, the fit of a short one to it, and figures as text. */

import { ladders } from './ladders.js';

export const DEGREES = 180 / Math.PI;

/** Value of a theory at a time in centuries: by power of it, terms `[size, phase, speed]` of cosines. */
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

/**
 * The amounts of some columns (each a function of the century, with an amount to start from)
 * that come nearest to a whole theory over 1900 to 2100.
 */
export function fitted(whole, columns) {
  const count = columns.length;
  const samples = Math.max(3000, count * 12);
  const matrix = new Float64Array(count * count);
  const right = new Float64Array(count);
  for (let sample = 0; sample < samples; sample += 1) {
    // Denser towards the ends of the two centuries, where a cubic is loosest.
    const century = -Math.cos((Math.PI * (sample + 0.5)) / samples);
    const row = columns.map(({ at }) => at(century));
    const missing = valueAt(whole, century) - columns.reduce((sum, { start }, index) => sum + start * row[index], 0);
    for (let i = 0; i < count; i += 1) {
      right[i] += row[i] * missing;
      for (let j = 0; j <= i; j += 1) matrix[i * count + j] += row[i] * row[j];
    }
  }
  // Two waves of nearly the same speed cannot be told apart in two centuries: none may run away.
  for (let i = 0; i < count; i += 1) matrix[i * count + i] += samples * 3e-5;
  const changes = solve(matrix, right);
  return columns.map(({ start }, index) => start + changes[index]);
}

/** Columns of a free wave times a power of the century: its cosine and its sine. */
export function waveColumns([size, phase, speed], power) {
  return [
    { start: size * Math.cos(phase), at: (century) => century ** power * Math.cos(speed * century) },
    { start: -size * Math.sin(phase), at: (century) => century ** power * Math.sin(speed * century) },
  ];
}

/** A wave of two amounts, its speed known. */
export const waveOf = (cosine, sine, speed) => ({ size: Math.hypot(cosine, sine), phase: Math.atan2(-sine, cosine), speed });

/** Columns of a cubic, whose constants the theory gives by power. */
export const cubicColumns = (whole) =>
  [0, 1, 2, 3].map((power) => ({
    start: (whole[power] ?? []).filter(([, , speed]) => speed === 0).reduce((sum, [size, phase]) => sum + size * Math.cos(phase), 0),
    at: (century) => century ** power,
  }));

/** The unit of a coordinate's sizes: rounding keeps to an eighth of the smallest term. `scale` makes degrees of radians. */
export const unitOf = (least, scale) => Number(((least * scale) / 4).toPrecision(1)) / scale;

const shortest = (value, digits) => String(Number(value.toFixed(Math.max(0, Math.min(12, digits))))).replace(/^(-?)0\./, '$1.');

/** The decimals of phases and speeds, degrees, that the size of a wave needs. */
const decimalsFor = (sizeInUnits) => Math.ceil(Math.log10(sizeInUnits)) + (sizeInUnits > 1e5 ? 1 : 0) - 2;

const phaseText = ({ size, phase }, unit) => shortest((((phase * DEGREES) % 360) + 360) % 360, decimalsFor(size / unit));

/** A row of a `Series`: the speed of the lowest rung, then size and phase of each. */
function rowText(ladder, unit) {
  const largest = Math.max(...ladder.map((wave) => (wave ? wave.size : 0)));
  const rungs = ladder.map((wave) => (wave ? `${Math.round(wave.size / unit)}, ${phaseText(wave, unit)}` : '0, 0'));
  return `[${[shortest(ladder[0].speed * DEGREES, decimalsFor(largest / unit)), ...rungs].join(', ')}]`;
}

/** The properties of a `Series` as text: constants by power, and waves by power, in radians (or astronomical units) as the theory; `step` is the mean motion. */
export function seriesText(constants, waves, { unit, scale, step }) {
  const largestFirst = (a, b) => Math.max(...b.map((wave) => wave?.size ?? 0)) - Math.max(...a.map((wave) => wave?.size ?? 0));
  const powers = constants.map((constant, power) => [
    shortest(constant * scale, 1 - Math.log10(unit * scale)),
    ...ladders(waves[power] ?? [], step).sort(largestFirst).map((ladder) => rowText(ladder, unit)),
  ]);
  while (powers.length > 1 && powers.at(-1).length === 1 && Math.abs(Number(powers.at(-1)[0])) < (unit * scale) / 2) powers.pop();
  return `unit: ${Number((unit * scale).toPrecision(1))},\npowers: [\n${powers.map((parts) => `[\n${linesOf(parts)}],\n`).join('')}],\n`;
}

/** Parts of a list as lines of an easy length. */
export function linesOf(parts) {
  const lines = [''];
  for (const part of parts) {
    const line = lines.pop();
    if (line.length + part.length > 120 && line !== '') lines.push(line, `${part}, `);
    else lines.push(`${line}${part}, `);
  }
  return lines.map((line) => `${line.trim()}\n`).join('');
}

/** Code with every line moved in by the brackets open before it. */
export function indented(code) {
  let depth = 0;
  return code
    .split('\n')
    .map((line) => {
      const [opened, closed] = [line.match(/[[{]/g)?.length ?? 0, line.match(/[\]}]/g)?.length ?? 0];
      const own = Math.min(depth, depth + opened - closed);
      depth += opened - closed;
      return line && '  '.repeat(own) + line;
    })
    .join('\n');
}
