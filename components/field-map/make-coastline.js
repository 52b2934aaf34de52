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

/** Added to the coordinates of a first point, lest they be negative; so much that their first signs are common ones. */
const ORIGIN = LONGEST * (2 * LONGEST + 1);

/**
 * Letters and marks in the order in which they are common in the code around, none of which needs
 * escaping in a string. The steps that come most often take those that come most often: what packs
 * the script then has short signs for both.
 */
const COMMON = 'etirna,os.l()u=d:ch{}mp-fgb0v1;y>?2w[]<k/&3x6*M!|5+94zA8TE#7SCOBZND_PLHRUGWjIVFqYJKX^Q%@~';

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

/** The first point of a ring in steps of the map, then the steps to the others. */
function stepsOf(ring) {
  const points = ring.map(([longitude, latitude]) => [Math.round(longitude * FINENESS), Math.round(latitude * FINENESS)]);
  let [x, y] = points[0];
  const start = { x, y };
  const steps = [];
  for (const [toX, toY] of points.slice(1)) {
    const parts = Math.ceil(Math.max(Math.abs(toX - x), Math.abs(toY - y)) / LONGEST);
    for (let left = parts; left > 0; left -= 1) {
      const step = [Math.round((toX - x) / left), Math.round((toY - y) / left)];
      steps.push(...step);
      x += step[0];
      y += step[1];
    }
  }
  return { start, steps };
}

/** The signs of the steps from -LONGEST to LONGEST. */
function signsFor(steps) {
  const counts = new Map(Array.from({ length: 2 * LONGEST + 1 }, (_, index) => [index - LONGEST, 0]));
  for (const step of steps) counts.set(step, counts.get(step) + 1);
  const byUse = [...counts].sort(([, a], [, b]) => b - a).map(([step]) => step);
  const signs = [];
  byUse.forEach((step, rank) => (signs[step + LONGEST] = COMMON[rank]));
  return signs.join('');
}

const rings = polygons.flatMap((all) => {
  const kept = all.map(unrolled).filter((ring) => goesRoundPole(ring) || area(ring) >= SMALLEST);
  return kept.map(thinnedRing).filter((ring) => ring.length > 3).map(stepsOf);
});
const SIGNS = signsFor(rings.flatMap(({ steps }) => steps));
const twoSigns = (value) => SIGNS[Math.floor((value + ORIGIN) / SIGNS.length)] + SIGNS[(value + ORIGIN) % SIGNS.length];
const texts = rings.map(({ start, steps }) => [twoSigns(start.x), twoSigns(start.y), ...steps.map((step) => SIGNS[step + LONGEST])].join(''));

const target = new URL('coastline-data.ts', import.meta.url);
writeFileSync(
  target,
  `// Made by make-coastline.js from world-atlas 2.0.2, land-110m (Natural Earth, public domain); not to be edited by hand.

/** Steps in a degree. */
export const FINENESS = ${FINENESS};

/** The sign of a step, from -${LONGEST} to ${LONGEST}; the common ones are common letters. */
export const SIGNS = '${SIGNS}';

/** Added to the coordinates of a first point, lest they be negative. */
export const ORIGIN = ${ORIGIN};

/**
 * Land: rings parted by spaces, an inland sea after the outline of its land. A ring is the
 * longitude and latitude of its first point, two signs each as figures of a number, then by
 * turns a step east and a step north.
 */
export const coastline =
  '${texts.join(' ')}';
`,
);
console.log(`${texts.length} rings, ${rings.reduce((sum, { steps }) => sum + steps.length / 2, 0)} steps`);
