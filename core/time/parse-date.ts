import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';

/** A day of the Gregorian calendar, UTC; months from 1. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const MONTHS = ['JANUARY', 'FEBRUARY', 'MARCH', 'APRIL', 'MAY', 'JUNE', 'JULY', 'AUGUST', 'SEPTEMBER', 'OCTOBER', 'NOVEMBER', 'DECEMBER'];

/** The month a name or its beginning of three letters or more stands for, from 1; 0 for none. */
function monthNamed(name: string): number {
  return MONTHS.findIndex((month) => month.startsWith(name)) + 1;
}

function checked(year: number, month: number, day: number): Reading<CivilDate> {
  if (year < 1900 || year > 2100) return refused('out-of-range');
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? understood({ year, month, day }) : refused('no-such-day');
}

/**
 * Reads a day from 1900 to 2100: `2026-11-26`, `20261126`, `26 Nov 2026`, `26.11.2026`.
 * Figures parted by strokes are refused: half the world puts the month first.
 */
export function parseDate(text: string): Reading<CivilDate> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(plain) ?? /^(\d{4})(\d{2})(\d{2})$/.exec(plain);
  if (iso) return checked(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const named = /^(\d{1,2})[ .-]*([A-Z]{3,9})[ .,-]*(\d{4})$/.exec(plain);
  if (named) {
    const month = monthNamed(named[2] ?? '');
    return month === 0 ? refused('not-understood') : checked(Number(named[3]), month, Number(named[1]));
  }
  const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/.exec(plain);
  if (dotted) return checked(Number(dotted[3]), Number(dotted[2]), Number(dotted[1]));
  return refused(/^\d{1,4}[/-]\d{1,2}[/-]\d{1,4}$/.test(plain) ? 'ambiguous-date' : 'not-understood');
}
