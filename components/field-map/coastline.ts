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
  return ring;
}

let land: [number, number][][] | undefined;

/** The land of the world and its inland seas as rings of [longitude, latitude], degrees; read from its steps when it is first asked for. */
export function landOfTheWorld(): readonly (readonly (readonly [number, number])[])[] {
  land ??= coastline.split(' ').map(ringOf);
  return land;
}
