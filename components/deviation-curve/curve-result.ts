import { checkCard } from '../../core/deviation/check-card.js';
import type { CardCheck } from '../../core/deviation/check-card.js';
import { confidenceBand } from '../../core/deviation/confidence-band.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { fitDeviation } from '../../core/deviation/fit-deviation.js';
import type { DeviationFit } from '../../core/deviation/fit-deviation.js';
import { fittedCard } from '../../core/deviation/fitted-card.js';
import type { ChartContent, ChartCurve, ChartPoint } from '../shared/deviation-chart.js';
import type { NamedCard } from './given-cards.js';
import type { CurvePoint } from './given-points.js';

export interface CurveInput {
  /** Cards to be drawn, the one in use first. */
  readonly cards: readonly NamedCard[];
  readonly points: readonly CurvePoint[];
  readonly model: 'approximate' | 'exact';
  readonly limit: DeviationLimit;
  /** What the curve laid through the points is called. */
  readonly fitName: string;
}

/** The curves as plain data: what an event carries. */
export interface CurveResult {
  readonly cards: readonly NamedCard[];
  readonly points: readonly CurvePoint[];
  /** The curve laid through the points; null without points. */
  readonly fit: DeviationFit | null;
  /** The card in use held against the limit. */
  readonly check: CardCheck;
  readonly limit: DeviationLimit;
}

/** The same with what can be drawn and asked. */
export interface CurveState {
  readonly result: CurveResult;
  readonly curves: readonly (ChartCurve & { readonly curve: DeviationCurve })[];
  readonly content: ChartContent;
}

function chartPoints(points: readonly CurvePoint[], fit: DeviationFit | null): ChartPoint[] {
  return points.map(({ heading, deviation, struck }, index) => {
    const mark = struck ? ('struck' as const) : fit?.suspects.includes(index) ? ('suspect' as const) : null;
    return mark ? { heading, deviation, mark } : { heading, deviation };
  });
}

/** The edges of the band on a heading; null where nothing tells the scatter. */
function edgesOn(fit: DeviationFit, heading: number): readonly [number, number] | null {
  const point = confidenceBand(fit, heading);
  if (!point || point.halfWidth === null) return null;
  return [point.deviation - point.halfWidth, point.deviation + point.halfWidth];
}

function bandOf(fit: DeviationFit): ChartContent['band'] {
  return edgesOn(fit, 0) ? (heading) => edgesOn(fit, heading) : undefined;
}

function fitOf({ points, model }: CurveInput): DeviationFit | null {
  if (points.length === 0) return null;
  const observations = points.map(({ heading, deviation, struck, sigma }) => ({ heading, deviation, ...(struck ? { weight: 0 } : {}), ...(sigma === undefined ? {} : { sigma }) }));
  return fitDeviation(observations, { model });
}

/** Null where neither a card nor enough readings give a curve. */
export function curveState(input: CurveInput): CurveState | null {
  const fit = fitOf(input);
  const fitted: DeviationCard | null = fit ? fittedCard(fit) : null;
  const cards = fitted ? [{ name: input.fitName, card: fitted }, ...input.cards] : input.cards;
  const [first] = cards;
  if (!first) return null;
  const curves = cards.map(({ name, card }) => {
    const curve = deviationCurve(card);
    return { name, curve, at: (heading: number) => curve.at(heading) };
  });
  return {
    result: { cards, points: input.points, fit, check: checkCard(first.card, input.limit), limit: input.limit },
    curves,
    content: {
      curves,
      points: chartPoints(input.points, fit),
      band: fitted && fit ? bandOf(fit) : undefined,
      limit: input.limit.largest,
    },
  };
}
