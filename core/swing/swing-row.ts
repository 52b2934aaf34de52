/** Ways to find a deviation, and `deviation` for one already worked out. */
export const swingMethods = ['deviation', 'known-object', 'unknown-object', 'sun', 'transit', 'shore-compass', 'gyro'] as const;

export type SwingMethod = (typeof swingMethods)[number];

/** By which north a ship was steadied. */
export const headingReckonings = ['compass', 'magnetic', 'gyro'] as const;

export type HeadingReckoning = (typeof headingReckonings)[number];

/** The ship's head as it was read, degrees, any finite number; by compass unless said otherwise. */
export interface RowHead {
  readonly heading: number;
  readonly headingBy?: HeadingReckoning;
  /** One standard deviation of the whole row, degrees, above 0; the usual one of its method if left out. */
  readonly sigma?: number;
  /** Left out of the fit; its residual is kept. */
  readonly struck?: boolean;
  /** The head by the steering compass at the same moment, degrees, any finite number. */
  readonly steering?: number;
  /** The steering compass's head alone is left out. */
  readonly steeringStruck?: boolean;
}

/**
 * One heading of a swing. Bearings are by the compass being swung, degrees, except
 * `shoreBearing`, the ship's bearing by the shore compass. The `gyro` method compares heads:
 * `reading` is the gyro's where the ship was steadied by compass, and the compass's where she
 * was steadied by gyro or magnetic heading. Deviation east positive.
 */
export type SwingRow = RowHead &
  (
    | { readonly method: 'deviation'; readonly deviation: number }
    | { readonly method: 'known-object' | 'unknown-object' | 'transit'; readonly bearing: number }
    | { readonly method: 'sun'; readonly bearing: number; readonly instant: Date }
    | { readonly method: 'shore-compass'; readonly bearing: number; readonly shoreBearing: number }
    | { readonly method: 'gyro'; readonly reading: number }
  );
