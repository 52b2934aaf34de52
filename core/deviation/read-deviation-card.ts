import { coefficientNames } from './approximate-deviation.js';
import type { DeviationCard, DeviationRow } from './deviation-card.js';
import { sortedRows } from './deviation-table.js';

/** Why data from outside is no card; `where` names the part, e.g. `rows[3].heading`. */
export type CardReading =
  | { readonly ok: true; readonly card: DeviationCard }
  | {
      readonly ok: false;
      readonly reason:
        | 'not-an-object'
        | 'unknown-kind'
        | 'no-rows'
        | 'too-many-rows'
        | 'not-a-number'
        | 'out-of-range'
        | 'headings-disagree';
      readonly where: string;
    };

type Bag = Readonly<Record<string, unknown>>;

/** More rows than any table has: ten for each degree. */
const MOST_ROWS = 3600;

function isBag(value: unknown): value is Bag {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuse(reason: Extract<CardReading, { ok: false }>['reason'], where: string): CardReading {
  return { ok: false, reason, where };
}

/** The finite number of a name, held to ±`most`, or why there is none. */
function numberOf(bag: Bag, name: string, most: number): number | 'not-a-number' | 'out-of-range' {
  const value = bag[name];
  if (typeof value !== 'number' || !Number.isFinite(value)) return 'not-a-number';
  return Math.abs(value) <= most ? value : 'out-of-range';
}

function readRows(value: unknown): CardReading {
  if (!Array.isArray(value) || value.length === 0) return refuse('no-rows', 'rows');
  if (value.length > MOST_ROWS) return refuse('too-many-rows', 'rows');
  const rows: DeviationRow[] = [];
  for (const [index, row] of (value as readonly unknown[]).entries()) {
    if (!isBag(row)) return refuse('not-an-object', `rows[${index}]`);
    const heading = numberOf(row, 'heading', 360);
    if (typeof heading !== 'number') return refuse(heading, `rows[${index}].heading`);
    const deviation = numberOf(row, 'deviation', 180);
    if (typeof deviation !== 'number') return refuse(deviation, `rows[${index}].deviation`);
    rows.push({ heading, deviation });
  }
  try {
    sortedRows(rows);
  } catch {
    return refuse('headings-disagree', 'rows');
  }
  return { ok: true, card: { kind: 'table', rows } };
}

function readCoefficients(kind: 'approximate' | 'exact', value: unknown): CardReading {
  if (!isBag(value)) return refuse('not-an-object', 'coefficients');
  // Degrees up to half a turn; forces of a hundred times the earth's are no ship's.
  const most = kind === 'approximate' ? 180 : 100;
  const read = { A: 0, B: 0, C: 0, D: 0, E: 0 };
  for (const name of coefficientNames) {
    const coefficient = numberOf(value, name, most);
    if (typeof coefficient !== 'number') return refuse(coefficient, `coefficients.${name}`);
    read[name] = coefficient;
  }
  if (kind === 'approximate') return { ok: true, card: { kind, coefficients: read } };
  if (value['lambda'] === undefined || value['lambda'] === null) return { ok: true, card: { kind, coefficients: read } };
  const lambda = numberOf(value, 'lambda', most);
  if (typeof lambda !== 'number') return refuse(lambda, 'coefficients.lambda');
  return { ok: true, card: { kind, coefficients: { ...read, lambda } } };
}

/**
 * Reads a deviation card from data of unknown origin (a file, an attribute, a message): a
 * copy with the card's own parts only, or the reason there is none. Never throws.
 */
export function readDeviationCard(value: unknown): CardReading {
  if (!isBag(value)) return refuse('not-an-object', '');
  switch (value['kind']) {
    case 'table':
      return readRows(value['rows']);
    case 'approximate':
    case 'exact':
      return readCoefficients(value['kind'], value['coefficients']);
    default:
      return refuse('unknown-kind', 'kind');
  }
}
