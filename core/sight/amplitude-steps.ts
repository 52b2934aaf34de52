import { arcsin, constant, cos, product, quotient, sin, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Quantity } from '../working/quantity.js';
import { step } from '../working/step.js';
import type { Step } from '../working/step.js';
import type { AmplitudeSight } from './amplitude-result.js';
import type { AmplitudeObservation } from './amplitude-observation.js';
import { errorSteps } from './error-steps.js';

type Found = Omit<AmplitudeSight, 'steps' | 'handSteps' | 'cautions'>;

const [L, d, h] = [symbol('L'), symbol('d'), symbol('h')];

/** h = (HP − dip − R ± SD) / 60: the true altitude of the centre when the limb or centre touches the visible horizon. */
function altitudeStep(observation: AmplitudeObservation, found: Found): Step {
  const limb = observation.moment === 'upper-limb' ? -1 : observation.moment === 'lower-limb' ? 1 : 0;
  const [HP, dip, R, SD] = [symbol('HP'), symbol('dip'), symbol('R'), symbol('SD')];
  const expression = quotient(sum(limb > 0 ? [HP, SD] : [HP], limb < 0 ? [dip, R, SD] : [dip, R]), constant(60));
  const values: Record<string, Quantity> = {
    HP: quantity(found.parallax, 'arcminutes'),
    dip: quantity(found.dip, 'arcminutes'),
    R: quantity(found.refraction, 'arcminutes'),
  };
  if (limb !== 0) values['SD'] = quantity(found.semidiameter, 'arcminutes');
  return step('amplitude.altitude', 'h', expression, values, quantity(found.altitude, 'angle'));
}

/** sin A = sin d / cos L: Pub. 9, American Practical Navigator, ch. 17. */
function celestialStep(observation: AmplitudeObservation, found: Found, amplitude: number, name: string): Step {
  const values = { d: quantity(found.declination, 'declination'), L: quantity(observation.latitude, 'latitude') };
  return step('amplitude.celestial', name, arcsin(quotient(sin(d), cos(L))), values, quantity(amplitude, 'angle'));
}

/** sin A = (sin d − sin L sin h) / (cos L cos h): the triangle of latitude, declination and altitude. */
function visibleStep(observation: AmplitudeObservation, found: Found): Step {
  const expression = arcsin(quotient(sum([sin(d)], [product(sin(L), sin(h))]), product(cos(L), cos(h))));
  const values = {
    d: quantity(found.declination, 'declination'),
    L: quantity(observation.latitude, 'latitude'),
    h: quantity(found.altitude, 'angle'),
  };
  return step('amplitude.visible', 'A', expression, values, quantity(found.amplitude, 'angle'));
}

/** Rising bodies are counted from east, setting ones from west, north positive. */
function bearingStep(found: Found): Step {
  const A = symbol('A');
  const expression = found.side === 'rising' ? sum([constant(90)], [A]) : sum([constant(270), A]);
  return step(`amplitude.bearing.${found.side}`, 'T', expression, { A: quantity(found.amplitude, 'angle') }, quantity(found.trueBearing, 'bearing'));
}

/** The working of an amplitude in the order a lecturer writes it. */
export function amplitudeSteps(observation: AmplitudeObservation, found: Found): Step[] {
  const celestial = observation.moment === 'celestial';
  return [
    step('amplitude.declination', 'd', null, {}, quantity(found.declination, 'declination')),
    ...(celestial
      ? [celestialStep(observation, found, found.amplitude, 'A')]
      : [altitudeStep(observation, found), visibleStep(observation, found)]),
    bearingStep(found),
    ...errorSteps({ ...found, compassBearing: observation.compassBearing }),
  ];
}

/**
 * The form of the hand tables for a body seen on the visible horizon: the amplitude of the
 * celestial horizon, and the correction that brings an amplitude observed on the visible
 * horizon to it. None for the moment that needs no correction, or where the body does not
 * reach the celestial horizon.
 */
export function handSteps(observation: AmplitudeObservation, found: Found): Step[] {
  if (observation.moment === 'celestial' || found.celestialAmplitude === null) return [];
  const values = { A: quantity(found.amplitude, 'angle'), A_0: quantity(found.celestialAmplitude, 'angle') };
  return [
    celestialStep(observation, found, found.celestialAmplitude, 'A_0'),
    step('amplitude.correction', 'x', sum([symbol('A_0')], [symbol('A')]), values, quantity(found.celestialAmplitude - found.amplitude, 'angle')),
  ];
}
