import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { readGivenCard } from '../shared/given-card.js';
import type { CurveInput } from './curve-result.js';
import { readCards } from './given-cards.js';
import type { NamedCard } from './given-cards.js';
import { readPoints } from './given-points.js';

/** What may be handed over or typed; anything may be missing, and anything may be wrong. */
export interface CurveSources {
  readonly card: unknown;
  readonly before: unknown;
  readonly cards: unknown;
  readonly points: unknown;
  readonly table: DeviationCard | null;
  readonly tableIs: 'card' | 'readings';
  readonly shipCard: DeviationCard | null;
  readonly model: 'approximate' | 'exact';
  readonly limit: DeviationLimit;
}

export interface ReadInput extends CurveInput {
  /** What cannot be read, and why; `points` have no reason beyond their place. */
  readonly problems: readonly { readonly where: string; readonly reason: string | null }[];
}

/** Brings what was typed and what was handed over together: the typed first, the ship's card where nothing else is. */
export function curveInput(t: (key: string) => string, sources: CurveSources): ReadInput {
  const given = { card: readGivenCard(sources.card), before: readGivenCard(sources.before) };
  const named = readCards(sources.cards);
  const read = readPoints(sources.points);
  const typedReadings = sources.tableIs === 'readings' && sources.table?.kind === 'table' ? sources.table.rows : [];
  const cards: NamedCard[] = [];
  const add = (key: string, card: DeviationCard | null): void => {
    if (card) cards.push({ name: t(`curve.name.${key}`), card });
  };
  if (sources.tableIs === 'card') add('typed', sources.table);
  cards.push(...named.cards);
  add('card', given.card.card);
  const points = [...read.points, ...typedReadings];
  if (cards.length === 0 && points.length === 0) add('card', sources.shipCard);
  add('before', given.before.card);
  const problems = [
    ...[given.card.problem, given.before.problem, named.problem].flatMap((problem) => (problem ? [problem] : [])),
    ...(read.problem ? [{ where: read.problem, reason: null }] : []),
  ];
  return { cards, points, model: sources.model, limit: sources.limit, fitName: t('curve.name.fit'), problems };
}
