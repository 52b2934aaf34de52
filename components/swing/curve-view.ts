import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { confidenceBands } from '../../core/deviation/confidence-band.js';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { predictedDeviation } from '../../core/deviation/predict-deviation.js';
import type { SwungCompass } from '../../core/swing/adjusted-swing.js';
import type { Swing } from '../../core/swing/swing.js';
import { deviationChart } from '../shared/deviation-chart.js';
import type { ChartContent, ChartCurve, ChartPoint } from '../shared/deviation-chart.js';
import { deviationKey } from '../shared/deviation-key.js';
import { deviationSummary } from '../shared/deviation-summary.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** What drawing and summary ask for the same whole degrees is worked out once. */
function remembered<T>(of: (heading: number) => T): (heading: number) => T {
  const known = new Array<T>(361);
  return (heading) => (known[heading] ??= of(heading));
}

/** The fitted curve; none where the headings determine too little of it. */
function fittedCurve(name: string, { fit, constantLost }: Swing): ChartCurve | null {
  const enough = fit.determined.length === 5 || (constantLost && fit.determined.length === 4);
  return enough ? { name, at: remembered((heading) => predictedDeviation(fit.model, fit.curve.estimate, heading)) } : null;
}

function bandOf({ fit }: Swing): ChartContent['band'] {
  if (fit.curve.covariance === null || fit.determined.length < 5) return undefined;
  const band = confidenceBands(fit);
  return (heading) => {
    const point = band(heading);
    return point && point.halfWidth !== null ? [point.deviation - point.halfWidth, point.deviation + point.halfWidth] : null;
  };
}

function pointsOf({ rows }: Swing): readonly ChartPoint[] {
  return rows.flatMap((row): ChartPoint[] => {
    if (!row.ok) return [];
    const { heading, deviation } = row;
    return [{ heading, deviation, ...(row.struck ? { mark: 'struck' as const } : row.suspect ? { mark: 'suspect' as const } : {}) }];
  });
}

/** What held before the curve that is drawn. */
export interface CurveBehind {
  readonly name: string;
  readonly card: DeviationCard;
}

interface CurveShown {
  readonly name: string;
  readonly behind: CurveBehind | null;
  readonly limit: number;
  readonly compass: SwungCompass;
  /** Whether another compass's curve stands beside it. */
  readonly paired: boolean;
}

/** Readings, curve, band and limit, with what held before behind them. */
export function curveView(host: LubberElement, result: Swing, { name, behind, limit, compass, paired }: CurveShown): TemplateResult {
  const fitted = fittedCurve(name, result);
  // Once the ship has taken this very card there is no other to be drawn behind it.
  const old: ChartCurve[] = behind && JSON.stringify(behind.card) !== JSON.stringify(result.card) ? [{ name: behind.name, at: deviationCurve(behind.card).at }] : [];
  const content: ChartContent = { curves: fitted ? [fitted, ...old] : old, points: pointsOf(result), band: fitted ? bandOf(result) : undefined, limit, id: compass };
  const summary = fitted ? deviationSummary(fitted, host.t) : host.t('swing.curve.none');
  return html`<div part="curve">
    ${deviationChart(content, summary, host.width.narrow ? host.width.picture : paired ? 'middle' : 'wide')} ${deviationKey(content, host.t)} ${fitted ? nothing : html`<p class="hint">${summary}</p>`}
  </div>`;
}
