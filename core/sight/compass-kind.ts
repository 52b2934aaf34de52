/** What a bearing is read from: a magnetic compass, whichever of the ship's, or a gyro. */
export type CompassKind = 'magnetic' | 'gyro';

/** Both, in the order they are offered. */
export const compassKinds: readonly CompassKind[] = ['magnetic', 'gyro'];
