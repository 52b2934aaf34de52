import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';
import { correctorEnds, correctorNames } from '../../core/deviation/corrector-states.js';
import type { CorrectorName, CorrectorState, Correctors } from '../../core/deviation/corrector-states.js';

/** The correctors as they stand: what, which way, how far; a line each. `take` is told what the user changed, and in which part. */
export function correctorsEntry(host: LubberElement, correctors: Correctors, locked: boolean, take: (changed: Correctors, part: string) => void): TemplateResult {
  const set = (name: CorrectorName, part: keyof CorrectorState, value: string): void => take({ ...correctors, [name]: { ...correctors[name], [part]: value } }, `${name}-${part}`);
  const label = (name: CorrectorName, part: keyof CorrectorState): string => [name, part].map((of) => host.t(`card.corrector.${of}`)).join(host.t('list.comma'));
  const words = (name: CorrectorName, part: 'what' | 'distance'): TemplateResult => html`<td>
    <input part="input"
      type="text"
      dir="auto"
      autocomplete="off"
      aria-label=${label(name, part)}
      placeholder=${host.t(`card.corrector.${part}`)}
      .defaultValue=${correctors[name][part]}
      ?readonly=${locked}
      @input=${(event: Event) => set(name, part, (event.target as HTMLInputElement).value)}
    />
  </td>`;
  return html`<div class="correctors-entry">
    ${correctorNames.map(
      (name) => html`<table part="table">
        <caption>${host.t(`card.corrector.${name}`)}</caption>
        <tbody>
          <tr>
            ${words(name, 'what')}
            <td>
              <select part="input" aria-label=${label(name, 'end')} ?disabled=${locked} @change=${(event: Event) => set(name, 'end', (event.target as HTMLSelectElement).value)}>
                <option value="" .defaultSelected=${correctors[name].end === ''}>–</option>
                ${correctorEnds[name].map((end) => html`<option value=${end} .defaultSelected=${end === correctors[name].end}>${host.t(`card.end.${end}`)}</option>`)}
              </select>
            </td>
            ${words(name, 'distance')}
          </tr>
        </tbody>
      </table>`,
    )}
  </div>`;
}
