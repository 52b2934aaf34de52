import { checkPlace } from './check-place.js';
import type { FieldPlace } from './check-place.js';
import { fieldElements, fieldElementsChange } from './field-elements.js';
import type { FieldElements, FieldElementsChange } from './field-elements.js';
import { fieldVector, fieldVectors } from './field-vector.js';
import { timedModel } from './timed-model.js';
import type { MagneticModelName } from './magnetic-models.js';
import { fieldUncertainty } from './uncertainty.js';
import type { FieldUncertainty } from './uncertainty.js';
import { compassZone } from './zone.js';
import type { CompassZone } from './zone.js';

export interface MagneticFieldOptions {
  /** The model to use; the newest that holds for the instant unless given. */
  readonly model?: MagneticModelName;
}

export interface MagneticField extends FieldElements {
  readonly annualChange: FieldElementsChange;
  readonly uncertainty: FieldUncertainty;
  readonly zone: CompassZone;
  readonly model: MagneticModelName;
}

/**
 * The Earth's main field at a place and instant by the World Magnetic Model.
 * At latitude ±90° north is the direction of the meridian of the given longitude, and
 * the variation counts from it.
 * Throws `RangeError` naming `latitude`, `longitude`, `heightKm`, `instant` or `model`;
 * the models hold from 2015.0 to 2030.0, see `magneticModels`.
 */
export function magneticField(place: FieldPlace, instant: Date, options: MagneticFieldOptions = {}): MagneticField {
  const { latitude, longitude, heightKm = 0 } = place;
  checkPlace(latitude, longitude, heightKm);
  const { main, change, name } = timedModel(instant, options.model);
  const [vector, vectorChange] = fieldVectors(main, change, latitude, longitude, heightKm);
  const elements = fieldElements(vector);
  // Written out, because spreading the elements takes four times as long as all the sums.
  return {
    x: elements.x,
    y: elements.y,
    z: elements.z,
    h: elements.h,
    f: elements.f,
    variation: elements.variation,
    declination: elements.declination,
    inclination: elements.inclination,
    annualChange: fieldElementsChange(elements, vectorChange),
    uncertainty: fieldUncertainty(name, elements.h),
    zone: compassZone(elements.h),
    model: name,
  };
}

/** The elements alone, for those who ask for thousands; as `magneticField` otherwise. */
export function magneticElements(place: FieldPlace, instant: Date, options: MagneticFieldOptions = {}): FieldElements {
  const { latitude, longitude, heightKm = 0 } = place;
  checkPlace(latitude, longitude, heightKm);
  return fieldElements(fieldVector(timedModel(instant, options.model).main, latitude, longitude, heightKm));
}
