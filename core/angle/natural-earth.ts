import { arcOfDegrees } from './trigonometry.js';

/**
 * The Natural Earth projection of a globe of radius 1: parallels are straight lines of a length and
 * at a height that hang upon the latitude alone, divided evenly by the meridians.
 * Source: Šavrič, Jenny, Patterson, Petrovič and Hurni, A polynomial equation for the Natural
 * Earth projection, Cartography and Geographic Information Science 38 (2011).
 */
export interface NaturalEarth {
  /** Length of a degree of the parallel. */
  readonly degree: number;
  /** Height above the equator, north positive. */
  readonly height: number;
}

/** How a parallel is drawn; latitude in degrees. */
export function naturalEarth(latitude: number): NaturalEarth {
  const arc = arcOfDegrees(latitude);
  const square = arc * arc;
  const fourth = square * square;
  return {
    degree: arcOfDegrees(0.8707 - 0.131979 * square + fourth * (-0.013791 + fourth * (0.003971 * square - 0.001529 * fourth))),
    height: arc * (1.007226 + square * (0.015085 + fourth * (-0.044475 + 0.028874 * square - 0.005916 * fourth))),
  };
}

/** Halvings of a quarter of the globe: to a millionth of a degree. */
const HALVINGS = 27;

/** The latitude drawn at a height, degrees, to a millionth; null above and below the poles. */
export function naturalEarthLatitude(height: number): number | null {
  if (!(Math.abs(height) <= naturalEarth(90).height)) return null;
  let latitude = 0;
  for (let step = 45, round = 0; round < HALVINGS; round += 1, step /= 2) latitude += naturalEarth(latitude).height < height ? step : -step;
  return latitude;
}
