import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { valueOf } from './field.js';
import type { Field, StatesOf } from './field.js';
import { LubberElement } from './lubber-element.js';
import { combinedInstant, splitInstant } from './place-and-time.js';
import { dateField, latitudeField, longitudeField, timeField } from './trade-fields.js';

/** Where and when. */
export const placeFields = { latitude: latitudeField, longitude: longitudeField, date: dateField, time: timeField };

/** A widget that is told where and when, and works out one answer from its fields. */
export abstract class PlacedElement extends LubberElement {
  /** Degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** The whole instant, ISO 8601 UTC; fills date and time. */
  @property() instant?: string | Date;

  /** Day, UTC. */
  @property() date?: string;

  /** Time of day, UTC; left empty, 0 h where only the variation hangs upon it. */
  @property() time?: string;

  protected abstract override readonly fields: Readonly<Record<string, Field<unknown>>> & typeof placeFields;

  /** What became of each field. */
  protected abstract get states(): StatesOf<typeof placeFields>;

  /** Works the answer out anew from the fields as they stand. */
  protected abstract compute(): void;

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    splitInstant(this, changed);
    this.compute();
  }

  /** Where she is; null while something of it is missing. */
  protected get place(): { readonly latitude: number; readonly longitude: number } | null {
    const { states } = this;
    const [latitude, longitude] = [valueOf(states.latitude), valueOf(states.longitude)];
    return latitude === undefined || longitude === undefined ? null : { latitude, longitude };
  }

  /** The instant; null while something of it is missing. */
  protected get when(): Date | null {
    return combinedInstant(this.states.date, this.states.time);
  }
}
