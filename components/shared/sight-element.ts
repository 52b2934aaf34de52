import { property } from 'lit/decorators.js';
import type { CompassKind } from '../../core/sight/compass-kind.js';
import { formatInstant } from '../../core/time/instant.js';
import { cardDeviationOn } from './card-deviation.js';
import { doubtFields, supposedIn } from './doubt-fields.js';
import { valueOf } from './field.js';
import type { Field, StatesOf } from './field.js';
import { PlacedElement, placeFields } from './placed-element.js';
import { bearingField, errorField } from './trade-fields.js';

/** What every sight is told besides what was observed. */
export const sightFields = {
  ...placeFields,
  heading: bearingField('C'),
  variation: errorField,
  cardDeviation: errorField,
  doubtReading: doubtFields.doubtReading,
};

/**
 * A sight for the error of a compass: besides what was observed it is told place and time, the
 * compass, her head, variation and card, and how well a bearing is read.
 */
export abstract class SightElement extends PlacedElement {
  /** `magnetic` or `gyro`. */
  @property() compass: CompassKind = 'magnetic';

  /** Ship's head by the same compass, degrees. */
  @property() heading?: string | number;

  /** Degrees, east positive; left empty, the magnetic model gives it. */
  @property() variation?: string | number;

  /** What the deviation card says for this heading, degrees, east positive; left empty, the ship's card is asked. */
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;

  /** Of a bearing read from the compass, one standard deviation, degrees; 0.5 is usual. */
  @property({ attribute: 'doubt-reading' }) doubtReading?: string | number;

  protected abstract override readonly fields: Readonly<Record<string, Field<unknown>>> & typeof sightFields;

  protected abstract override get states(): StatesOf<typeof sightFields>;

  protected get gyro(): boolean {
    return this.compass === 'gyro';
  }

  /** Whether what splits the error was refused. A gyro shows no such fields: what was left in them cannot hold its answer back. */
  protected get splitRefused(): boolean {
    const { variation, cardDeviation } = this.states;
    return !this.gyro && (variation.state === 'refused' || cardDeviation.state === 'refused');
  }

  /** The card's deviation on a heading: as typed, or by the ship's card. */
  protected cardOn(heading: number | undefined): { readonly cardDeviation?: number } {
    const deviation = valueOf(this.states.cardDeviation) ?? (this.gyro ? undefined : cardDeviationOn(this.ship, heading));
    return deviation === undefined ? {} : { cardDeviation: deviation };
  }

  /** The same on her head as entered. */
  protected get cardHere(): { readonly cardDeviation?: number } {
    return this.cardOn(valueOf(this.states.heading));
  }

  /** What core is told of the compass and its reading, whatever the sight. */
  protected get reading(): { readonly compass: CompassKind; readonly doubts: Record<string, number>; readonly variation?: number } {
    const variation = valueOf(this.states.variation);
    return { compass: this.gyro ? 'gyro' : 'magnetic', doubts: supposedIn(this.states), ...(variation === undefined ? {} : { variation }) };
  }

  /** The inputs that all sights have, as plain data; null where a field is empty. */
  protected get sightInputs() {
    const { states, when } = this;
    const { compass, doubts } = this.reading;
    return {
      latitude: valueOf(states.latitude) ?? null,
      longitude: valueOf(states.longitude) ?? null,
      instant: when ? formatInstant(when) : null,
      compass,
      heading: valueOf(states.heading) ?? null,
      variation: valueOf(states.variation) ?? null,
      cardDeviation: valueOf(states.cardDeviation) ?? null,
      doubts,
    };
  }
}
