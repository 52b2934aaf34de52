import { checkPlace } from './check-place.js';
import { fieldElements } from './field-elements.js';
import { fieldVector } from './field-vector.js';
import type { MagneticModelName } from './magnetic-models.js';
import { timedModelByDate } from './timed-model.js';
import { variationUncertainty } from './variation-uncertainty.js';
import { compassZone } from './zone.js';
import type { CompassZone } from './zone.js';

/** What a compass needs of the field. */
export interface ModelVariation {
  /** Degrees, (-180, 180], east positive; null where no direction is magnetic north. */
  readonly variation: number | null;
  /** One standard deviation, degrees; null as the variation. */
  readonly sigma: number | null;
  readonly zone: CompassZone;
  readonly model: MagneticModelName;
}

/**
 * The variation at sea level (degrees of latitude and longitude) by the newest model that
 * holds at an instant: as `magneticField`, without the rest of its figures.
 * Throws `RangeError` naming `latitude`, `longitude` or `instant`.
 */
export function modelVariation({ latitude, longitude }: { readonly latitude: number; readonly longitude: number }, instant: Date): ModelVariation {
  checkPlace(latitude, longitude, 0);
  const { main, name } = timedModelByDate(instant);
  const { h, variation } = fieldElements(fieldVector(main, latitude, longitude, 0));
  return { variation, sigma: variationUncertainty(name, h), zone: compassZone(h), model: name };
}
