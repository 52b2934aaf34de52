import { html } from 'lit';
import type { TemplateResult , nothing } from 'lit';
import { coefficientSteps } from '../../core/iron/coefficient-steps.js';
import { deviationSteps } from '../../core/iron/deviation-steps.js';
import { fieldSteps } from '../../core/iron/field-steps.js';
import { formatBearing } from '../shared/figures.js';
import { workingView } from '../shared/working-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { BenchResult } from './bench-result.js';
import { directivePicture, forcePicture } from './force-picture.js';
import { deviationCell, headingText } from './iron-words.js';

const EVERY = 15;

/** The curve as a table by magnetic heading, with the directive force. */
export function curveTable(host: LubberElement, { curve, field }: BenchResult): TemplateResult {
  const rows = curve.filter(({ magneticHeading }) => magneticHeading % EVERY === 0);
  return html`<details>
    <summary part="summary">${host.t('iron.table')}</summary>
    <div class="scroll" role="group" aria-label=${host.t('iron.table')}><table part="table">
      <thead>
        <tr>
          ${['magnetic', 'compass', 'deviation', 'force'].map((column) => html`<th scope="col" class="figure">${host.t(`iron.table.${column}`)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row" class="figure">${formatBearing(row.magneticHeading, 0)}</th>
            <td class="figure">${headingText(row.compassHeading)}</td>
            <td class="figure">${deviationCell(row.deviation)}</td>
            <td class="figure">${field.h === 0 ? '–' : `${Math.round((100 * row.directiveForce) / field.h)} %`}</td>
          </tr>`,
        )}
      </tbody>
    </table></div>
  </details>`;
}

/** Directive force by heading, and what draws it: opened by itself where the needle is in trouble. */
export function forceView(host: LubberElement, result: BenchResult): TemplateResult {
  const { behaviour } = result.needle;
  return html`<details ?open=${behaviour !== 'directs'} part="force">
    <summary part="summary">${host.t('iron.directive')}</summary>
    <div class="two">
      <figure>
        ${forcePicture(host, result)}
        <figcaption class="small soft">${host.t(`iron.force.${behaviour}`)}</figcaption>
      </figure>
      <figure>
        ${directivePicture(host, result)}
        <figcaption class="small soft">${host.t('iron.directive.caption')}</figcaption>
      </figure>
    </div>
  </details>`;
}

/** Dip and total, coefficients from the rods, then tan δ on the heading. */
export function benchWorking(host: LubberElement, { iron, field, heel, heading, exact }: BenchResult): TemplateResult | typeof nothing {
  const { lambda, A, B, C, D, E } = exact;
  const known = A !== null && B !== null && C !== null && D !== null && E !== null;
  const steps = [
    ...fieldSteps(field),
    ...coefficientSteps(iron, field, heel),
    ...(known ? deviationSteps({ lambda, A, B, C, D, E }, heading) : []),
  ];
  return workingView(host, steps);
}
