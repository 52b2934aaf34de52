import { cosOfWave } from '../angle/trigonometry.js';
import { delaunayArguments } from './delaunay-arguments.js';
import type { DelaunayArguments } from './delaunay-arguments.js';
import type { MoonCoordinate } from './moon-coordinate.js';
import { moonSeries } from './moon-series.js';
import { pointAt } from './orbit-place.js';
import { seriesAt } from './series.js';
import type { Vector } from './vector.js';

const [OF_SINES, OF_COSINES] = [-90, 0];

/** The coordinate at a time in centuries. */
function coordinateAt({ series, sun }: MoonCoordinate, century: number, phase: number, { elongation, sunAnomaly, moonAnomaly, latitudeArgument }: DelaunayArguments): number {
  // What hangs on the Sun's anomaly fades as the Earth's orbit grows rounder: Meeus, Astronomical Algorithms, eq. 47.6.
  const fading = 1 - (0.002516 + 0.0000074 * century) * century;
  let value = 0;
  for (const row of sun) {
    const [d, m, f, moon] = row;
    let argument = phase + d * elongation + m * sunAnomaly + f * latitudeArgument + moon * moonAnomaly;
    let waves = 0;
    for (let index = 4; index < row.length; index += 1) {
      waves += (row[index] as number) * cosOfWave(argument);
      argument += moonAnomaly;
    }
    value += waves * fading ** Math.abs(m);
  }
  return seriesAt(series, moonSeries.meanMotion, century) + value * series.unit;
}

/** Where the Moon is at a time in centuries since J2000.0: from the Earth, mean ecliptic and equinox of date, astronomical units. */
export function moonPlace(century: number): Vector {
  const { longitude, latitude, distance } = moonSeries;
  const angles = delaunayArguments(century);
  return pointAt(
    coordinateAt(longitude, century, OF_SINES, angles),
    coordinateAt(latitude, century, OF_SINES, angles),
    coordinateAt(distance, century, OF_COSINES, angles),
  );
}
