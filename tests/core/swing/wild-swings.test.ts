import assert from 'node:assert/strict';
import test from 'node:test';
import { swing } from '../../../core/swing/swing.js';
import { swingMethods } from '../../../core/swing/swing-row.js';
import type { SwingRow } from '../../../core/swing/swing-row.js';
import type { SwingSettings } from '../../../core/swing/swing-settings.js';

/** Park and Miller's generator: the same swings every time. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

/** Where in a result a number is none. */
function placeOfNaN(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path;
  if (typeof value !== 'object' || value === null) return null;
  for (const [name, inner] of Object.entries(value)) {
    const found = placeOfNaN(inner, `${path}.${name}`);
    if (found !== null) return found;
  }
  return null;
}

const SWINGS = 300;

test(`${SWINGS} swings of any methods, in disorder, at poles and on the 180° meridian: none throws, none holds a number that is none`, () => {
  const random = seeded(5);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  let fitted = 0;
  for (let turn = 0; turn < SWINGS; turn++) {
    const usual = pick(swingMethods);
    const rows = Array.from({ length: Math.floor(random() * 20) }, (): SwingRow => {
      const row = {
        method: random() < 0.7 ? usual : pick(swingMethods),
        heading: random() * 720 - 360,
        headingBy: pick(['compass', 'magnetic', 'gyro'] as const),
        struck: random() < 0.1,
        deviation: random() * 360 - 180,
        bearing: random() * 360,
        shoreBearing: random() * 360,
        reading: random() * 360,
        instant: new Date(random() * 4e12),
      };
      return row as SwingRow;
    });
    const settings: SwingSettings = {
      model: pick(['auto', 'approximate', 'exact'] as const),
      planned: pick([8, 16, 24, 36, undefined] as const),
      constant: pick([null, 0, 2]),
      gyroError: pick([null, 1, 179]),
      variation: pick([undefined, 0, -20, 180]),
      place: pick([undefined, { latitude: 90, longitude: 0 }, { latitude: -90, longitude: 180 }, { latitude: 0, longitude: -180 }]),
      object: pick([undefined, { bearing: 80, by: 'magnetic' }, { bearing: 0, by: 'true' }] as const),
      circle: pick([undefined, { radius: 300, distance: 700, turning: 'port' }, { radius: 0, distance: 1 }] as const),
      transit: pick([undefined, { kind: 'charted', bearing: 360 }, { kind: 'one-mark', mark: { latitude: 0, longitude: 180 } }] as const),
    };
    const found = swing(rows, settings);
    assert.equal(found.rows.length, rows.length);
    assert.equal(placeOfNaN(found), null, `swing ${turn}`);
    if (found.fit.determined.length > 0) fitted++;
  }
  assert.ok(fitted > SWINGS / 4, `only ${fitted} were fitted at all`);
});
