import type { Translate } from './catalogue.js';
import type { ChartCurve } from './deviation-chart.js';
import { formatBearing } from './figures.js';
import { spokenError } from './spoken.js';

/** The deviation on every degree, 0 to 360. */
const onDegrees = (curve: ChartCurve): readonly (number | null)[] => Array.from({ length: 361 }, (_, heading) => curve.at(heading));

/** Headings where a curve crosses zero, by the straight line from degree to degree. */
function crossings(deviations: readonly (number | null)[]): number[] {
  const found: number[] = [];
  for (let heading = 0; heading < 360; heading += 1) {
    const here = deviations[heading] ?? null;
    const next = deviations[heading + 1] ?? null;
    if (here === null || next === null || here === next) continue;
    // A zero on the degree itself belongs to the stretch that begins there.
    if (here === 0 || here * next < 0) found.push(heading + here / (here - next));
  }
  return found;
}

/** A curve in one sentence: its largest values, where they are, and where it crosses zero. */
export function deviationSummary(curve: ChartCurve, t: Translate): string {
  let [most, least] = [{ at: 0, deviation: -Infinity }, { at: 0, deviation: Infinity }];
  const deviations = onDegrees(curve);
  for (let at = 0; at < 360; at += 1) {
    const deviation = deviations[at] ?? null;
    if (deviation === null) continue;
    if (deviation > most.deviation) most = { at, deviation };
    if (deviation < least.deviation) least = { at, deviation };
  }
  if (most.deviation === -Infinity) return '';
  const headings = crossings(deviations).slice(0, 8).map((heading) => formatBearing(heading, 0));
  return t('chart.summary', {
    name: curve.name,
    most: spokenError(most.deviation, t),
    mostOn: formatBearing(most.at, 0),
    least: spokenError(least.deviation, t),
    leastOn: formatBearing(least.at, 0),
    crossings: headings.length > 0 ? t('chart.crossings', { headings: headings.join(t('list.comma')) }) : t('chart.crossings.none'),
  });
}
