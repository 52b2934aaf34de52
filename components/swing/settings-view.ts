import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import { variationFor } from '../../core/swing/swing-reading.js';
import { choiceView, selectView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import { formatError } from '../shared/figures.js';
import { cardProblemView } from '../shared/given-card-view.js';
import { limitView } from '../shared/limit-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import { markFieldNames, swingFields } from './swing-fields.js';
import type { SwingFieldName } from './swing-fields.js';
import { settingLabel } from './setting-label.js';
import { circleTooWide, settingsOf } from './settings-given.js';
import type { SwingState } from './swing-state.js';
import { transitView } from './transit-view.js';

const placeholders: Partial<Record<SwingFieldName, string>> = {
  variation: 'swing.variation.model',
  gyroError: 'swing.gyroError.unknown',
  shoreError: 'swing.shoreError.none',
  constant: 'swing.constant.none',
  circleRadius: 'swing.circle.none',
  circleDistance: 'swing.circle.none',
};

/** Settings that stand with the choice they belong to. */
const shownTogether: readonly SwingFieldName[] = ['objectBearing', 'circleRadius', 'circleDistance', 'transitBearing', ...markFieldNames];

/** The variation of the model where none is entered: on paper a placeholder does not stand. */
function modelVariation(state: SwingState): string | null {
  const found = state.fields.variation.state === 'empty' ? variationFor(settingsOf(state)) : null;
  return found?.source === 'model' ? `${formatError(found.value)} ${found.model}` : null;
}

function field(host: LubberElement, state: SwingState, name: SwingFieldName): TemplateResult {
  const placeholder = placeholders[name];
  const echo = name === 'variation' ? modelVariation(state) : null;
  return fieldView<never>(host, name, swingFields[name] as never, state.fields[name] as never, {
    label: settingLabel(host, name),
    ...(echo === null ? (placeholder ? { placeholder: host.t(placeholder) } : {}) : { echo }),
  });
}

function objectView(host: LubberElement, state: SwingState): TemplateResult {
  const { used } = state;
  return html`${used.includes('objectBearing')
    ? html`${field(host, state, 'objectBearing')}
      ${choiceView(host, 'objectBy', host.t('swing.objectBy'), state.objectBy, (['magnetic', 'true'] as const).map((value) => ({ value, label: host.t(`swing.objectBy.${value}`) })))}`
    : nothing}
  ${used.includes('circleRadius')
    ? html`<div class="pair">${field(host, state, 'circleRadius')} ${field(host, state, 'circleDistance')}</div>
        ${circleTooWide(state) ? html`<p class="problem">${host.t('swing.circle.wide')}</p>` : nothing}
        ${choiceView(host, 'turning', host.t('swing.turning'), state.turning, (['starboard', 'port', 'unknown'] as const).map((value) => ({ value, label: host.t(`swing.turning.${value}`) })))}`
    : nothing}`;
}

/** All that the settings are drawn from: while it is the same nothing of them is drawn again. */
function drawnFrom(host: LubberElement, { fields, given, ...state }: SwingState): unknown[] {
  const { method, headingBy, headings, objectBy, turning, transitBy, methods, used, steering, unknown } = state;
  const chosen = [method, headingBy, headings, objectBy, turning, transitBy, methods.join(), used.join(), steering];
  const said = [used.map((name) => host.isSettled(name)).join(), unknown && host.unknownWords.join(), host.locked, host.isDisabled, host.page.language, host.t('swing.method')];
  return [...Object.values(fields), given.problem, ...chosen, ...said];
}

/** What is common to all headings: the method, and what it asks for. */
export function settingsView(host: LubberElement, state: SwingState): unknown {
  return guard(drawnFrom(host, state), () => settings(host, state));
}

function settings(host: LubberElement, state: SwingState): TemplateResult {
  const rest = state.used.filter((name) => !shownTogether.includes(name));
  return html`<div class="settings">
      ${selectView(host, 'method', host.t('swing.method'), state.method, [
        { label: host.t('swing.method.group'), options: swingMethods.map((value) => ({ value, label: host.t(`swing.method.${value}`) })) },
      ])}
      ${choiceView(host, 'headings', host.t('swing.headings'), String(state.headings), ['8', '16', '24', '36'].map((value) => ({ value, label: value })))}
      ${choiceView(host, 'headingBy', host.t('swing.headingBy'), state.headingBy, headingReckonings.map((value) => ({ value, label: host.t(`swing.headingBy.${value}`) })))}
      ${objectView(host, state)} ${transitView(host, state, (name) => field(host, state, name))} ${rest.map((name) => field(host, state, name))}
    </div>
    <p class="hint reads">${sentences(host.t, host.t(`swing.how.${state.method}`), state.steering ? host.t('swing.how.steering') : '')}</p>
    ${cardProblemView(host, state.given)}
    <details class="no-print">
      <summary part="summary">${host.t('swing.prompts')}</summary>
      <ul class="prompts small">
        ${[1, 2, 3, 4, 5, 6].map((prompt) => html`<li>${host.t(`swing.prompt.${prompt}`)}</li>`)}
      </ul>
    </details>`;
}

/** What the curve is judged by. */
export function judgeView(host: LubberElement, state: SwingState): unknown {
  const said = [state.unknown && host.unknownWords.join(), host.locked, host.isDisabled, host.page.language, host.t('limit')];
  return guard([state.limit, state.model, ...said], () => judge(host, state));
}

function judge(host: LubberElement, state: SwingState): TemplateResult {
  return html`<div class="settings judge">
    ${limitView(host, state.limit)}
    ${choiceView(host, 'model', host.t('swing.model'), state.model, (['auto', 'approximate', 'exact'] as const).map((value) => ({ value, label: host.t(`swing.model.${value}`) })))}
  </div>`;
}
