import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { doubtFields } from '../shared/doubt-fields.js';
import type { StatesOf } from '../shared/field.js';
import { sightFields } from '../shared/sight-element.js';
import { bearingField, heightOfEyeField } from '../shared/trade-fields.js';

/** What may have been on the horizon, in the order it is offered. */
export const moments: readonly HorizonMoment[] = ['celestial', 'upper-limb', 'centre', 'lower-limb'];

export const amplitudeFields = {
  ...sightFields,
  heightOfEye: heightOfEyeField,
  bearing: bearingField('C'),
  doubtHorizonAltitude: doubtFields.doubtHorizonAltitude,
  doubtPosition: doubtFields.doubtPosition,
  doubtTime: doubtFields.doubtTime,
};

export type AmplitudeStates = StatesOf<typeof amplitudeFields>;
