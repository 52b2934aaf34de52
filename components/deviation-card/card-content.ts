import { checkCard } from '../../core/deviation/check-card.js';
import type { CardCheck } from '../../core/deviation/check-card.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import type { Caution } from '../../core/working/caution.js';
import { ageCautions, ageInMonths } from '../../core/deviation/card-age.js';
import { cardRows } from './card-rows.js';
import type { CardRow } from './card-rows.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';

/** Who, where and when: what a card carries beside its figures. */
export interface Particulars {
  readonly vessel: string;
  readonly compassName: string;
  readonly serial: string;
  readonly place: string;
  /** `YYYY-MM-DD`; empty where not dated. */
  readonly date: string;
  /** Horizontal and vertical force at the place of the swing, microtesla, down positive; null where not given. */
  readonly horizontal: number | null;
  readonly vertical: number | null;
  readonly remarks: string;
  readonly correctors: Correctors;
}

/** A printed card as plain data. */
export interface CardResult {
  readonly card: DeviationCard;
  readonly particulars: Particulars;
  readonly rows: readonly CardRow[];
  readonly check: CardCheck;
  readonly limit: DeviationLimit;
  /** Whole months since its date; null without one. */
  readonly ageMonths: number | null;
  readonly cautions: readonly Caution[];
}

export interface CardInput {
  readonly card: DeviationCard;
  readonly particulars: Particulars;
  readonly date: CivilDate | undefined;
  readonly every: 10 | 15;
  readonly limit: DeviationLimit;
  readonly today: Date;
}

export interface CardContent {
  readonly result: CardResult;
  readonly curve: DeviationCurve;
}

/** Everything the printed card shows. */
export function cardContent({ card, particulars, date, every, limit, today }: CardInput): CardContent {
  const curve = deviationCurve(card);
  const check = checkCard(card, limit);
  const ageMonths = date ? ageInMonths(date, today) : null;
  const cautions = [...check.cautions, ...ageCautions(ageMonths, limit)];
  return { curve, result: { card, particulars, rows: cardRows(curve, every, limit), check, limit, ageMonths, cautions } };
}
