import type { DeviationCard } from './deviation-card.js';
import type { DeviationFit } from './fit-deviation.js';

/** The card a fit amounts to; null unless the headings taken determine all five coefficients. */
export function fittedCard(fit: DeviationFit): DeviationCard | null {
  const { A, B, C, D, E } = fit.coefficients;
  if (A === null || B === null || C === null || D === null || E === null) return null;
  return { kind: fit.model, coefficients: { A, B, C, D, E } };
}
