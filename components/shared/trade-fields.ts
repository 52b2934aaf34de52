import { formatBearing, formatError, formatLatitude, formatLongitude, roundTo } from '../../core/angle/format-angle.js';
import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError, parseLatitude, parseLongitude } from '../../core/angle/parse-position.js';
import { wrap180, wrap360 } from '../../core/angle/wrap.js';
import { parseLength } from '../../core/text/parse-length.js';
import { parseNumber } from '../../core/text/parse-number.js';
import { refused } from '../../core/text/reading.js';
import { formatDate, formatTimeOfDay } from '../../core/time/instant.js';
import { parseDate } from '../../core/time/parse-date.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../core/time/parse-time-of-day.js';
import type { Field, North } from './field.js';
import * as shown from './figures.js';

/** One tenth of a minute of arc. */
const TENTH_OF_MINUTE = 1 / 600;

const held = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** One minute on, in tenths of a minute. */
function steppedMinutes(value: number, direction: 1 | -1): number {
  return Math.round((value + (direction * 10) * TENTH_OF_MINUTE) * 600) / 600;
}

/** What a typed position looks like: `33-24.0N`. */
const typed = (text: string): string => text.replace('° ', '-').replace('′ ', '');

export const latitudeField: Field<number> = {
  parse: parseLatitude,
  write: (value) => typed(formatLatitude(value, 2)).replace(/0(?=[NS])/, ''),
  show: shown.formatLatitude,
  step: (value, direction) => held(steppedMinutes(value, direction), -90, 90),
  accepted: 'accepted.latitude',
};

export const longitudeField: Field<number> = {
  parse: parseLongitude,
  write: (value) => typed(formatLongitude(value, 2)).replace(/0(?=[EW])/, ''),
  show: shown.formatLongitude,
  step: (value, direction) => wrap180(steppedMinutes(value, direction)),
  accepted: 'accepted.longitude',
};

/** Tenths of a degree, as a card is read; a host's finer number keeps what it has, to a thousandth. */
const decimalsOf = (value: number): number => [1, 2].find((decimals) => roundTo(value, decimals) === roundTo(value, 3)) ?? 3;

/** A bearing or heading, by the north it is counted from where that is fixed. */
export function bearingField(north: North | ''): Field<number> {
  return {
    parse: parseBearing,
    write: (value) => formatBearing(value, decimalsOf(value)).replace('°', ''),
    show: shown.formatBearing,
    north,
    step: (value, direction) => wrap360(roundTo(value + direction * 0.5, 1)),
    accepted: 'accepted.bearing',
    inputMode: 'decimal',
  };
}

/** A variation, deviation or error, east or west. */
export const errorField: Field<number> = {
  parse: parseError,
  write: (value) => formatError(value, 2).replace(/°\s?/, '').replace(/0(?=[EW]?$)/, ''),
  show: shown.formatError,
  step: (value, direction) => wrap180(roundTo(value + direction * 0.1, 1)),
  accepted: 'accepted.error',
};

export const heightOfEyeField: Field<number> = {
  parse: (text) => parseLength(text, 0, 200),
  write: (value) => String(roundTo(value, 2)),
  show: (value) => `${shown.formatNumber(value, 1)} m`,
  step: (value, direction) => held(roundTo(value + direction * 0.5, 1), 0, 200),
  accepted: 'accepted.heightOfEye',
  inputMode: 'decimal',
};

/** A number from least to most with its unit. */
export function numberField(least: number, most: number, step: number, decimals: number, unit: string, accepted: string): Field<number> {
  return {
    parse: (text) => parseNumber(text, least, most),
    write: (value) => String(roundTo(value, decimals)),
    show: (value) => `${shown.formatNumber(value, decimals)}${unit ? ` ${unit}` : ''}`,
    step: (value, direction) => held(roundTo(value + direction * step, decimals), least, most),
    accepted,
    inputMode: 'decimal',
  };
}

const MILLISECONDS_PER_DAY = 86_400_000;

function civilOf(milliseconds: number): CivilDate {
  const date = new Date(milliseconds);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

const millisecondsOf = (date: CivilDate): number => Date.UTC(date.year, date.month - 1, date.day);

/** The last year the places of the bodies are known for. */
const LAST_YEAR = 2099;

export const dateField: Field<CivilDate> = {
  parse: (text) => {
    const reading = parseDate(text);
    return reading.ok && reading.value.year > LAST_YEAR ? refused('out-of-range') : reading;
  },
  write: (value) => formatDate(new Date(millisecondsOf(value))),
  show: (value) => formatDate(new Date(millisecondsOf(value))),
  step: (value, direction) => civilOf(millisecondsOf(value) + direction * MILLISECONDS_PER_DAY),
  accepted: 'accepted.date',
};

/** Seconds of the day, UTC. */
export const timeField: Field<number> = {
  parse: parseTimeOfDay,
  numbersAreFigures: true,
  write: (value) => formatTimeOfDay(new Date(Math.round(value) * 1000)),
  show: (value) => (value >= 86_400 ? '23:59:60' : formatTimeOfDay(new Date(Math.round(value) * 1000))),
  step: (value, direction) => (Math.round(value / 60 + direction) * 60 + 86_400) % 86_400,
  accepted: 'accepted.time',
};
