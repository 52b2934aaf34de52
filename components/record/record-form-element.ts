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

  @property() date?: string;
  @property() time?: string;
  @property() latitude?: string | number;
  @property() longitude?: string | number;
  @property({ attribute: 'heading-gyro' }) headingGyro?: string | number;
  @property({ attribute: 'heading-standard' }) headingStandard?: string | number;
  @property({ attribute: 'heading-steering' }) headingSteering?: string | number;
  @property() target?: string;
  @property() bearing?: string | number;
  @property({ attribute: 'true-bearing' }) trueBearing?: string | number;
  @property() variation?: string | number;
  @property({ attribute: 'variation-source' }) variationSource?: string;
  @property({ attribute: 'card-deviation' }) cardDeviation?: string | number;
  @property({ attribute: 'gyro-error' }) gyroError?: string | number;
  @property() heel?: string | number;
  @property() remarks?: string;

  /** Choices of the form. */
  @property() entry: FormChoices['entry'] = 'observation';
  @property({ attribute: 'bearing-by' }) bearingBy: FormChoices['bearingBy'] = 'standard';
  @property() event: EventKind = 'adjustment';
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

  protected forgetObservation(): void {
    for (const name of forgotten) this.#put(name, undefined);
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
    this.event = entry.event ?? 'adjustment';
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
