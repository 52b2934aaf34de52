import { tanDegrees } from '../../core/angle/trigonometry.js';
import { magneticField } from '../../core/field/magnetic-field.js';
import { compassZone } from '../../core/field/zone.js';
import type { CompassZone } from '../../core/field/zone.js';
import type { EarthField } from '../../core/iron/earth-field.js';
import { instantOf } from '../../core/time/instant.js';
import { valueOf } from '../shared/field.js';
import type { Bench } from './bench.js';
import { placeFieldName } from './place-names.js';
import type { PlaceName, PlacePart, PlaceSource } from './place-names.js';

export interface PlaceField extends EarthField {
  readonly zone: CompassZone;
  /** The model it comes from; null where the forces were typed. */
  readonly model: string | null;
}

export function sourceOf(bench: Bench, place: PlaceName): PlaceSource {
  return bench.text(placeFieldName(place, 'source')) as PlaceSource;
}

/** The fields a place is read from, by how it is given. */
export function partsOf(source: PlaceSource): readonly PlacePart[] {
  if (source === 'position') return ['latitude', 'longitude'];
  return source === 'forces' ? ['horizontal', 'vertical'] : ['horizontal', 'dip'];
}

const NANOTESLA = 1000;

/** The field at one of the places, nT; null while a field it needs is empty or refused. */
export function placeField(bench: Bench, place: PlaceName): PlaceField | null {
  const source = sourceOf(bench, place);
  const [first, second] = partsOf(source).map((part) => bench.value(placeFieldName(place, part)));
  if (first === undefined || second === undefined) return null;
  if (source === 'position') {
    const day = valueOf(bench.day());
    if (!day) return null;
    const { h, z, zone, model } = magneticField({ latitude: first, longitude: second }, instantOf(day, 0));
    return { h, z, zone, model };
  }
  const h = first * NANOTESLA;
  const z = source === 'forces' ? second * NANOTESLA : h * tanDegrees(second);
  return { h, z, zone: compassZone(h), model: null };
}
