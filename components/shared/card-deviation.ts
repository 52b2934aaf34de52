import type { Ship } from './ship-context.js';

/** What the ship's card says on a heading by compass, degrees, east positive; undefined where there is no ship, card, heading or single answer. */
export function cardDeviationOn(ship: Ship | undefined, heading: number | undefined): number | undefined {
  return heading === undefined ? undefined : (ship?.deviationOn(heading) ?? undefined);
}
