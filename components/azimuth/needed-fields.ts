import { headAndSplitNames } from '../shared/compass-view.js';
import { fieldNames } from '../shared/field-names.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { FieldName } from '../shared/missing-view.js';
import type { AzimuthStates } from './azimuth-fields.js';
import { bearingLabel } from './fields-view.js';
import { needsDisc } from './placing.js';
import type { Placing } from './placing.js';

/** The fields that count for the method chosen, as they stand one below the other, and whether there is an answer without each. */
export function neededFields(host: LubberElement, placing: Placing, states: AzimuthStates, how: { readonly gyro: boolean; readonly series: boolean }): FieldName[] {
  const { method, state } = placing;
  const stars = state.gha.state === 'empty' && (state.sha.state !== 'empty' || state.aries.state !== 'empty');
  const timed = method === 'body' || (method === 'altitude' && (state.declination.state === 'empty' || needsDisc(placing)));
  const placed = (name: keyof Placing['state'], needed: boolean, label = `azimuth.${name}`): FieldName => ({
    state: state[name],
    label: host.t(label),
    needed,
  });
  const names: FieldName[] = [];
  if (method === 'almanac') names.push(placed('gha', !stars), placed('sha', stars), placed('aries', stars));
  if (method === 'altitude') {
    names.push(placed('altitude', true));
    if (placing.altitudeOf !== 'true') names.push(placed('heightOfEye', true, 'sight.heightOfEye'));
  }
  if (method !== 'body') names.push(placed('declination', method === 'almanac'));
  return [
    ...names,
    ...fieldNames(host, states, { latitude: true, longitude: true, date: timed || how.series, time: timed && !how.series }),
    { state: states.bearing, label: bearingLabel(host, how.gyro), needed: !how.series },
    ...headAndSplitNames(host, how.gyro, states),
  ];
}
