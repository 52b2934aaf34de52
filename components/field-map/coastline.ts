import type { MultiPolygon } from 'geojson';
import { FINENESS, SIGNS, coastline } from './coastline-data.js';
import type { WrittenRing } from './coastline-data.js';

const middle = (SIGNS.length - 1) / 2;

function ringOf([longitude, latitude, steps]: WrittenRing): [number, number][] {
  let [x, y] = [longitude, latitude];
  const ring: [number, number][] = [[x / FINENESS, y / FINENESS]];
  for (let at = 0; at < steps.length; at += 2) {
    x += SIGNS.indexOf(steps.charAt(at)) - middle;
    y += SIGNS.indexOf(steps.charAt(at + 1)) - middle;
    ring.push([x / FINENESS, y / FINENESS]);
  }
  // Rounding may have opened a ring; Antarctica's ends a whole turn on, which is the same place.
  const [first, last] = [ring[0] as [number, number], ring[ring.length - 1] as [number, number]];
  if ((first[0] - last[0]) % 360 !== 0 || first[1] !== last[1]) ring.push(first);
  return ring;
}

let land: MultiPolygon | undefined;

/** The land of the world, degrees; read from its steps when it is first asked for. */
export function landOfTheWorld(): MultiPolygon {
  land ??= { type: 'MultiPolygon', coordinates: coastline.map((polygon) => polygon.map(ringOf)) };
  return land;
}
