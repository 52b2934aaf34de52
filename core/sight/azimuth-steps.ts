import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap180 } from '../angle/wrap.js';
import { arccos, arcsin, arctan, constant, cos, product, quotient, sin, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Quantity } from '../working/quantity.js';
import { step } from '../working/step.js';
import type { Step } from '../working/step.js';
import type { AltitudeCorrections } from './altitude-source.js';
import type { AzimuthBearing } from './azimuth-bearing.js';
import type { AzimuthSource } from './azimuth-source.js';

const [L, d, h, LHA] = [symbol('L'), symbol('d'), symbol('h'), symbol('LHA')];

/** A sum of hour angles brought back into [0, 360) by whole turns. */
function hourAngleStep(code: string, name: string, parts: Record<string, Quantity>, result: number): Step {
  const total = Object.values(parts).reduce((all, { value }) => all + value, 0);
  const turns = Math.round((result - total) / 360);
  const terms = Object.keys(parts).map(symbol);
  const expression = sum(turns > 0 ? [...terms, constant(turns * 360)] : terms, turns < 0 ? [constant(-turns * 360)] : []);
  return step(code, name, expression, parts, quantity(result, 'hourAngle'));
}

/** GHA as looked up, as typed, or from SHA and Aries; declination; LHA. */
function placeSteps(source: AzimuthSource, bearing: AzimuthBearing, longitude: number): Step[] {
  const from = source.by === 'body' ? 'body' : 'typed';
  const gha = bearing.gha ?? 0;
  const found =
    source.by === 'sidereal-hour-angle'
      ? hourAngleStep('azimuth.gha.star', 'GHA', { GHA_Aries: quantity(source.ghaAries, 'hourAngle'), SHA: quantity(source.sha, 'hourAngle') }, gha)
      : step(`azimuth.gha.${from}`, 'GHA', null, {}, quantity(gha, 'hourAngle'));
  return [
    step(`azimuth.declination.${from}`, 'd', null, {}, quantity(bearing.declination, 'declination')),
    found,
    hourAngleStep('azimuth.lha', 'LHA', { GHA: quantity(gha, 'hourAngle'), λ: quantity(longitude, 'longitude') }, bearing.localHourAngle ?? 0),
  ];
}

/** By the triangle: altitude, the two sides of the bearing towards east and north, and the bearing from their ratio. */
function triangleSteps(bearing: AzimuthBearing): Step[] {
  const { latitude, declination, altitude, trueBearing } = bearing;
  const hourAngle = bearing.localHourAngle ?? 0;
  const east = -cosDegrees(declination) * sinDegrees(hourAngle);
  const north =
    sinDegrees(declination) * cosDegrees(latitude) - cosDegrees(declination) * cosDegrees(hourAngle) * sinDegrees(latitude) + 0;
  const values = {
    L: quantity(latitude, 'latitude'),
    d: quantity(declination, 'declination'),
    LHA: quantity(hourAngle, 'hourAngle'),
  };
  const turned = north < 0 ? 180 : trueBearing >= 180 ? 360 : 0;
  const angle = wrap180(trueBearing - turned);
  const bearingExpression = turned === 0 ? symbol('α') : sum([constant(turned), symbol('α')]);
  return [
    step(
      'azimuth.altitude',
      'h',
      arcsin(sum([product(sin(L), sin(d)), product(cos(L), cos(d), cos(LHA))])),
      values,
      quantity(altitude, 'angle'),
    ),
    step('azimuth.east', 'e', sum([], [product(cos(d), sin(LHA))]), { d: values.d, LHA: values.LHA }, quantity(east, 'number')),
    step('azimuth.north', 'n', sum([product(sin(d), cos(L))], [product(cos(d), cos(LHA), sin(L))]), values, quantity(north, 'number')),
    step(
      'azimuth.angle',
      'α',
      arctan(quotient(symbol('e'), symbol('n'))),
      { e: quantity(east, 'number'), n: quantity(north, 'number') },
      quantity(angle, 'angle'),
    ),
    step(`azimuth.bearing.${turned}`, 'T', bearingExpression, { α: quantity(angle, 'angle') }, quantity(trueBearing, 'bearing')),
  ];
}

/** h = H − dip − R ± SD + P, in degrees: Nautical Almanac, explanation of the altitude corrections. */
function altitudeStep(altitude: number, corrections: AltitudeCorrections | null): Step {
  if (!corrections) return step('azimuth.altitude.typed', 'h', null, {}, quantity(altitude, 'angle'));
  const { observed, dip, refraction, semidiameter, parallax } = corrections;
  const lower = semidiameter > 0;
  const [H, SD] = [symbol('H'), symbol('SD')];
  const minutes = (value: number): Quantity => quantity(value * 60, 'arcminutes');
  const plus = [...(lower ? [SD] : []), symbol('P')];
  const minus = [symbol('dip'), symbol('R'), ...(semidiameter < 0 ? [SD] : [])];
  const values: Record<string, Quantity> = { H: quantity(observed, 'angle'), dip: minutes(dip), R: minutes(refraction), P: minutes(parallax) };
  if (semidiameter !== 0) values['SD'] = minutes(Math.abs(semidiameter));
  return step('azimuth.altitude.observed', 'h', sum([H, quotient(sum(plus, minus), constant(60))]), values, quantity(altitude, 'angle'));
}

/** cos Z = (sin d − sin L sin h) / (cos L cos h), counted from north to the side told. */
function byAltitudeSteps(source: AzimuthSource, bearing: AzimuthBearing): Step[] {
  const { latitude, declination, altitude, trueBearing, corrections } = bearing;
  const east = source.by === 'altitude' && source.side === 'east';
  const angle = east || trueBearing === 0 ? trueBearing : 360 - trueBearing;
  const from = source.by === 'altitude' && source.declination !== undefined ? 'typed' : 'body';
  const values = {
    d: quantity(declination, 'declination'),
    L: quantity(latitude, 'latitude'),
    h: quantity(altitude, 'angle'),
  };
  const expression = arccos(quotient(sum([sin(d)], [product(sin(L), sin(h))]), product(cos(L), cos(h))));
  const whole = east || trueBearing === 0 ? symbol('Z') : sum([constant(360)], [symbol('Z')]);
  return [
    step(`azimuth.declination.${from}`, 'd', null, {}, values.d),
    altitudeStep(altitude, corrections),
    step('azimuth.by-altitude', 'Z', expression, values, quantity(angle, 'angle')),
    step(`azimuth.side.${east ? 'east' : 'west'}`, 'T', whole, { Z: quantity(angle, 'angle') }, quantity(trueBearing, 'bearing')),
  ];
}

/** The working from the figures of the almanac to the true bearing. */
export function bearingSteps(source: AzimuthSource, bearing: AzimuthBearing, longitude: number): Step[] {
  return source.by === 'altitude' ? byAltitudeSteps(source, bearing) : [...placeSteps(source, bearing, longitude), ...triangleSteps(bearing)];
}
