import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { choiceView } from '../shared/choice-view.js';
import { deviationTableView } from '../shared/deviation-table-field.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { GivenCard } from '../shared/given-card.js';
import { cardProblemView } from '../shared/given-card-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { errorField } from '../shared/trade-fields.js';

export const coefficientNames = ['coefficientA', 'coefficientB', 'coefficientC', 'coefficientD', 'coefficientE'] as const;
export type CoefficientName = (typeof coefficientNames)[number];

export const cardForms = ['table', 'coefficients'] as const;
export type CardForm = (typeof cardForms)[number];

/** What the user has entered of a card, and what was handed over. */
export interface CardStates {
  readonly form: CardForm;
  readonly table: FieldState<DeviationCard>;
  readonly coefficients: Readonly<Record<CoefficientName, FieldState<number>>>;
  readonly given: GivenCard;
}

/** Coefficients in degrees, those left empty 0; null where none is entered or one is not understood. */
function byCoefficients(states: CardStates['coefficients']): DeviationCard | null {
  const all = coefficientNames.map((name) => states[name]);
  if (all.every(({ state }) => state === 'empty') || all.some(({ state }) => state === 'refused')) return null;
  const [A = 0, B = 0, C = 0, D = 0, E = 0] = all.map((state) => valueOf(state) ?? 0);
  return { kind: 'approximate', coefficients: { A, B, C, D, E } };
}

/** The card entered in the form chosen; null without one. */
export function enteredCard({ form, table, coefficients }: CardStates): DeviationCard | null {
  return form === 'coefficients' ? byCoefficients(coefficients) : (valueOf(table) ?? null);
}

/** The card in use: as entered, else as handed over. */
export function cardOf(states: CardStates): DeviationCard | null {
  return enteredCard(states) ?? states.given.card;
}

/** The card's fields: table or coefficients, and a way to put a card handed over aside. */
export function cardView(host: LubberElement, states: CardStates, onRemove: () => void): TemplateResult {
  const handed = states.given.card !== null && !enteredCard(states);
  return html`${choiceView(
      host,
      'cardForm',
      host.t('ship.cardForm'),
      states.form,
      cardForms.map((value) => ({ value, label: host.t(`ship.cardForm.${value}`) })),
    )}
    ${states.form === 'table'
      ? deviationTableView(host, 'table', states.table, host.t('ship.card'))
      : html`<div class="pair">
          ${coefficientNames.map((name) =>
            fieldView(host, name, errorField, states.coefficients[name], { label: host.t('ship.coefficient', { letter: name.slice(-1) }), placeholder: '0' }),
          )}
        </div>`}
    ${handed
      ? html`<p class="hint">${host.t('ship.card.handed')}</p>
          ${host.isLocked('card') ? nothing : html`<p><button part="button" type="button" id="remove-card" @click=${onRemove}>${host.t('ship.card.remove')}</button></p>`}`
      : nothing}
    ${cardProblemView(host, states.given)}`;
}
