/**
 * Makes coastline-data.ts once from the package world-atlas (land-110m: Natural Earth, public
 * domain): `node components/field-map/make-coastline.js`. The coast is thinned to what a map as
 * wide as a page can show, and written as steps between neighbours,
 * in one text that packs well.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { feature } from 'topojson-client';

/** Steps in a degree. */
const FINENESS = 3;
/** A point nearer than this to the line without it is left out, degrees. */
const TOLERANCE = 0.48;
/** Islands smaller than this are left out, square degrees as they are drawn at their latitude. */
const SMALLEST = 0.6;
/** The longest step that has a sign of its own. */
const LONGEST = 44;

/** Added to the coordinates of a first point, lest they be negative. */
const ORIGIN = 2000;

/** The signs of the steps -44 to 44; none needs escaping in a string. */
const SIGNS = '!#$%&()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_abcdefghijklmnopqrstuvwxyz{|}';

const atlas = JSON.parse(readFileSync(createRequire(import.meta.url).resolve('world-atlas/land-110m.json'), 'utf8'));
const land = feature(atlas, atlas.objects.land);
const polygons = (land.features ?? [land]).flatMap(({ geometry }) => (geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates));

/** Longitudes made continuous, so that a ring across the 180° meridian has no jump. */
function unrolled(ring) {
  let turns = 0;
  return ring.map(([longitude, latitude], index) => {
    const before = index > 0 ? ring[index - 1][0] : longitude;
    if (longitude - before > 180) turns -= 360;
    if (longitude - before < -180) turns += 360;
    return [longitude + turns, latitude];
  });
}

function distanceFromChord([x, y], [ax, ay], [bx, by]) {
  const shrink = Math.cos((y * Math.PI) / 180);
  const [ux, uy, vx, vy] = [(bx - ax) * shrink, by - ay, (x - ax) * shrink, y - ay];
  const length = ux * ux + uy * uy;
  const along = length === 0 ? 0 : Math.min(1, Math.max(0, (ux * vx + uy * vy) / length));
  return Math.hypot(vx - along * ux, vy - along * uy);
}

/** Douglas and Peucker's thinning of a line (1973). */
function thinned(line) {
  let [furthest, at] = [0, 0];
  for (let index = 1; index < line.length - 1; index += 1) {
    const distance = distanceFromChord(line[index], line[0], line[line.length - 1]);
    if (distance > furthest) [furthest, at] = [distance, index];
  }
  if (furthest <= TOLERANCE) return [line[0], line[line.length - 1]];
  return [...thinned(line.slice(0, at + 1)), ...thinned(line.slice(at)).slice(1)];
}

function area(ring) {
  let twice = 0;
  for (let index = 1; index < ring.length; index += 1) {
    const [[ax, ay], [bx, by]] = [ring[index - 1], ring[index]];
    twice += ax * by - bx * ay;
  }
  return Math.abs(twice / 2) * Math.cos((ring[0][1] * Math.PI) / 180);
}

/** Antarctica's ring ends a whole turn from where it begins. */
const goesRoundPole = (ring) => Math.abs(ring[0][0] - ring[ring.length - 1][0]) > 1;

/** A closed ring is thinned in two halves, as it has no ends of its own. */
function thinnedRing(ring) {
  const half = Math.floor(ring.length / 2);
  return [...thinned(ring.slice(0, half + 1)), ...thinned(ring.slice(half)).slice(1)];
}

function written(ring) {
  const points = ring.map(([longitude, latitude]) => [Math.round(longitude * FINENESS), Math.round(latitude * FINENESS)]);
  let [x, y] = points[0];
  const start = [x, y].map((value) => SIGNS[Math.floor((value + ORIGIN) / SIGNS.length)] + SIGNS[(value + ORIGIN) % SIGNS.length]).join('');
  let text = '';
  for (const [toX, toY] of points.slice(1)) {
    const parts = Math.ceil(Math.max(Math.abs(toX - x), Math.abs(toY - y)) / LONGEST);
    for (let left = parts; left > 0; left -= 1) {
      const [stepX, stepY] = [Math.round((toX - x) / left), Math.round((toY - y) / left)];
      text += SIGNS[stepX + LONGEST] + SIGNS[stepY + LONGEST];
      x += stepX;
      y += stepY;
    }
  }
  return start + text;
}

let points = 0;
const texts = polygons.flatMap((rings) => {
  const kept = rings.map(unrolled).filter((ring) => goesRoundPole(ring) || area(ring) >= SMALLEST);
  const thin = kept.map(thinnedRing).filter((ring) => ring.length > 3);
  points += thin.reduce((sum, ring) => sum + ring.length, 0);
  return thin.length === 0 ? [] : [thin.map(written).join('~')];
});

const target = new URL('coastline-data.ts', import.meta.url);
writeFileSync(
  target,
  `// Made by make-coastline.js from world-atlas 2.0.2, land-110m (Natural Earth, public domain); not to be edited by hand.

/** Steps in a degree. */
export const FINENESS = ${FINENESS};

/** The sign of a step, from -${LONGEST} to ${LONGEST}. */
export const SIGNS = '${SIGNS}';

/** Added to the coordinates of a first point, lest they be negative. */
export const ORIGIN = ${ORIGIN};

/**
 * Land: polygons parted by spaces, the rings of one (its outline, then its inland seas) by \`~\`.
 * A ring is the longitude and latitude of its first point, two signs each as figures of a
 * number, then by turns a step east and a step north.
 */
export const coastline =
  '${texts.join(' ')}';
`,
);
console.log(`${texts.length} polygons, ${points} points`);
