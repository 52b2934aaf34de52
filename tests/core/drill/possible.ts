/** Whether what a learner is told can be written, and could be met with at sea. */
import assert from 'node:assert/strict';
import type { Exercise } from '../../../core/drill/exercise.js';
import type { Unit } from '../../../core/working/quantity.js';
import { secondPosition } from '../sky/second-ephemeris.js';

const rad = Math.PI / 180;

/** How many of the smallest figure written make one of a unit: tenths of a degree, of a minute of arc. */
const perUnit: Partial<Record<Unit | 'hour', number>> = {
  bearing: 10,
  error: 10,
  latitude: 600,
  declination: 600,
  longitude: 600,
  hourAngle: 100,
  angle: 100,
  arcminutes: 10,
  metres: 10,
  nanotesla: 0.1,
  hour: 1,
};

/** By definition; the declinations of Canopus and Vega, which stand furthest out (from memory). */
const ranges: Partial<Record<Unit | 'hour', readonly [number, number]>> = {
  bearing: [0, 359.95],
  hourAngle: [0, 359.995],
  latitude: [-90, 90],
  declination: [-52.8, 38.9],
  longitude: [-180, 180],
  hour: [0, 24],
};

interface Figure {
  readonly code: string;
  readonly unit: Unit | 'hour';
  readonly value: number;
}

function figuresOf({ givens }: Exercise): Figure[] {
  return givens.flatMap(({ code, value }) => {
    if (value.is === 'quantity') return [{ code, ...value.quantity }];
    if (value.is !== 'table') return [];
    return value.rows.flatMap((row) => value.columns.map((column, index) => ({ ...column, value: row[index] ?? NaN })));
  });
}

function smallest({ code, unit }: Figure): number {
  if (code === 'roseVariation') return 60;
  if (code.startsWith('coefficient')) return 10;
  return code.startsWith('dip') ? 1 : (perUnit[unit] ?? NaN);
}

/** What is read is what the exercise was made with: nothing is told finer than it is written, nor out of its range. */
export function checkFigures(exercise: Exercise): void {
  for (const figure of figuresOf(exercise)) {
    const { code, unit, value } = figure;
    const steps = value * smallest(figure);
    const [least, most] = ranges[unit] ?? [-1e6, 1e6];
    assert.ok(Math.abs(steps - Math.round(steps)) < 1e-6 && value >= least && value <= most, `${exercise.id}: ${code} is told as ${value}`);
  }
}

const textOf = ({ givens }: Exercise, code: string): string | null => {
  const value = givens.find((each) => each.code === code)?.value;
  return value?.is === 'text' ? value.text : value?.is === 'word' ? value.word : null;
};

/** Altitude in degrees, from declination and hour angle (the cosine formula). */
function altitude(latitude: number, declination: number, hourAngle: number): number {
  const sine = Math.sin(latitude * rad) * Math.sin(declination * rad) + Math.cos(latitude * rad) * Math.cos(declination * rad) * Math.cos(hourAngle * rad);
  return Math.asin(sine) / rad;
}

/** When the body was seen: in UTC, or by a clock and its zone; null where neither is told. */
function seenAt(exercise: Exercise): Date | null {
  const utc = textOf(exercise, 'instant');
  if (utc !== null) return new Date(`${utc.replace(' ', 'T')}Z`);
  const clock = textOf(exercise, 'zoneTime');
  if (clock === null) return null;
  const zone = Number(textOf(exercise, 'zoneDescription')?.replace('−', '-').replace(' h', ''));
  return new Date(Date.parse(`${clock.replace(' ', 'T')}Z`) + zone * 3_600_000);
}

/**
 * Where it is told when a body was seen: a star or planet is with the Sun 6° down (civil twilight); the Moon is
 * no thin crescent, by day she shows a quarter of her face, which is 60° from the Sun, and on the horizon
 * she is not seen by day. Common practice, no source.
 */
function checkSeen(exercise: Exercise, told: (code: string) => number): void {
  const body = textOf(exercise, 'body')?.replace('body.', '');
  const instant = seenAt(exercise);
  if (instant === null || body === 'Sun') return;
  const sun = secondPosition('Sun', instant);
  const height = altitude(told('latitude'), sun.declination, sun.gha + told('longitude'));
  if (body !== 'Moon') return assert.ok(height < -5.9, `${exercise.id}: ${body} by day, the Sun at ${height}°`);
  const moon = secondPosition('Moon', instant);
  // The zenith distance of the Moon where the Sun is in the zenith.
  const fromSun = 90 - altitude(sun.declination, moon.declination, moon.gha - sun.gha);
  assert.ok(fromSun > (height > 0.1 ? 59.9 : 19.9), `${exercise.id}: the Moon ${fromSun}° from the Sun, which is at ${height}°`);
  assert.ok(exercise.kind !== 'amplitude' || height < 0.1, `${exercise.id}: the Moon on the horizon by day, the Sun at ${height}°`);
}

/** Dates within the magnetic model, marks of a card's size, a needle that points, a body that is seen. */
export function checkPossible(exercise: Exercise): void {
  const figures = figuresOf(exercise);
  const told = (code: string): number => figures.find((each) => each.code === code)?.value ?? NaN;
  for (const code of ['instant', 'zoneTime', 'date']) {
    const year = Number(textOf(exercise, code)?.slice(0, 4) ?? 2026);
    // The five years of the WMM2025, from the year of this edition.
    assert.ok(year >= 2026 && year <= 2029, `${exercise.id}: ${code} in ${year}`);
    const rose = textOf(exercise, 'roseYear');
    assert.ok(rose === null || Number(rose) < 2026, `${exercise.id}: a rose of ${rose}`);
  }
  for (const { code, value } of figures) {
    // The needle is unreliable below 6000 nT: the WMM's caution zones.
    if (/^H\d$/.test(code)) assert.ok(value >= 6000, `${exercise.id}: ${code} is ${value} nT`);
    // An adjuster would have been called: common practice, no source.
    if (code === 'deviation') assert.ok(Math.abs(value) < 25, `${exercise.id}: a deviation of ${value}°`);
  }
  for (const question of exercise.asked) {
    if (question.is === 'number' && question.code === 'deviation') assert.ok(Math.abs(question.answer) < 25, `${exercise.id}: a deviation of ${question.answer}°`);
  }
  if (exercise.kind === 'amplitude' || exercise.kind === 'azimuth') checkSeen(exercise, told);
  if (exercise.kind === 'azimuth' && exercise.level < 3) {
    const hourAngle = exercise.level === 1 ? told('localHourAngle') : told('greenwichHourAngle') + told('longitude');
    const height = altitude(told('latitude'), told('declination'), hourAngle);
    // Low enough for a bearing over a compass, clear of the horizon: common practice, no source.
    assert.ok(height > 5 && height < 40, `${exercise.id}: a bearing of a body at ${height}°`);
  }
}
