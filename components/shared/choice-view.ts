import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { lockedMark } from './locked-mark.js';
import type { LubberElement } from './lubber-element.js';
import { unknownWordView } from './unknown-word-view.js';

/** Letters of a label above which each choice takes a line of its own. */
const LONG = 21;

/** A choice of one from few, as radio buttons of the browser's own. */
export function choiceView(
  host: LubberElement,
  name: string,
  label: string,
  chosen: string,
  options: readonly { readonly value: string; readonly label: string }[],
): TemplateResult {
  const locked = host.isLocked(name);
  const isChosen = (value: string): boolean => value === chosen && !host.unknownWord(name);
  return html`<fieldset part="field" aria-describedby="${name}-problem">
    <legend part="label" class="legend">${label}${lockedMark(host, name)}</legend>
    <div class="choices ${options.some((option) => option.label.length > LONG) ? 'long' : options.length === 3 ? 'three' : ''}">
      ${options.map(
        (option) => html`<label class=${isChosen(option.value) ? 'chosen' : ''}>
          <input part="input"
            type="radio"
            name=${name}
            .value=${option.value}
            .defaultChecked=${isChosen(option.value)}
            ?disabled=${locked && !isChosen(option.value)}
            @change=${() => host.change(name, option.value)}
          />${option.label}
        </label>`,
      )}
    </div>
    ${unknownWordView(host, name)}
  </fieldset>`;
}

/** A choice of one from many, as the browser's own list; `hint`, by that name, says more of the one chosen. */
export function selectView(
  host: LubberElement,
  name: string,
  label: string,
  chosen: string,
  groups: readonly { readonly label: string; readonly options: readonly { readonly value: string; readonly label: string }[] }[],
  hint: unknown = nothing,
): TemplateResult {
  const unknown = host.unknownWord(name);
  return html`<div class="field" part="field">
    <label part="label" for=${name}>${label}${lockedMark(host, name)}</label>
    <div class="entry">
      <select part="input" id=${name} ?disabled=${host.isLocked(name)} aria-describedby="${name}-problem ${name}-hint" @focus=${() => host.closed.draw()} @change=${(event: Event) => host.change(name, (event.target as HTMLSelectElement).value)}>
        ${unknown ? html`<option disabled selected>${unknown}</option>` : nothing}
        ${groups.map(
          (group) => html`<optgroup label=${group.label}>
            ${group.options.map(({ value, label }) => html`<option .value=${value} .text=${label} .defaultSelected=${value === chosen && !unknown}></option>`)}
          </optgroup>`,
        )}
      </select>
    </div>
    ${unknownWordView(host, name)} ${hint}
  </div>`;
}
