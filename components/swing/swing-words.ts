import { deviationLimits } from '../../core/deviation/deviation-limits.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';
import { stageNames } from './swing-sheet.js';

export const methodNamed = (text: unknown): SwingMethod => swingMethods.find((name) => name === text) ?? 'deviation';
export const reckoningNamed = (text: unknown): HeadingReckoning => headingReckonings.find((name) => name === text) ?? 'compass';
export const countNamed = (text: unknown): 8 | 16 | 24 | 36 => ([8, 16, 24, 36] as const).find((count) => String(count) === String(text)) ?? 8;
export const limitNamed = (text: unknown): DeviationLimit => deviationLimits.find(({ code }) => code === text) ?? (deviationLimits[0] as DeviationLimit);

/** The words each choice of the settings takes. */
export const swingWords = {
  method: swingMethods,
  headingBy: headingReckonings,
  headings: ['8', '16', '24', '36'],
  objectBy: ['magnetic', 'true'],
  turning: ['starboard', 'port', 'unknown'],
  transitBy: ['bearing', 'marks'],
  model: ['auto', 'approximate', 'exact'],
  limit: deviationLimits.map(({ code }) => code),
  stages: ['one', 'two'],
  stage: stageNames,
  compasses: ['one', 'two'],
};
