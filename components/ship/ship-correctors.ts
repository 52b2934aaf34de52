import { anyCorrector, readCorrectors } from '../../core/deviation/corrector-states.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';

/** The compasses of a ship that have cards. */
export const compassNames = ['standard', 'steering'] as const;
export type CompassName = (typeof compassNames)[number];

/** How the correctors of each compass stood, as far as it is known. */
export type ShipCorrectors = Readonly<Partial<Record<CompassName, Correctors>>>;

function parsed(given: unknown): unknown {
  if (typeof given !== 'string') return given;
  try {
    return JSON.parse(given) as unknown;
  } catch {
    return null;
  }
}

/** Reads them from plain data or JSON; a compass of which nothing is said is left out. */
export function readShipCorrectors(given: unknown): ShipCorrectors {
  const value = parsed(given);
  if (typeof value !== 'object' || value === null) return {};
  const known: Partial<Record<CompassName, Correctors>> = {};
  for (const compass of compassNames) {
    const correctors = readCorrectors((value as Readonly<Record<string, unknown>>)[compass]);
    if (anyCorrector(correctors)) known[compass] = correctors;
  }
  return known;
}
