import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { Column, Given, GivenValue } from '../../core/drill/exercise.js';
import { quantity } from '../../core/working/quantity.js';
import type { Quantity } from '../../core/working/quantity.js';
import { bodyName } from '../shared/body-name.js';
import { errorInColumn } from '../shared/error-parts.js';
import { formatBearing, formatLongitude } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { quantityText } from '../shared/quantity-text.js';
import { signedText } from '../shared/signed-text.js';

/** Whole degrees are written whole. */
const decimalsOf = (value: number): number => (Number.isInteger(value) ? 0 : 1);

/** A variation as a chart's rose prints it: `3° 45′ W`. */
const roseText = (value: number): string => formatLongitude(value, 0).replace(/^0+(?=\d)/, '');

function numberText(code: string, given: Quantity): string {
  const { value, unit } = given;
  if (code === 'roseVariation') return roseText(value);
  if (code.startsWith('coefficient')) return signedText(value);
  if (code.startsWith('dip')) return signedText(value, 0);
  return unit === 'bearing' ? formatBearing(value, decimalsOf(value)) : quantityText(given);
}

function cellView({ code, unit }: Column, value: number): TemplateResult {
  if (unit === 'error') return errorInColumn(value);
  return html`<bdi dir="ltr">${unit === 'hour' ? String(value).padStart(2, '0') : numberText(code, quantity(value, unit))}</bdi>`;
}

function wordText(host: LubberElement, word: string): string {
  return word.startsWith('body.') ? bodyName(host, word.slice('body.'.length)) : host.t(`drill.word.${word}`);
}

function shortText(host: LubberElement, code: string, value: Exclude<GivenValue, { is: 'table' }>): string {
  if (value.is === 'text') return value.text;
  return value.is === 'word' ? wordText(host, value.word) : numberText(code, value.quantity);
}

/** Rows side by side in so many columns, read downwards. */
function inBlocks<T>(rows: readonly T[], blocks: number): (T | undefined)[][] {
  const height = Math.ceil(rows.length / blocks);
  return Array.from({ length: height }, (_, line) => Array.from({ length: blocks }, (__, block) => rows[block * height + line]));
}

type TableValue = Extract<GivenValue, { is: 'table' }>;

/** A table; a long one of two columns is folded into so many. */
function tableView(host: LubberElement, code: string, { columns, rows }: TableValue, folds: number): TemplateResult {
  const blocks = columns.length === 2 && rows.length > 8 ? folds : 1;
  return html`<div class="scroll" role="group" aria-label=${host.t(`drill.given.${code}`)}>
    <table part="table" class="given-table">
      <caption>${host.t(`drill.given.${code}`)}</caption>
      <thead>
        <tr>
          ${Array.from({ length: blocks }, () => columns.map((column) => html`<th scope="col" class="figure">${host.t(`drill.column.${column.code}`)}</th>`))}
        </tr>
      </thead>
      <tbody>
        ${inBlocks(rows, blocks).map(
          (line) => html`<tr>
            ${line.map((row) => columns.map((column, index) => html`<td class="figure">${row ? cellView(column, row[index] ?? 0) : ''}</td>`))}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

/** What a learner is told: short things in a list, tables below it, long ones folded. */
export function givensView(host: LubberElement, givens: readonly Given[], folds = 2): TemplateResult {
  const short = givens.flatMap(({ code, value }) => (value.is === 'table' ? [] : [{ code, value }]));
  return html`<dl class="givens" part="givens">
      ${short.map(
        ({ code, value }) => html`<div>
          <dt>${host.t(`drill.given.${code}`)}</dt>
          <dd><bdi dir="ltr">${shortText(host, code, value)}</bdi></dd>
        </div>`,
      )}
    </dl>
    ${givens.map(({ code, value }) => (value.is === 'table' ? tableView(host, code, value, folds) : ''))}`;
}
