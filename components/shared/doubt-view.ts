import { html, noChange } from 'lit';
import type { TemplateResult } from 'lit';
import type { Doubt, DoubtItem } from '../../core/working/doubt.js';
import { doubtFields, doubtName } from './doubt-fields.js';
import type { Field, FieldState } from './field.js';
import { fieldView } from './field-view.js';
import { formatAngle } from './figures.js';
import type { LubberElement } from './lubber-element.js';
import { quantityText } from './quantity-text.js';

type States = Readonly<Record<string, FieldState<unknown>>>;

/** What is supposed of a cause: a field where the user may suppose something else. */
function supposedCell(host: LubberElement, { code, cause }: DoubtItem, states: States): TemplateResult {
  const name = doubtName(code);
  const field = (doubtFields as Readonly<Record<string, Field<number>>>)[name];
  const state = states[name] as FieldState<number> | undefined;
  const used = `±\u00a0${quantityText(cause)}`;
  if (!field || !state) return html`<td class="figure">${used}</td>`;
  const label = `${host.t('doubt.supposed')}: ${host.t(`doubt.${code}`)}`;
  return html`<td class="figure supposed">${fieldView(host, name, field, state, { label, placeholder: field.write(cause.value), echo: used })}</td>`;
}

function causesView(host: LubberElement, doubt: Doubt, states: States): TemplateResult {
  return html`<div class="scroll" role="group" aria-label=${host.t('doubt')}>
    <table part="table">
      <thead>
        <tr>
          <th scope="col">${host.t('doubt.cause')}</th>
          <th scope="col" class="figure">${host.t('doubt.supposed')}</th>
          <th scope="col" class="figure">${host.t('doubt.effect')}</th>
        </tr>
      </thead>
      <tbody>
        ${doubt.items.map(
          (item) => html`<tr>
            <th scope="row">${host.t(`doubt.${item.code}`)}</th>
            ${supposedCell(host, item, states)}
            <td class="figure">${formatAngle(item.effect, 2)}</td>
          </tr>`,
        )}
        <tr>
          <th scope="row">${host.t('doubt.total')}</th>
          <td></td>
          <td class="figure">${formatAngle(doubt.total, 2)}</td>
        </tr>
      </tbody>
    </table>
  </div>
  <p class="small soft">${host.t('doubt.sigma')}</p>`;
}

/**
 * The causes of doubt, what each is supposed to be and what it does, on request; opened where
 * something supposed is refused. `states` are the fields of the widget.
 */
export function doubtView(host: LubberElement, doubt: Doubt, states: States = {}): TemplateResult {
  const refused = doubt.items.some(({ code }) => states[doubtName(code)]?.state === 'refused');
  // Opened, never closed: that is the reader's.
  return html`<details part="doubt" ?open=${refused || noChange}>
    <summary part="summary">${host.t('doubt')}</summary>
    ${host.closed.view(refused, () => causesView(host, doubt, states))}
  </details>`;
}
