/** The angles by which the Moon and the Earth's axis swing, degrees, counted on past 360. */
export interface DelaunayArguments {
  /** D, the Moon's mean elongation from the Sun. */
  readonly elongation: number;
  /** M, the Sun's mean anomaly. */
  readonly sunAnomaly: number;
  /** M′, the Moon's mean anomaly. */
  readonly moonAnomaly: number;
  /** F, the Moon from her mean node. */
  readonly latitudeArgument: number;
  /** Ω, the mean node. */
  readonly node: number;
}

/**
 * Delaunay's arguments at a time in Julian centuries of terrestrial time since J2000.0.
 * Source: ELP/MPP02, Chapront and Francou, Astronomy and Astrophysics 404, 2003; the node
 * of the IAU 1980 theory of nutation, as in Meeus, Astronomical Algorithms, ch. 22.
 */
export function delaunayArguments(century: number): DelaunayArguments {
  return {
    elongation: 297.850208 + (445267.111412 + (-0.001896 + 0.000002 * century) * century) * century,
    sunAnomaly: 357.52908 + (35999.050294 - 0.000153 * century) * century,
    moonAnomaly: 134.963334 + (477198.867498 + (0.008726 + 0.000014 * century) * century) * century,
    latitudeArgument: 93.2721 + (483202.017491 - 0.003667 * century) * century,
    node: 125.04452 + (-1934.136261 + 0.002071 * century) * century,
  };
}
