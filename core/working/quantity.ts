/**
 * What a number in a working means. The unit tells the reader of the value its sign
 * convention and tells the view how the trade writes it:
 *
 * - `bearing`: degrees [0, 360), three figures; `error`: degrees, east positive, written E or W
 * - `latitude`, `declination`: degrees, north positive; `longitude`: degrees, east positive
 * - `hourAngle`: degrees, west positive; `angle`: any other angle in degrees
 * - `arcminutes`: minutes of arc; `minutes` and `seconds`: of time; `metres`, `nauticalMiles`,
 *   `nanotesla`, `years`, `knots`
 * - `perMinute`: degrees per minute of time; `number`: a pure number
 */
export type Unit =
  | 'bearing'
  | 'error'
  | 'latitude'
  | 'declination'
  | 'longitude'
  | 'hourAngle'
  | 'angle'
  | 'arcminutes'
  | 'metres'
  | 'nauticalMiles'
  | 'nanotesla'
  | 'years'
  | 'seconds'
  | 'minutes'
  | 'knots'
  | 'perMinute'
  | 'number';

export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

/** A number and what it means. */
export function quantity(value: number, unit: Unit): Quantity {
  return { value, unit };
}
