/** Whole hours by which a time would have to be changed to be UTC, with their sign: the zone description, where it is zone time. */
export const timeChange = (hours: number): string => `${hours > 0 ? '+' : '−'}${Math.abs(hours)}`;
