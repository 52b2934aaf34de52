import { checkRange } from '../angle/check-number.js';
import { note, warning, type Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { DeviationCard } from './deviation-card.js';
import { deviationCurve } from './deviation-curve.js';
import { deviationLimits, type DeviationLimit } from './deviation-limits.js';
import { sortedRows } from './deviation-table.js';
import { widestGap } from './heading-gaps.js';

export interface CardCheck {
  /** The largest deviation either way and the compass heading it is on, looked for at every degree and row. */
  readonly largest: { readonly deviation: number; readonly heading: number };
  /** Largest easterly less largest westerly deviation, degrees. */
  readonly spread: number;
  readonly withinLimit: boolean;
  /** Codes: `beyond-limit`, `slope-too-steep`, `lost-headings`, `wide-gap`, `half-of-compass`, `constant-card`, `sum-not-zero`. */
  readonly cautions: readonly Caution[];
}

/** A card this flat says one thing on every heading; a mean this large is a constant error: degrees; common practice, no source. */
const FLAT = 0.2;
const LARGE_MEAN = 1;
/** No iron gives a constant like this, degrees: what the compass was compared with is wrong, and so is all that follows. Common practice, no source. */
const GROSS_MEAN = 5;

function aboutGaps(card: DeviationCard): Caution[] {
  if (card.kind !== 'table') return [];
  const gap = widestGap(sortedRows(card.rows).map(({ heading }) => heading));
  if (gap === null || gap.width <= 90) return [];
  const values = { from: quantity(gap.from, 'bearing'), to: quantity(gap.to, 'bearing') };
  return [gap.width >= 180 ? warning('half-of-compass', values) : note('wide-gap', values)];
}

/**
 * Holds a card against a limit (5° on every heading if left out) and against itself.
 * Throws `RangeError` as `deviationCurve`, or naming the limit's `largest` unless it lies in (0, 180].
 */
export function checkCard(card: DeviationCard, limit: DeviationLimit = deviationLimits[0] as DeviationLimit): CardCheck {
  checkRange('limit.largest', limit.largest, Number.MIN_VALUE, 180);
  const curve = deviationCurve(card);
  const rows = card.kind === 'table' ? sortedRows(card.rows) : [];
  const places = 360 + rows.length;
  let largest = { deviation: 0, heading: 0 };
  let most = -Infinity;
  let least = Infinity;
  let total = 0;
  let lost = 0;
  for (let place = 0; place < places; place++) {
    const heading = rows[place - 360]?.heading ?? place;
    const deviation = curve.at(heading);
    if (deviation === null) {
      lost++;
      continue;
    }
    if (Math.abs(deviation) > Math.abs(largest.deviation)) largest = { deviation, heading };
    if (deviation > most) most = deviation;
    if (deviation < least) least = deviation;
    if (place < 360) total += deviation;
  }
  const spread = lost === places ? 0 : most - least;
  const size = Math.abs(largest.deviation);
  const withinLimit = lost === 0 && (limit.inclusive ? size <= limit.largest : size < limit.largest);
  const cautions = aboutGaps(card);
  if (lost > 0) cautions.push(warning('lost-headings', { count: quantity(lost, 'number') }));
  if (!withinLimit) {
    cautions.push(
      warning('beyond-limit', {
        deviation: quantity(largest.deviation, 'error'),
        heading: quantity(largest.heading, 'bearing'),
        limit: quantity(limit.largest, 'angle'),
      }),
    );
  }
  for (const { from, to } of curve.ambiguous) {
    cautions.push(warning('slope-too-steep', { from: quantity(from, 'bearing'), to: quantity(to, 'bearing') }));
  }
  const mean = total / 360;
  const values = { mean: quantity(mean, 'error') };
  if (lost === 0 && spread <= FLAT && size > FLAT) cautions.push(warning('constant-card', values));
  else if (lost === 0 && Math.abs(mean) > GROSS_MEAN) cautions.unshift(warning('sum-not-zero', values));
  else if (lost === 0 && Math.abs(mean) > LARGE_MEAN) cautions.push(note('sum-not-zero', values));
  return { largest, spread, withinLimit, cautions };
}
