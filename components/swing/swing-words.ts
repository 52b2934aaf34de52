import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';
import { limitCodes } from '../shared/limit-view.js';
import { stageNames } from './swing-sheet.js';

export const methodNamed = (text: unknown): SwingMethod => swingMethods.find((name) => name === text) ?? 'deviation';
export const reckoningNamed = (text: unknown): HeadingReckoning => headingReckonings.find((name) => name === text) ?? 'compass';
export const countNamed = (text: unknown): 8 | 16 | 24 | 36 => ([8, 16, 24, 36] as const).find((count) => String(count) === String(text)) ?? 8;

/** The words each choice of the settings takes. */
export const swingWords = {
  method: swingMethods,
  headingBy: headingReckonings,
  headings: ['8', '16', '24', '36'],
  objectBy: ['magnetic', 'true'],
  turning: ['starboard', 'port', 'unknown'],
  transitBy: ['bearing', 'marks'],
  model: ['auto', 'approximate', 'exact'],
  limit: limitCodes,
  stages: ['one', 'two'],
  stage: stageNames,
  compasses: ['one', 'two'],
};
