/** A gyro that errs by more than this, degrees, is no steady error of a sound gyro: it wants looking at. Common practice, no source. */
export const ODD_GYRO_ERROR = 3;

/** A deviation this far from the card, degrees, is worth a second look, whatever its doubt. Common practice, no source. */
export const ODD_BESIDE_CARD = 3;

/** Deviations beyond this, degrees, are rare on a corrected compass (common flag notices: 5°; Panama Canal: 7°). */
export const ODD_DEVIATION = 7;

/** No corrected compass deviates so far, degrees (flag notices allow 5°, the Panama Canal 7°; common practice). */
export const ABSURD_DEVIATION = 20;
