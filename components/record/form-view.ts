import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticCompass } from '../../core/record/entry.js';
import { choiceView, selectView } from '../shared/choice-view.js';
import type { Field, FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { fieldsFor } from './record-form.js';
import type { FormChoices, FormState } from './record-form.js';
import { formFields } from './form-fields.js';
import type { FormField } from './form-fields.js';

const events = ['', 'adjustment', 'dock', 'lightning', 'cargo', 'lay-up', 'electrical', 'other'] as const;
const watches = ['', 'middle', 'morning', 'forenoon', 'afternoon', 'dog', 'first'] as const;
const kinds = ['observation', 'no-observation', 'event'] as const;
const compasses = ['standard', 'steering', 'gyro'] as const satisfies readonly (MagneticCompass | 'gyro')[];

/** The words each choice of the form takes. */
export const formWords = { entry: kinds, bearingBy: compasses, event: events, watch: watches };

function fieldOf(host: LubberElement, state: FormState, name: FormField, options: { label?: string; placeholder?: string; hint?: string } = {}): TemplateResult {
  const field = formFields[name] as unknown as Field<unknown>;
  return fieldView(host, name, field, state[name] as FieldState<unknown>, { label: host.t(`record.${name}`), ...options });
}

function select(host: LubberElement, name: string, label: string, chosen: string, options: readonly string[], group: string): TemplateResult {
  const words = options.map((value) => ({ value, label: host.t(value ? `${group}.${value}` : 'record.watch.none') }));
  return selectView(host, name, label, chosen, [{ label, options: words }]);
}

function kindView(host: LubberElement, { entry, corrects, replaces }: FormChoices): TemplateResult {
  const options = kinds.map((value) => ({ value, label: host.t(`record.kind.${value}`) }));
  return html`${corrects > 0
    ? choiceView(host, 'replaces', host.t('record.replace', { number: corrects }), replaces ? 'entry' : 'nothing', [
        { value: 'nothing', label: host.t('record.replace.nothing') },
        { value: 'entry', label: host.t('record.replace.entry') },
      ])
    : nothing}
  ${corrects === 0 || replaces ? choiceView(host, 'entry', host.t('record.kind'), entry, options) : nothing}`;
}

function observationView(host: LubberElement, state: FormState, choices: FormChoices, hasCard: boolean): TemplateResult {
  const of = (name: FormField, options = {}): TemplateResult => fieldOf(host, state, name, options);
  return html`${of('headingStandard')} ${of('headingSteering')} ${of('headingGyro')}
    ${select(host, 'bearingBy', host.t('record.bearingBy'), choices.bearingBy, compasses, 'record.compass')}
    ${of('target')} ${of('bearing')} ${of('trueBearing')}
    ${of('variation', { label: host.t('sight.variation') })} ${of('variationSource')}
    ${of('cardDeviation', { label: host.t('sight.cardDeviation'), placeholder: host.t(hasCard ? 'record.cardDeviation.card' : 'sight.cardDeviation.none') })}
    ${of('gyroError', { hint: host.t('record.gyroError.hint') })} ${of('heel')}`;
}

/** The form by hand: the fields that count for the kind of entry chosen, and what it will say. */
export function formView(
  host: LubberElement,
  state: FormState,
  choices: FormChoices,
  more: { readonly hasCard: boolean; readonly preview: string; readonly revives: string; readonly onSave: () => void; readonly onCancel: () => void },
): TemplateResult {
  const counted = fieldsFor(choices);
  const reason = choices.corrects > 0 ? 'record.remarks.reason' : choices.entry === 'no-observation' ? 'record.remarks.overcast' : null;
  return html`<div class="form-grid">
      <div class="wide">${kindView(host, choices)}</div>
      ${counted.includes('date') ? html`${whenView(host, state, formFields)} ${placeView(host, state, formFields)}` : nothing}
      ${counted.includes('bearing') ? observationView(host, state, choices, more.hasCard) : nothing}
      ${counted.includes('date') && choices.entry === 'event'
        ? html`<div>${select(host, 'event', host.t('record.event'), choices.event, events, 'record.event')}<p class="hint">${host.t('record.event.restart')}</p></div>`
        : nothing}
      ${counted.includes('date') ? select(host, 'watch', host.t('record.watch'), choices.watch, watches, 'record.watch') : nothing}
      ${fieldOf(host, state, 'observer')}
      <div class="wide">${fieldOf(host, state, 'remarks', reason ? { placeholder: host.t(reason) } : {})}</div>
    </div>
    ${more.revives ? html`<p class="small" id="revives">${more.revives}</p>` : nothing} ${more.preview ? html`<p class="small">${host.t('record.preview')} ${more.preview}</p>` : nothing}
    <p class="row">
      <button part="button" type="button" class="main" @click=${more.onSave}>${host.t('record.save')}</button>
      ${choices.corrects > 0 ? html`<button part="button" type="button" @click=${more.onCancel}>${host.t('record.cancel')}</button>` : nothing}
    </p>`;
}
