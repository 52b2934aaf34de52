import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Field } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { BenchElement } from './bench-element.js';
import { numberFields, reaches } from './bench-fields.js';

interface SliderOptions {
  readonly label: string;
  readonly unit?: string;
  readonly picture?: TemplateResult;
}

/**
 * A quantity as a slider and as the field with its number, which takes more than the slider
 * reaches. Both carry the same name; arrow keys move either.
 */
export function sliderView(bench: BenchElement, name: string, { label, unit = '', picture }: SliderOptions): TemplateResult {
  const field = numberFields[name] as Field<number>;
  const state = bench.number(name);
  const { least, most, step } = reaches[name] ?? { least: 0, most: 1, step: 0.1 };
  const value = state.state === 'value' ? state.value : 0;
  const held = Math.min(most, Math.max(least, value));
  return html`<div class="slider ${picture ? 'with-picture' : ''}">
    ${picture ?? nothing}
    <div>
      ${fieldView(bench, name, field, state, { label, echo: unit })}
      <input part="input"
        type="range"
        dir="ltr"
        min=${least}
        max=${most}
        step=${step}
        .defaultValue=${String(held)}
        ?disabled=${bench.isLocked(name)}
        aria-label=${bench.t('iron.slider', { name: label })}
        aria-valuetext=${state.state === 'value' ? field.show(state.value) : bench.t('iron.slider.none')}
        @input=${(event: Event) => bench.slide(name, Number((event.target as HTMLInputElement).value))}
      />
    </div>
  </div>`;
}
