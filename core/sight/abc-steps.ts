import { atanDegrees, cosDegrees, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { arctan, constant, cos, product, quotient, sin, sum, symbol, tan } from '../working/expression.js';
import type { Expression } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import { step } from '../working/step.js';
import type { Step } from '../working/step.js';

/** How A, B and C are named; the azimuth is counted from that pole. */
export type AbcName = 'N' | 'S';

/** The parts of the A, B and C form, sizes without sign, and their names. */
export interface AbcParts {
  readonly a: { readonly size: number; readonly name: AbcName };
  readonly b: { readonly size: number; readonly name: AbcName };
  readonly c: { readonly size: number; readonly name: AbcName };
  /** The hour angle from the meridian, degrees [0, 180]: LHA, or 360 − LHA. */
  readonly meridianAngle: number;
  readonly side: 'E' | 'W';
  /** From the pole named by C towards the side, degrees [0, 90]. */
  readonly azimuth: number;
}

const north = (positive: boolean): AbcName => (positive ? 'N' : 'S');

/** Nearer to the meridian A and B run beyond all bounds: their difference is rounding alone. */
const ON_MERIDIAN = 1e-8;

/**
 * A = tan L / tan P, named opposite to the latitude unless LHA lies in 90..270;
 * B = tan d / sin P, named as the declination; C, their sum if named alike, else their
 * difference named as the greater; tan Az = 1 / (C cos L). Null on the meridian, at a
 * pole and for a body at the celestial pole, where A or B has no end.
 * Source: course notes; the formula is the triangle's, the naming rules stand for its signs.
 */
export function abcParts(latitude: number, declination: number, localHourAngle: number): AbcParts | null {
  const meridianAngle = localHourAngle > 180 ? 360 - localHourAngle : localHourAngle;
  if (sinDegrees(meridianAngle) < ON_MERIDIAN || Math.abs(latitude) === 90 || Math.abs(declination) === 90) return null;
  const beyond = localHourAngle > 90 && localHourAngle < 270;
  const bName = north(declination >= 0);
  const aSize = Math.abs(tanDegrees(latitude) / tanDegrees(meridianAngle));
  // What is nothing takes the other's name.
  const a = { size: aSize, name: aSize === 0 ? bName : north(latitude > 0 === beyond) };
  const bSize = Math.abs(tanDegrees(declination) / sinDegrees(meridianAngle));
  const b = { size: bSize, name: bSize === 0 ? a.name : bName };
  const c = a.name === b.name ? { size: a.size + b.size, name: a.name } : { size: Math.abs(a.size - b.size), name: (a.size > b.size ? a : b).name };
  const azimuth = atanDegrees(1 / (c.size * cosDegrees(latitude)));
  return { a, b, c, meridianAngle, side: localHourAngle > 180 ? 'E' : 'W', azimuth };
}

/** How far round from north the named angle is, as a sum. */
function wholeBearing(name: AbcName, side: 'E' | 'W'): Expression {
  const Az = symbol('Az');
  if (name === 'N') return side === 'E' ? Az : sum([constant(360)], [Az]);
  return side === 'E' ? sum([constant(180)], [Az]) : sum([constant(180), Az]);
}

/** The working by A, B and C, sizes without sign as the tables have them; none where `abcParts` has none. */
export function abcSteps(latitude: number, declination: number, localHourAngle: number, trueBearing: number): Step[] {
  const parts = abcParts(latitude, declination, localHourAngle);
  if (!parts) return [];
  const { a, b, c, meridianAngle, side, azimuth } = parts;
  const L = quantity(Math.abs(latitude), 'angle');
  const P = quantity(meridianAngle, 'hourAngle');
  const [A, B] = [quantity(a.size, 'number'), quantity(b.size, 'number')];
  // Beyond 90° the tables are entered with the supplement.
  const tanP = tan(meridianAngle > 90 ? sum([constant(180)], [symbol('P')]) : symbol('P'));
  const [greater, smaller] = a.size > b.size ? ['A', 'B'] : ['B', 'A'];
  const together = a.name === b.name ? sum([symbol('A'), symbol('B')]) : sum([symbol(greater)], [symbol(smaller)]);
  const fromHourAngle = localHourAngle > 180 ? sum([constant(360)], [symbol('LHA')]) : symbol('LHA');
  return [
    step(`azimuth.hand.p.${side}`, 'P', fromHourAngle, { LHA: quantity(localHourAngle, 'hourAngle') }, P),
    step(`azimuth.hand.a.${a.name}`, 'A', quotient(tan(symbol('L')), tanP), { L, P }, A),
    step(`azimuth.hand.b.${b.name}`, 'B', quotient(tan(symbol('d')), sin(symbol('P'))), { d: quantity(Math.abs(declination), 'angle'), P }, B),
    step(`azimuth.hand.c.${c.name}`, 'C', together, { A, B }, quantity(c.size, 'number')),
    step(
      `azimuth.hand.azimuth.${c.name}.${side}`,
      'Az',
      arctan(quotient(constant(1), product(symbol('C'), cos(symbol('L'))))),
      { C: quantity(c.size, 'number'), L },
      quantity(azimuth, 'angle'),
    ),
    step('azimuth.hand.bearing', 'T', wholeBearing(c.name, side), { Az: quantity(azimuth, 'angle') }, quantity(trueBearing, 'bearing')),
  ];
}
