import { doubtFields } from '../shared/doubt-fields.js';
import type { StatesOf } from '../shared/field.js';
import { sightFields } from '../shared/sight-element.js';

/** The fields beside the lines, which have their own. */
export const transitFields = {
  ...sightFields,
  doubtCharted: doubtFields.doubtCharted,
  doubtMarks: doubtFields.doubtMarks,
  doubtShip: doubtFields.doubtShip,
};

export type TransitStates = StatesOf<typeof transitFields>;
