import { wrap180 } from '../angle/wrap.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import { errorCautions } from './error-cautions.js';
import { METRES_PER_MILE } from './line-bearing.js';
import { SENSITIVE_RATIO, sensitivity, turnOfMark, turnOfMarks } from './transit-doubts.js';
import type { TransitDoubts } from './transit-doubts.js';
import { beyondSight } from './transit-line.js';
import type { MarkError, TransitSight } from './transit-result.js';

/** The latitude where it is known: in high ones a gyro has little to hold it. */
type Found = Omit<TransitSight, 'steps' | 'cautions'> & { readonly latitude?: number };

/** An error this near to half a turn off what is to be expected is a bearing taken the wrong way, degrees. */
const NEAR_RECIPROCAL = 30;
/** Chart and eye differing by this much are worth a word, degrees. */
const CONVERGENCE = 0.1;
/** Places of marks that leave their line more uncertain than this, degrees, are worth a warning. Common practice, no source. */
const UNCERTAIN = 1;
/** Standard deviations beyond which a reading does not belong to the others. Common practice, no source. */
const ODD = 3;
/** A line that cannot have been seen so from there: its place is at fault, and what follows from that comes after it. */
const WRONG_PLACE: ReadonlySet<string> = new Set(['mark-beyond-sight', 'marks-far-apart', 'marks-exchanged', 'between-marks']);
/** What a wrong place does to the error of the one line. */
const CONSEQUENCES: ReadonlySet<string> = new Set(['deviation-large', 'deviation-unreal', 'gyro-error-large', 'far-from-card', 'reciprocal', 'other-side']);

/** As it is said at sea: in whole metres within half a mile. */
const distanceOf = (metres: number): Caution['values'][string] =>
  metres < METRES_PER_MILE / 2 ? quantity(Math.round(metres), 'metres') : quantity(metres / METRES_PER_MILE, 'nauticalMiles');

/** Whether what is known of the places of ship and marks tells the bearing of a line so short. */
function closeCautions({ kind, markDistance, shipDistance }: MarkError, number: string, doubts: TransitDoubts): Caution[] {
  if (kind === 'two-marks' && markDistance !== null) {
    const effect = turnOfMarks(doubts.marks, markDistance);
    if (effect > UNCERTAIN) return [warning('marks-close', { number, apart: distanceOf(markDistance), places: quantity(doubts.marks, 'metres'), effect: quantity(effect, 'angle') })];
  }
  if (kind === 'one-mark' && shipDistance !== null) {
    const effect = turnOfMark(doubts.ship, doubts.marks, shipDistance);
    if (effect > UNCERTAIN) return [warning('mark-close', { number, away: distanceOf(shipDistance), ship: quantity(doubts.ship, 'metres'), effect: quantity(effect, 'angle') })];
  }
  return [];
}

/** Where the ship stands, and whether the marks are fit for it. */
function lineCautions(mark: MarkError, number: string, doubts: TransitDoubts): Caution[] {
  const { markDistance, shipDistance, ship } = mark;
  if (shipDistance !== null && beyondSight(shipDistance)) return [warning('mark-beyond-sight', { number, distance: distanceOf(shipDistance) })];
  if (markDistance !== null && beyondSight(markDistance)) return [warning('marks-far-apart', { number, distance: distanceOf(markDistance) })];
  if (ship?.side === 'behind') return [warning('marks-exchanged', { number })];
  if (ship?.side === 'between') return [warning('between-marks', { number })];
  const close = closeCautions(mark, number, doubts);
  const cautions = [...close];
  if (markDistance !== null && shipDistance !== null && ship) {
    const supposed = sensitivity(markDistance, shipDistance, doubts.opening).offLine;
    const allowed = ODD * Math.hypot(supposed, doubts.ship, doubts.marks * (1 + shipDistance / markDistance));
    if (Math.abs(ship.offLine) > allowed) {
      cautions.push(warning('off-line', { number, distance: distanceOf(Math.abs(ship.offLine)), allowed: distanceOf(allowed) }));
    }
    // Marks whose line is not known are no finer for being far away.
    if (close.length === 0 && shipDistance > SENSITIVE_RATIO * markDistance) {
      cautions.push(note('transit-insensitive', { number, apart: distanceOf(markDistance), away: distanceOf(shipDistance), offLine: quantity(supposed, 'metres') }));
    }
  }
  if (mark.rhumbBearing !== null && Math.abs(wrap180(mark.trueBearing - mark.rhumbBearing)) > CONVERGENCE) {
    cautions.push(note('convergence', { number, difference: quantity(Math.abs(wrap180(mark.trueBearing - mark.rhumbBearing)), 'angle') }));
  }
  return cautions;
}

/** The one reading that lies farthest from the mean of the others, beyond its doubt. */
function oddCautions({ marks, doubt }: Found): Caution[] {
  const count = marks.length;
  if (count < 2) return [];
  // Each mark's own doubt, supposed alike: that of the mean times the root of their number.
  const each = doubt.total * Math.sqrt(count);
  const allowed = ODD * each * Math.sqrt(1 + 1 / (count - 1));
  const fromOthers = marks.map(({ residual }) => (Math.abs(residual) * count) / (count - 1));
  const farthest = fromOthers.indexOf(Math.max(...fromOthers));
  const difference = fromOthers[farthest] ?? 0;
  if (difference <= allowed) return [];
  const values = { number: String(farthest + 1), difference: quantity(difference, 'angle') };
  return [count === 2 ? warning('marks-disagree', values) : warning('odd-mark', values)];
}

/** What replaces the words for bodies of the sky, which do not fit marks. */
function splitCautions(found: Found): Caution[] {
  const { marks, variation } = found;
  const [first] = marks;
  const expected = found.compass === 'gyro' || variation.source === 'none' ? 0 : variation.value;
  const compassBearing = first?.compassBearing ?? 0;
  const split = { ...found, trueBearing: first?.trueBearing ?? 0, compassBearing };
  const usual = errorCautions(split, found.deviationDoubt ?? found.doubt.total);
  if (Math.abs(wrap180(found.error - expected)) > 180 - NEAR_RECIPROCAL) {
    // Every other oddity of the split follows from this one.
    const zones = usual.filter(({ code }) => code === 'blackout-zone' || code === 'caution-zone');
    return [warning('reciprocal', { error: quantity(found.error, 'error'), turned: quantity(wrap180(found.error + 180), 'error') }), ...zones];
  }
  if (variation.source !== 'none' || variation.reason !== 'no-date') return usual;
  return usual.map((caution) => (caution.code === 'variation-missing' ? note('place-or-time-missing') : caution));
}

/** Everything odd about an error from marks ashore, by code; `number` counts the lines from 1. */
export function transitCautions(found: Found, doubts: TransitDoubts): Caution[] {
  const lines = found.marks.flatMap((mark, index) => lineCautions(mark, String(index + 1), doubts));
  const causes = lines.filter(({ code }) => WRONG_PLACE.has(code));
  // Of several lines the others may be right, and the mean large for another reason.
  const explained = causes.length > 0 && found.marks.length === 1;
  const ofSplit = splitCautions(found).filter(({ code }) => !explained || !CONSEQUENCES.has(code));
  // That a line is odd follows from its wrong place; of two lines, which of them is odd does.
  const odd = oddCautions(found).filter(({ values }) => !causes.some(({ values: { number } }) => found.marks.length === 2 || number === values['number']));
  return [...causes, ...ofSplit, ...odd, ...lines.filter((caution) => !causes.includes(caution))];
}
