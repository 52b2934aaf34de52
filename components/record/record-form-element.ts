import { property, state } from 'lit/decorators.js';
import type { EventKind, RecordEntry, Watch } from '../../core/record/entry.js';
import { LubberElement } from '../shared/lubber-element.js';
import { formFields } from './form-fields.js';
import type { FormField } from './form-fields.js';
import { forgotten, formOfEntry } from './form-of-entry.js';
import type { FormChoices, FormState } from './record-form.js';
import { recordMessages } from './record-messages.js';

/** The form of the record book: its fields and choices, filled for a correction, forgotten when saved. */
export abstract class RecordFormElement extends LubberElement {
  /** Initials of the observer. */
  @property() observer?: string;

  /** Day of the observation, UTC. */
  @property() date?: string;

  /** Time of day, UTC. */
  @property() time?: string;

  /** Degrees, north positive, or text such as `33-24.0N`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `071-42.5W`. */
  @property() longitude?: string | number;

  /** Ship’s head by gyro, degrees. */
  @property({ attribute: 'heading-gyro' }) headingGyro?: string | number;

  /** Ship’s head by the standard compass, degrees. */
  @property({ attribute: 'heading-standard' }) headingStandard?: string | number;

  /** Ship’s head by the steering compass, degrees. */
  @property({ attribute: 'heading-steering' }) headingSteering?: string | number;

  /** What was observed: a body, a transit. */
  @property() target?: string;

  /** Its bearing as read, degrees. */
  @property() bearing?: string | number;

  /** Its true bearing, degrees. */
  @property({ attribute: 'true-bearing' }) trueBearing?: string | number;

  /** Degrees, east positive. */
  @property() variation?: string | number;

  /** Where the variation is from: chart or model. */
  @property({ attribute: 'variation-source' }) variationSource?: string;

  /** Deviation by the card on this heading, degrees, east positive. */
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;

  /** Degrees, east positive: true less gyro. */
  @property({ attribute: 'gyro-error' }) gyroError?: string | number;

  /** Degrees, starboard positive. */
  @property() heel?: string | number;

  /** What else there is to say. */
  @property() remarks?: string;

  /** What is entered: `observation`, `no-observation` or `event`. */
  @property() entry: FormChoices['entry'] = 'observation';

  /** The compass the bearing was read from. */
  @property({ attribute: 'bearing-by' }) bearingBy: FormChoices['bearingBy'] = 'standard';

  /** The kind of event, where the entry is one; empty until it is chosen. */
  @property() event: EventKind | '' = '';

  /** The watch, where the rules want one. */
  @property() watch: Watch | '' = '';
  @state() protected replaces: 'entry' | 'nothing' = 'nothing';
  @state() protected corrected: RecordEntry | null = null;

  protected readonly messages = recordMessages;
  protected readonly fields = formFields;

  protected get formState(): FormState {
    return Object.fromEntries(Object.entries(formFields).map(([name, field]) => [name, this.read<never>(field as never, name)])) as unknown as FormState;
  }

  protected get choices(): FormChoices {
    const { entry, bearingBy, event, watch } = this;
    return { entry, bearingBy, event, watch, corrects: this.corrected?.number ?? 0, replaces: this.replaces === 'entry' };
  }

  /** What belongs to one observation, as it was typed. */
  protected get observation(): readonly unknown[] {
    return forgotten.map((name) => this[name]);
  }

  /** Empties the form; what was typed over since, while an entry was being written, stays. */
  protected forgetObservation(asTyped = this.observation): void {
    forgotten.forEach((name, place) => {
      if (this[name] === asTyped[place]) this.#put(name, undefined);
    });
    this.event = '';
  }

  #put(name: FormField, value: string | number | Date | null | undefined): void {
    this.change(name, value);
    this.unsettle(name);
  }

  /** Fills the form with an old entry, to be struck out or replaced. */
  protected correct(entry: RecordEntry): void {
    for (const [name, value] of Object.entries(formOfEntry(entry))) if (name !== 'observer') this.#put(name as FormField, value);
    const kind = entry.kind === 'correction' ? entry.replacement : entry.kind;
    this.entry = kind ?? 'observation';
    this.bearingBy = entry.bearingBy ?? 'standard';
    this.event = entry.event ?? '';
    this.watch = entry.watch ?? '';
    this.replaces = 'nothing';
    this.corrected = entry;
    void this.updateComplete.then(() => {
      const form = this.renderRoot.querySelector<HTMLDetailsElement>('details.form');
      if (form) form.open = true;
      this.renderRoot.querySelector<HTMLElement>('[name="replaces"]')?.focus();
    });
  }

  protected cancelCorrection(): void {
    this.corrected = null;
    this.forgetObservation();
  }
}
