import { variationSource } from '../../core/sight/variation-source.js';
import { valueOf } from '../shared/field.js';
import { combinedInstant } from '../shared/place-and-time.js';
import type { Ship } from '../shared/ship-context.js';
import type { ShipStates } from './ship-fields.js';

/** The variation of the magnetic model where and when the ship is; null where that is not known or no model reaches. */
export function modelVariation({ latitude, longitude, date, time }: ShipStates): NonNullable<Ship['modelVariation']> | null {
  const [north, east] = [valueOf(latitude), valueOf(longitude)];
  if (north === undefined || east === undefined) return null;
  const variation = variationSource({ latitude: north, longitude: east }, combinedInstant(date, time));
  return variation.source === 'model' ? variation : null;
}
