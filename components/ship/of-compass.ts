import type { LubberElement } from '../shared/lubber-element.js';
import type { CompassName } from './ship-correctors.js';

/** What is told of one compass, behind its name: a ship has two, and words alone do not say which. */
export function ofCompass(host: LubberElement, compass: CompassName, told: string): string {
  return host.t(`ship.compass.${compass}`, { card: told });
}
