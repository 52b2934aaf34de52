import type { MultiPolygon } from 'geojson';
import { FINENESS, ORIGIN, SIGNS, coastline } from './coastline-data.js';

const middle = (SIGNS.length - 1) / 2;

function ringOf(text: string): [number, number][] {
  const sign = (at: number): number => SIGNS.indexOf(text.charAt(at));
  let x = sign(0) * SIGNS.length + sign(1) - ORIGIN;
  let y = sign(2) * SIGNS.length + sign(3) - ORIGIN;
  const ring: [number, number][] = [[x / FINENESS, y / FINENESS]];
  for (let at = 4; at < text.length; at += 2) {
    x += sign(at) - middle;
    y += sign(at + 1) - middle;
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
  land ??= { type: 'MultiPolygon', coordinates: coastline.split(' ').map((polygon) => polygon.split('~').map(ringOf)) };
  return land;
}
