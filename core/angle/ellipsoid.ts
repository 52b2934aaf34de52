/** The Earth as charts and models take it, the ellipsoid of WGS 84 (NGA.STND.0036, 2014): half its equatorial diameter in metres, and its flattening. */
export const EQUATORIAL_RADIUS = 6_378_137;
export const FLATTENING = 1 / 298.257223563;
/** Square of the first eccentricity. */
export const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);
