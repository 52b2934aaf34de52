import { checkRange } from '../angle/check-number.js';
import { circularMean } from '../angle/circular-mean.js';
import { wrap180 } from '../angle/wrap.js';
import { checkInstant } from '../time/check-instant.js';
import { combineDoubt } from '../working/doubt.js';
import { checkPosition } from './geodesic-line.js';
import type { Position } from './geodesic-line.js';
import { checkReading, deviationDoubtOf, splitOf } from './split-error.js';
import { transitCautions } from './transit-cautions.js';
import { transitDoubts, usualTransitDoubts } from './transit-doubts.js';
import { transitLine } from './transit-line.js';
import type { TransitObservation } from './transit-observation.js';
import type { MarkError, NoTransit, TransitSight } from './transit-result.js';
import { transitSteps } from './transit-steps.js';
import { variationSource } from './variation-source.js';

function checkObservation(observation: TransitObservation): void {
  const { sightings, ship, instant } = observation;
  if (sightings.length === 0) throw new RangeError('sightings: there is none');
  sightings.forEach(({ compassBearing }, index) => checkRange(`sightings[${index}].compassBearing`, compassBearing, 0, 360));
  if (ship) checkPosition('ship', ship);
  if (instant) checkInstant('instant', instant);
  // What is common to all of them.
  checkReading({ ...observation, compassBearing: 0 });
}

/** The ship's place, or a mark's: near enough for the variation. */
function placeOf({ ship, sightings }: TransitObservation): Position | null {
  if (ship) return ship;
  for (const { line } of sightings) if (line.kind === 'two-marks') return line.front;
  return null;
}

type OneError = Omit<MarkError, 'residual'>;

/** The arithmetic mean about the circular one: the same arithmetic as by hand, wherever the errors lie. */
function meanError(errors: readonly number[]): number | null {
  const middle = circularMean(errors);
  if (middle === null) return null;
  return wrap180(middle + errors.reduce((sum, error) => sum + wrap180(error - middle), 0) / errors.length);
}

function scatterOf(residuals: readonly number[]): number | null {
  return residuals.length < 2 ? null : Math.hypot(...residuals) / Math.sqrt(residuals.length - 1);
}

/**
 * Compass error from marks ashore: the mean over all lines, its split, how far to trust it, and
 * the working. Throws `RangeError` naming a bad argument.
 */
export function transitSight(observation: TransitObservation): TransitSight | NoTransit {
  checkObservation(observation);
  const { ship, instant, sightings } = observation;
  const taken: OneError[] = [];
  for (const [index, { line, compassBearing }] of sightings.entries()) {
    const found = transitLine(line, ship);
    if (!found.determined) return { determined: false, reason: found.reason, index };
    const error = wrap180(found.line.trueBearing - compassBearing);
    taken.push({ ...found.line, kind: line.kind, compassBearing, error });
  }
  const error = meanError(taken.map((one) => one.error));
  if (error === null) return { determined: false, reason: 'errors-cancel', index: 0 };
  const marks = taken.map((one) => ({ ...one, residual: wrap180(one.error - error) }));
  const place = placeOf(observation);
  // A line by its charted bearing alone may lie anywhere: no place is as good as no date.
  const variation = variationSource(place ?? { latitude: 0, longitude: 0 }, (place && instant) ?? null, observation.variation);
  const split = splitOf(error, variation, observation);
  const doubts = { ...usualTransitDoubts, ...observation.doubts };
  const doubt = combineDoubt(transitDoubts(marks, doubts));
  const [first, second] = marks;
  const found = {
    determined: true as const,
    marks,
    trueBearing: first && !second ? first.trueBearing : null,
    ...split,
    scatter: scatterOf(marks.map(({ residual }) => residual)),
    deviationDoubt: deviationDoubtOf(split, doubt),
    doubt,
  };
  return { ...found, steps: transitSteps(observation, found), cautions: transitCautions(place ? { ...found, latitude: place.latitude } : found, doubts) };
}
