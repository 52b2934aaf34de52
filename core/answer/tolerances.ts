/** How far an answer may be off and still be right, degrees either way. */
export interface Tolerances {
  /** Compass or gyro error. */
  readonly error: number;
  readonly deviation: number;
  /** True bearing of a body or transit. */
  readonly azimuth: number;
  /** A course or bearing converted. */
  readonly course: number;
  readonly variation: number;
  /** A coefficient worked out, or a deviation read from a card. */
  readonly arithmetic: number;
}

/**
 * The assessor's: US NVIC 12-14, tasks 1.6 and 1.7. Only `arithmetic` is our own choice, no
 * source: no instrument stands between those answers and the figures given.
 */
export const assessorsTolerances: Tolerances = { error: 1, deviation: 1, azimuth: 1, course: 1, variation: 0.5, arithmetic: 0.5 };
