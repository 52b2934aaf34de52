import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { ShipAtPlace } from './bench-result.js';
import { coefficientText, signedNumber } from './iron-words.js';

const names = ['A', 'B', 'C', 'D', 'E'] as const;

/** The permanent and the induced share of a coefficient, degrees; only B and C have two. */
function shares({ largest }: ShipAtPlace, name: (typeof names)[number]): readonly [string, string] | null {
  if (!largest) return null;
  if (name === 'B') return [coefficientText(largest.permanentB), coefficientText(largest.inducedB)];
  if (name === 'C') return [coefficientText(largest.permanentC), coefficientText(largest.inducedC)];
  return null;
}

/** The five coefficients, exact and approximate, with what is permanent and what induced in them. */
export function coefficientsView(host: LubberElement, at: ShipAtPlace): TemplateResult {
  return html`<div class="scroll" role="group" aria-label=${host.t('iron.coefficients')}>
      <table part="table" class="coefficients">
        <thead>
          <tr>
            <td></td>
            <th scope="col" class="figure">${host.t('iron.coefficients.approximate')}</th>
            <th scope="col" class="figure">${host.t('iron.coefficients.exact')}</th>
            <th scope="col" class="figure">${host.t('iron.coefficients.permanent')}</th>
            <th scope="col" class="figure">${host.t('iron.coefficients.induced')}</th>
          </tr>
        </thead>
        <tbody>
          ${names.map((name) => {
            const both = shares(at, name);
            return html`<tr>
              <th scope="row">${name} <span class="soft">${host.t(`iron.coefficient.${name}`)}</span></th>
              <td class="figure">${coefficientText(at.approximate?.[name])}</td>
              <td class="figure">${signedNumber(at.exact[name])}</td>
              <td class="figure">${both?.[0] ?? nothing}</td>
              <td class="figure">${both?.[1] ?? nothing}</td>
            </tr>`;
          })}
          <tr>
            <th scope="row">λ <span class="soft">${host.t('iron.coefficient.lambda')}</span></th>
            <td></td>
            <td class="figure">${formatNumber(at.exact.lambda, 4)}</td>
            <td></td>
            <td></td>
          </tr>
        </tbody>
      </table>
    </div>
    <p class="small soft">${host.t(at.approximate ? 'iron.coefficients.shares' : 'iron.coefficients.beyond')}</p>`;
}

/** The coefficients of two states of the ship side by side, degrees. */
export function compareView(host: LubberElement, before: ShipAtPlace, after: ShipAtPlace, titles: readonly [string, string]): TemplateResult {
  return html`<table part="table">
    <thead>
      <tr>
        <td></td>
        ${titles.map((title) => html`<th scope="col" class="figure">${title}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${names.map(
        (name) => html`<tr>
          <th scope="row">${name}</th>
          <td class="figure">${coefficientText(before.approximate?.[name])}</td>
          <td class="figure">${coefficientText(after.approximate?.[name])}</td>
        </tr>`,
      )}
      <tr>
        <th scope="row">${host.t('iron.lambda')}</th>
        <td class="figure">${formatNumber(before.exact.lambda, 3)}</td>
        <td class="figure">${formatNumber(after.exact.lambda, 3)}</td>
      </tr>
    </tbody>
  </table>`;
}
