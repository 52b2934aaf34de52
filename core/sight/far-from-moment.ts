/** A body this far from where it stands at the moment is not on the horizon, degrees of altitude. */
const FAR = 1;

/** Whether by the time given the body is far from rising or setting: no bearing taken then is an amplitude. */
export function isFarFromMoment(found: { readonly altitudeByTime: number; readonly altitude: number }): boolean {
  return Math.abs(found.altitudeByTime - found.altitude) > FAR;
}
