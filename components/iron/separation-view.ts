import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { asinDegrees } from '../../core/angle/trigonometry.js';
import { cautionsView } from '../shared/caution-view.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { NONE, coefficientText, deviationCell, microtesla, signedNumber } from './iron-words.js';
import type { Separation } from './separation.js';

const orNone = (value: number | null, text: (value: number) => string): string => (value === null ? NONE : text(value));

function found(host: LubberElement, { separated }: Separation): TemplateResult {
  const rods: readonly ('P' | 'c' | 'Q' | 'f')[] = ['P', 'c', 'Q', 'f'];
  const text = (name: string, value: number | null): string => orNone(value, name === 'P' || name === 'Q' ? microtesla2 : signedNumber);
  return html`<div class="scroll" role="group" aria-label=${host.t('iron.separate.found')}><table part="table">
    <thead>
      <tr>
        <td></td>
        <th scope="col" class="figure">${host.t('iron.separate.over')}</th>
        <th scope="col" class="figure">${host.t('iron.separate.itself')}</th>
      </tr>
    </thead>
    <tbody>
      ${rods.map(
        (name) => html`<tr>
          <th scope="row">${name} <span class="soft">${host.t(`iron.separate.${name}`)}</span></th>
          <td class="figure">${text(name, separated.overLambda[name])}</td>
          <td class="figure">${text(name, separated[name])}</td>
        </tr>`,
      )}
    </tbody>
  </table></div>
  ${separated.P === null && separated.overLambda.P !== null ? html`<p class="small soft">${host.t('iron.separate.needsLambda')}</p>` : nothing}`;
}

function microtesla2(force: number): string {
  return microtesla(force, 2);
}

/** What two swings tell apart, and the card they foretell at the third place. */
export function separationView(host: LubberElement, separation: Separation): TemplateResult {
  const { predicted, rows, separated } = separation;
  const largest = (value: number | null | undefined): string =>
    value === null || value === undefined || Math.abs(value) > 1 ? NONE : coefficientText(asinDegrees(value));
  return html`<h3>${host.t('iron.separate.found')}</h3>
    ${found(host, separation)} ${cautionsView(host, separated.warnings)}
    <h3>${host.t('iron.separate.predicted')}</h3>
    ${predicted && rows.length > 0
      ? html`<p class="small soft">
            ${host.t('iron.separate.exact', { B: largest(predicted.exact.B), C: largest(predicted.exact.C) })}
          </p>
          <div class="scroll" role="group" aria-label=${host.t('iron.separate.predicted')}><table part="table" class="prediction">
            <thead>
              <tr>
                ${['heading', 'predicted', 'ship'].map((column) => html`<th scope="col" class="figure">${host.t(`iron.separate.column.${column}`)}</th>`)}
              </tr>
            </thead>
            <tbody>
              ${rows.map(
                (row) => html`<tr>
                  <th scope="row" class="figure">${formatBearing(row.compassHeading, 0)}</th>
                  <td class="figure">${deviationCell(row.predicted, 2)}</td>
                  <td class="figure">${deviationCell(row.ship, 2)}</td>
                </tr>`,
              )}
            </tbody>
          </table></div>`
      : html`<p class="soft">${host.t('iron.separate.none')}</p>`}`;
}
