import type { FieldState } from '../shared/field.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { FieldName } from '../shared/missing-view.js';
import { needsDisc } from './placing.js';
import type { Placing } from './placing.js';

type OtherField = 'latitude' | 'longitude' | 'date' | 'time' | 'bearing' | 'heading' | 'variation' | 'cardDeviation';

/** The fields that count for the method chosen, and whether there is an answer without each. */
export function neededFields(
  host: LubberElement,
  placing: Placing,
  others: Readonly<Record<OtherField, FieldState<unknown>>>,
  how: { readonly gyro: boolean; readonly series: boolean },
): FieldName[] {
  const { method, state } = placing;
  const stars = state.gha.state === 'empty' && (state.sha.state !== 'empty' || state.aries.state !== 'empty');
  const timed = method === 'body' || (method === 'altitude' && (state.declination.state === 'empty' || needsDisc(placing)));
  const other = (name: OtherField, label: string, needed: boolean): FieldName => ({ state: others[name], label: host.t(label), needed });
  const placed = (name: keyof Placing['state'], needed: boolean, label = `azimuth.${name}`): FieldName => ({
    state: state[name],
    label: host.t(label),
    needed,
  });
  const names = [
    other('latitude', 'sight.latitude', true),
    other('longitude', 'sight.longitude', true),
    other('date', 'sight.date', timed || how.series),
    other('time', 'sight.time', timed && !how.series),
    other('bearing', how.gyro ? 'azimuth.bearing.gyro' : 'azimuth.bearing', !how.series),
    other('heading', how.gyro ? 'sight.heading.gyro' : 'sight.heading', false),
  ];
  if (!how.gyro) names.push(other('variation', 'sight.variation', false), other('cardDeviation', 'sight.cardDeviation', false));
  if (method === 'almanac') names.push(placed('gha', !stars), placed('sha', stars), placed('aries', stars));
  if (method !== 'body') names.push(placed('declination', method === 'almanac'));
  if (method === 'altitude') {
    names.push(placed('altitude', true));
    if (placing.altitudeOf !== 'true') names.push(placed('heightOfEye', true, 'sight.heightOfEye'));
  }
  return names;
}
