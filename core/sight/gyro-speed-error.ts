import { checkFinite, checkRange } from '../angle/check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';

/** Speed of the equator: 21,600 miles in a sidereal day of 23.9345 hours, knots. */
const EQUATOR = 21_600 / 23.9345;

/**
 * Steaming error of a gyro without speed correction, degrees, east positive like every gyro
 * error: west (the gyro reads high) on northerly courses, in either hemisphere. Null at the
 * poles and where the ship undoes the earth's turn, for there a gyro does not settle.
 *
 * `speed` in knots over the ground, 0 or more; `course` true, degrees; `latitude` degrees.
 * Derived: the needle stands square to the speed of the place in space,
 * tan GE = −v cos C / (902.5 cos L + v sin C); the trade's v cos C / (15.7 cos L) nearly.
 * Throws `RangeError` naming an argument that is not a number in range.
 */
export function gyroSpeedError(ship: {
  readonly speed: number;
  readonly course: number;
  readonly latitude: number;
}): number | null {
  const { speed, course, latitude } = ship;
  checkRange('speed', speed, 0, 1000);
  checkFinite('course', course);
  checkRange('latitude', latitude, -90, 90);
  const eastward = EQUATOR * cosDegrees(latitude) + speed * sinDegrees(course);
  return eastward <= 0 ? null : atan2Degrees(0 - speed * cosDegrees(course), eastward) + 0;
}
