import type { Translate } from './catalogue.js';
import type { ChartCurve } from './deviation-chart.js';
import { formatBearing } from './figures.js';
import { spokenError } from './spoken.js';

/** A curve in one sentence: its largest values, where they are, and where it crosses zero. */
export function deviationSummary(curve: ChartCurve, t: Translate): string {
  let [most, least] = [{ at: 0, deviation: -Infinity }, { at: 0, deviation: Infinity }];
  const crossings: number[] = [];
  let next = curve.at(0);
  for (let at = 0; at < 360; at += 1) {
    const deviation = next;
    next = curve.at(at + 1);
    if (deviation === null) continue;
    if (deviation > most.deviation) most = { at, deviation };
    if (deviation < least.deviation) least = { at, deviation };
    if (next === null || deviation === next) continue;
    // By the straight line from degree to degree; a zero on the degree itself belongs to the stretch that begins there.
    if (deviation === 0 || deviation * next < 0) crossings.push(at + deviation / (deviation - next));
  }
  if (most.deviation === -Infinity) return '';
  const headings = crossings.slice(0, 8).map((heading) => formatBearing(heading, 0));
  return t('chart.summary', {
    name: curve.name,
    most: spokenError(most.deviation, t),
    mostOn: formatBearing(most.at, 0),
    least: spokenError(least.deviation, t),
    leastOn: formatBearing(least.at, 0),
    crossings: headings.length > 0 ? t('chart.crossings', { headings: headings.join(t('list.comma')) }) : t('chart.crossings.none'),
  });
}
