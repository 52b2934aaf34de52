import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { magneticDip, totalForce } from '../../core/iron/earth-field.js';
import { inducedPolarity } from '../../core/iron/induced-polarity.js';
import { formatAngle, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { worstOf } from './bench-result.js';
import type { ShipAtPlace } from './bench-result.js';
import { NONE, coefficientText, deviationText, headingText, microtesla } from './iron-words.js';

type Row = readonly [label: string, text: (at: ShipAtPlace) => string];

function rows(host: LubberElement): { readonly changes: readonly Row[]; readonly stays: readonly Row[] } {
  const angle = (at: ShipAtPlace): string => {
    const found = magneticDip(at.field);
    return found === null ? NONE : formatAngle(found);
  };
  return {
    changes: [
      ['H', (at) => microtesla(at.field.h)],
      ['Z', (at) => microtesla(at.field.z)],
      [host.t('iron.dip'), angle],
      [host.t('iron.total'), (at) => microtesla(totalForce(at.field))],
      [host.t('iron.voyage.mast'), ({ field }) => host.t(`iron.polarity.${inducedPolarity(field, 0).mast.top ?? 'none'}`)],
      [host.t('iron.voyage.permanentB'), (at) => coefficientText(at.largest?.permanentB)],
      [host.t('iron.voyage.inducedB'), (at) => coefficientText(at.largest?.inducedB)],
      ['B', (at) => coefficientText(at.approximate?.B)],
      [host.t('iron.voyage.permanentC'), (at) => coefficientText(at.largest?.permanentC)],
      [host.t('iron.voyage.inducedC'), (at) => coefficientText(at.largest?.inducedC)],
      ['C', (at) => coefficientText(at.approximate?.C)],
      [host.t('iron.voyage.largest'), (at) => deviationText(worstOf(at.curve)?.deviation)],
      [host.t('iron.voyage.worst'), (at) => headingText(worstOf(at.curve)?.compassHeading)],
    ],
    stays: [
      ['P', (at) => microtesla(at.iron.P)],
      ['Q', (at) => microtesla(at.iron.Q)],
      ['R', (at) => microtesla(at.iron.R)],
      ['A', (at) => coefficientText(at.approximate?.A)],
      ['D', (at) => coefficientText(at.approximate?.D)],
      ['E', (at) => coefficientText(at.approximate?.E)],
      ['λ', (at) => formatNumber(at.exact.lambda, 3)],
    ],
  };
}

/** Whether B keeps its sign on the voyage, and why: Z may turn over, or only leave the upper hand to P. */
function fateOfB(here: ShipAtPlace, there: ShipAtPlace): 'none' | 'turns' | 'gives-way' | 'keeps' | 'same-side' {
  const [before, after] = [here.exact.B ?? 0, there.exact.B ?? 0];
  if (Math.abs(before) < 1e-6 || Math.abs(after) < 1e-6) return 'none';
  const crossed = here.field.z * there.field.z < 0;
  if (before * after < 0) return crossed ? 'turns' : 'gives-way';
  return crossed ? 'keeps' : 'same-side';
}

/** The ship at two places side by side: what changes with the field, and what stays with her. */
export function voyageView(host: LubberElement, here: ShipAtPlace, there: ShipAtPlace, titles: readonly [string, string]): TemplateResult {
  const { changes, stays } = rows(host);
  const body = (title: string, list: readonly Row[]): TemplateResult => html`<tbody>
    <tr><th scope="rowgroup" colspan="3" class="group">${title}</th></tr>
    ${list.map(
      ([label, text]) => html`<tr>
        <th scope="row">${label}</th>
        <td class="figure">${text(here)}</td>
        <td class="figure">${text(there)}</td>
      </tr>`,
    )}
  </tbody>`;
  return html`<p>${host.t(`iron.voyage.B.${fateOfB(here, there)}`)}</p>
    <div class="scroll" role="group" aria-label=${host.t('iron.voyage.table')}>
      <table part="table" class="voyage">
        <thead>
          <tr>
            <td></td>
            ${titles.map((title) => html`<th scope="col" class="figure">${title}</th>`)}
          </tr>
        </thead>
        ${body(host.t('iron.voyage.changes'), changes)} ${body(host.t('iron.voyage.stays'), stays)}
      </table>
    </div>
    <p class="small soft">${host.t('iron.coefficients.shares')}</p>`;
}
