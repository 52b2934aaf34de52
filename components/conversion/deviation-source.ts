import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { FieldState } from '../shared/field.js';
import { valueOf } from '../shared/field.js';

/** Where the deviation comes from. */
export const deviationSources = ['value', 'card', 'table', 'coefficients'] as const;

export type DeviationSource = (typeof deviationSources)[number];

export interface SourceStates {
  readonly deviation: FieldState<number>;
  readonly table: FieldState<DeviationCard>;
  readonly coefficients: readonly FieldState<number>[];
  /** The card of the host or the ship. */
  readonly card: DeviationCard | null;
}

/** The source the user has chosen, or the one for which there is something. */
export function chosenSource(asked: string | undefined, { deviation, table, coefficients, card }: SourceStates): DeviationSource {
  const named = deviationSources.find((source) => source === asked);
  if (named && (named !== 'card' || card)) return named;
  if (deviation.state !== 'empty') return 'value';
  if (table.state !== 'empty') return 'table';
  if (coefficients.some(({ state }) => state !== 'empty')) return 'coefficients';
  return card ? 'card' : 'value';
}

/** Coefficients left empty are nothing; with none entered, or one that is not understood, there is no card. */
function coefficientCard(states: readonly FieldState<number>[]): DeviationCard | null {
  if (states.some(({ state }) => state === 'refused') || states.every(({ state }) => state === 'empty')) return null;
  const [A = 0, B = 0, C = 0, D = 0, E = 0] = states.map((state) => valueOf(state) ?? 0);
  return { kind: 'approximate', coefficients: { A, B, C, D, E } };
}

/** The deviation as one value or as a card; null where there is none yet. */
export function deviationFrom(source: DeviationSource, states: SourceStates): number | DeviationCard | null {
  switch (source) {
    case 'value':
      return valueOf(states.deviation) ?? null;
    case 'card':
      return states.card;
    case 'table':
      return valueOf(states.table) ?? null;
    case 'coefficients':
      return coefficientCard(states.coefficients);
  }
}
