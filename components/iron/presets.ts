import type { BenchState } from './bench-state.js';

export const presetNames = ['lecture', 'coaster', 'slewed', 'uncorrected', 'clean', 'lost', 'south'] as const;

export type PresetName = (typeof presetNames)[number];

/** Ships of the invented scenario, each made to show one thing; their names are in the catalogue. */
export const presets: Readonly<Record<PresetName, BenchState>> = {
  // Built heading south in the south: P forward; vertical iron ahead outweighs it at either end of the voyage.
  lecture: { P: 2, R: -5.2, c: 0.08, a: 0.02, e: -0.1, k: 0.04 },
  coaster: { P: -2.6, Q: 1.1, R: 4, a: -0.05, b: 0.004, c: -0.035, d: -0.006, e: -0.14, f: 0.006, g: 0.02, h: 0.004, k: 0.05, latitude: '60-30N', longitude: '003-00E', thereLatitude: '34-40S', thereLongitude: '018-20E' },
  slewed: { b: 0.06, d: -0.02, e: -0.08 },
  uncorrected: { P: 6, Q: -4, R: 8, c: 0.06, a: 0.04, e: -0.16, k: 0.08, latitude: '60-30N', longitude: '003-00E' },
  clean: {},
  lost: { P: -20, c: 0.05, a: -0.1, e: -0.2 },
  south: { a: -1.2, e: -1.3 },
};

/** The ship on the bench when nothing else is asked for. */
export const openingPreset: PresetName = 'lecture';
