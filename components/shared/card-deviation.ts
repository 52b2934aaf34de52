import type { Ship } from './ship-context.js';

/** What the ship's card says on a heading by compass, degrees, east positive; undefined where there is no ship, card, heading or single answer. */
export function cardDeviationOn(ship: Ship | undefined, heading: number | undefined): number | undefined {
  // Another program's provider may leave out what it must offer: then there is no card here.
  return heading === undefined || typeof ship?.deviationOn !== 'function' ? undefined : (ship.deviationOn(heading) ?? undefined);
}
