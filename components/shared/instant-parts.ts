import { formatDate, formatTimeOfDay, parseInstant } from '../../core/time/instant.js';
import { isUnset } from './field.js';

/** An instant as the texts of two fields. */
export interface InstantParts {
  readonly date: string;
  readonly time: string;
  /** Whether it was understood; what was not is shown as it is, where it can be put right. */
  readonly understood: boolean;
}

const partsOf = (instant: Date): InstantParts => ({ date: formatDate(instant), time: formatTimeOfDay(instant), understood: true });

/** The parts of an instant a page has set; null where it says nothing. */
export function instantParts(instant: unknown): InstantParts | null {
  if (instant instanceof Date) return Number.isNaN(instant.getTime()) ? null : partsOf(instant);
  if (isUnset(instant)) return null;
  const reading = parseInstant(String(instant));
  if (reading.ok) return partsOf(reading.value);
  if (reading.refusal === 'empty') return null;
  const [date = '', time = ''] = String(instant).split(/[T ]/);
  return { date, time, understood: false };
}
