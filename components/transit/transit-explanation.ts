import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { METRES_PER_MILE } from '../../core/sight/line-bearing.js';
import { sensitivity, usualTransitDoubts } from '../../core/sight/transit-doubts.js';
import type { MarkError, TransitSight } from '../../core/sight/transit-result.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { doubtView } from '../shared/doubt-view.js';
import type { Field, StatesOf } from '../shared/field.js';
import { formatAngle, formatBearing, formatError, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { otherCautions } from '../shared/reason.js';
import { recordButton } from '../shared/record-button.js';
import { sentences } from '../shared/sentences.js';
import { workingView } from '../shared/working-view.js';
import { isGrave } from '../shared/worthless.js';
import { transitPicture } from './transit-picture.js';

type States = StatesOf<Readonly<Record<string, Field<unknown>>>>;

/** A distance as it is said at sea: in metres within half a mile, in miles beyond. */
function distanceText(metres: number): string {
  if (metres >= METRES_PER_MILE / 2) return `${formatNumber(metres / METRES_PER_MILE, 1)}\u00a0M`;
  return `${formatNumber(metres, metres < 10 ? 1 : 0)}\u00a0m`;
}

/** What one line rests on: eye and chart, distances, how sharply the marks part. */
function factsView(host: LubberElement, mark: MarkError): TemplateResult {
  const { markDistance, shipDistance, rhumbBearing } = mark;
  const sharp = markDistance === null || shipDistance === null ? null : sensitivity(markDistance, shipDistance, usualTransitDoubts.opening);
  const facts = [
    rhumbBearing === null ? '' : host.t('transit.facts.chart', { true: formatBearing(mark.trueBearing, 2), chart: formatBearing(rhumbBearing, 2) }),
    markDistance === null ? '' : host.t('transit.facts.apart', { apart: distanceText(markDistance) }),
    shipDistance === null ? '' : host.t(`transit.facts.away.${mark.kind}`, { away: distanceText(shipDistance) }),
    sharp === null ? '' : host.t('transit.facts.sensitive', { offLine: distanceText(sharp.offLine), bearing: formatAngle(sharp.bearing, 2) }),
  ];
  return html`<p class="facts small soft">${sentences(host.t, ...facts)}</p>`;
}

/** Several lines as a table, and their scatter in words. */
function tableView(host: LubberElement, { marks, compass, scatter, cautions }: TransitSight, numbers: readonly number[]): TemplateResult {
  const odd = new Set(cautions.filter(({ code }) => code === 'odd-mark').map(({ values }) => values['number']));
  const heads = ['true', 'chart', compass === 'gyro' ? 'gyro' : 'compass', 'error', 'residual'];
  return html`<p class="facts small soft">${host.t('transit.scatter', { count: marks.length, scatter: formatAngle(scatter ?? 0, 1) })}</p>
    <div class="scroll" role="group" aria-label=${host.t('transit.table')}>
      <table part="table">
        <thead>
          <tr>
            <td></td>
            ${heads.map((head) => html`<th scope="col" class="figure">${host.t(`transit.table.${head}`)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${marks.map(
            (mark, index) => html`<tr class=${odd.has(String(numbers[index])) ? 'odd' : ''}>
              <th scope="row">${host.t('transit.line', { number: numbers[index] ?? index + 1 })}</th>
              <td class="figure">${formatBearing(mark.trueBearing)}</td>
              <td class="figure">${mark.rhumbBearing === null ? '–' : formatBearing(mark.rhumbBearing)}</td>
              <td class="figure">${formatBearing(mark.compassBearing)}</td>
              <td class="figure">${formatError(mark.error)}</td>
              <td class="figure">${formatError(mark.residual)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

/** What stands below the answer, its cautions as `cautionsOfLines` words them: picture, what the lines rest on, cautions, working, doubt, and the way into the record where the time is told. */
export function explanationView(host: LubberElement, result: TransitSight, numbers: readonly number[], states: States, onRecord: (() => void) | null): TemplateResult {
  const [first, second] = result.marks;
  return html`${transitPicture(host, result, numbers)}
    ${second ? tableView(host, result, numbers) : first ? factsView(host, first) : nothing} ${cautionsView(host, otherCautions(result.cautions, isGrave))}
    <div class="after">
      ${workingView(host, result.steps)} ${doubtView(host, result.doubt, states)}
      ${recordButton(host, result.cautions.some(isGrave), onRecord)}
    </div>
    ${standingCautions(host)}`;
}
