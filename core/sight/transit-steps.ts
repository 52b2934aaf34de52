import { wrap180 } from '../angle/wrap.js';
import { arctan, constant, product, quotient, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Quantity } from '../working/quantity.js';
import { step } from '../working/step.js';
import type { Step } from '../working/step.js';
import { errorSteps } from './error-steps.js';
import type { Position } from './geodesic-line.js';
import { meridionalParts } from './rhumb-line.js';
import type { TransitLine } from './transit-line.js';
import type { MarkError, TransitSight } from './transit-result.js';
import type { TransitObservation } from './transit-observation.js';

type Found = Omit<TransitSight, 'steps' | 'cautions'>;

/** Δλ = 60 (λ₂ − λ₁), the shorter way: a whole turn is added or taken where the line crosses 180°. */
function longitudeStep(from: Position, to: Position): Step {
  const turn = wrap180(to.longitude - from.longitude);
  const added = Math.round((turn - (to.longitude - from.longitude)) / 360) * 360;
  const [first, second] = [symbol('λ_1'), symbol('λ_2')];
  const whole = constant(Math.abs(added));
  const difference = added > 0 ? sum([second, whole], [first]) : added < 0 ? sum([second], [first, whole]) : sum([second], [first]);
  const values = { λ_1: quantity(from.longitude, 'longitude'), λ_2: quantity(to.longitude, 'longitude') };
  return step('transit.longitude', 'Δλ', product(constant(60), difference), values, quantity(turn * 60, 'number'));
}

/** tan C = Δλ / ΔM, C in its own quadrant: Pub. 9, Mercator sailing. */
function rhumbSteps(from: Position, to: Position, bearing: number): Step[] {
  const longitude = longitudeStep(from, to);
  const parts = quantity(meridionalParts(from.latitude, to.latitude), 'number');
  const angle = arctan(quotient(symbol('Δλ'), symbol('ΔM')));
  const added = parts.value < 0 ? 180 : longitude.result.value < 0 ? 360 : 0;
  const expression = added === 0 ? angle : sum([angle, constant(added)]);
  return [
    longitude,
    step('transit.parts', 'ΔM', null, {}, parts),
    step('transit.rhumb', 'C_chart', expression, { Δλ: longitude.result, ΔM: parts }, quantity(bearing, 'bearing')),
  ];
}

function endsOf(line: TransitLine, ship: Position | undefined): readonly [Position, Position] | null {
  if (line.kind === 'two-marks') return [line.front, line.rear];
  return line.kind === 'one-mark' && ship ? [ship, line.mark] : null;
}

function trueStep(mark: MarkError, name: string): Step {
  return step(`transit.true.${mark.kind}`, name, null, {}, quantity(mark.trueBearing, 'bearing'));
}

/** Several lines: the error by each, then their mean. */
function severalSteps(observation: TransitObservation, found: Found): Step[] {
  const letter = observation.compass === 'magnetic' ? 'C' : 'G';
  const error = observation.compass === 'magnetic' ? 'CE' : 'GE';
  const errors: Record<string, Quantity> = {};
  const steps = found.marks.flatMap((mark, index) => {
    const [T, C, E] = [`T_${index + 1}`, `${letter}_${index + 1}`, `${error}_${index + 1}`];
    // Written near the mean, so that the arithmetic holds at the seam of half a turn.
    errors[E] = quantity(found.error + mark.residual, 'error');
    const values = { [T]: quantity(mark.trueBearing, 'bearing'), [C]: quantity(mark.compassBearing, 'bearing') };
    const expression = sum([symbol(T)], [symbol(C)]);
    return [trueStep(mark, T), step(`transit.error.${observation.compass}`, E, expression, values, quantity(mark.error, 'error'))];
  });
  const mean = quotient(sum(Object.keys(errors).map(symbol)), constant(found.marks.length));
  return [...steps, step('transit.mean', error, mean, errors, quantity(found.error, 'error'))];
}

/** The working of one or several lines: chart bearing, true bearing, error, deviation, difference from the card. */
export function transitSteps(observation: TransitObservation, found: Found): Step[] {
  const [mark, second] = found.marks;
  const [sighting] = observation.sightings;
  if (!mark || !sighting) return [];
  const ofError = errorSteps({ ...found, trueBearing: mark.trueBearing, compassBearing: mark.compassBearing });
  if (second) return [...severalSteps(observation, found), ...ofError.slice(1)];
  const ends = endsOf(sighting.line, observation.ship);
  const chart = ends && mark.rhumbBearing !== null ? rhumbSteps(...ends, mark.rhumbBearing) : [];
  return [...chart, trueStep(mark, 'T'), ...ofError];
}
