/** How fast the hour angle of the mean Sun grows, degrees per minute of time: by definition. */
export const MEAN_SUN_RATE = 0.25;

/** How far the stars go round in a day, degrees (IAU 2000 Earth rotation). */
export const STARS_A_DAY = 360.98564736629;

/** The same per minute of time. */
export const STARS_RATE = STARS_A_DAY / 1440;
