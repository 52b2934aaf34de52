import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { readGivenCard } from '../shared/given-card.js';
import type { GivenCard } from '../shared/given-card.js';
import type { CompassName } from './ship-correctors.js';
import type { ShipStates } from './ship-fields.js';

export const coefficientNames = ['coefficientA', 'coefficientB', 'coefficientC', 'coefficientD', 'coefficientE'] as const;
export type CoefficientName = (typeof coefficientNames)[number];

export const cardForms = ['table', 'coefficients'] as const;
export type CardForm = (typeof cardForms)[number];

/** What the user has entered of the card of one compass, and what was handed over. */
export interface CardStates {
  readonly form: CardForm;
  readonly table: FieldState<DeviationCard>;
  /** Of the standard compass alone; the card beside a steering compass is a table. */
  readonly coefficients: Readonly<Record<CoefficientName, FieldState<number>>> | null;
  readonly given: GivenCard;
}

/** What the page has set of the cards. */
interface GivenCards {
  readonly card?: unknown;
  readonly steeringCard?: unknown;
  readonly cardForm?: string | undefined;
}

/** The cards of both compasses, from the ship's fields and from what the page has set. */
export function shipCards(states: ShipStates, { card, steeringCard, cardForm }: GivenCards): Readonly<Record<CompassName, CardStates>> {
  const asked = cardForms.find((form) => form === cardForm);
  const form = asked ?? (coefficientNames.some((name) => states[name].state !== 'empty') ? 'coefficients' : 'table');
  return {
    standard: { form, table: states.table, coefficients: states, given: readGivenCard(card) },
    steering: { form: 'table', table: states.steeringTable, coefficients: null, given: readGivenCard(steeringCard) },
  };
}

/** The fields that count in the form chosen. */
function countedStates({ form, table, coefficients }: CardStates): readonly FieldState<unknown>[] {
  return form === 'coefficients' && coefficients ? coefficientNames.map((name) => coefficients[name]) : [table];
}

/** Whether something is entered that is not understood, or not yet. */
export function isHalfTyped(states: CardStates): boolean {
  return countedStates(states).some(({ state }) => state === 'refused');
}

/** Coefficients in degrees, those left empty 0; null where none is entered. */
function byCoefficients(states: Readonly<Record<CoefficientName, FieldState<number>>>): DeviationCard | null {
  const [A, B, C, D, E] = coefficientNames.map((name) => valueOf(states[name]));
  if ([A, B, C, D, E].every((value) => value === undefined)) return null;
  return { kind: 'approximate', coefficients: { A: A ?? 0, B: B ?? 0, C: C ?? 0, D: D ?? 0, E: E ?? 0 } };
}

/** The card entered in the form chosen; null without one, or where it is not understood. */
export function enteredCard(states: CardStates): DeviationCard | null {
  const { form, table, coefficients } = states;
  if (isHalfTyped(states)) return null;
  return form === 'coefficients' && coefficients ? byCoefficients(coefficients) : (valueOf(table) ?? null);
}

/** The card in use: as entered, else as handed over. */
export function cardOf(states: CardStates): DeviationCard | null {
  return enteredCard(states) ?? states.given.card;
}
