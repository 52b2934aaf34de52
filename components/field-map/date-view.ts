import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { magneticModelYears } from '../../core/field/magnetic-models.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { dateField } from '../shared/trade-fields.js';

/** The date of the map: a slider over the years of the models, and the day itself; while that is not understood the slider stays at the year `last` shown. */
export function dateView(host: LubberElement, state: FieldState<CivilDate>, last: number): TemplateResult {
  const { from, until } = magneticModelYears;
  const year = Math.min(until, Math.max(from, last));
  const onSlide = (event: Event): void => host.change('date', `${(event.target as HTMLInputElement).value}-01-01`);
  return html`<div class="day-and-year">
    ${fieldView(host, 'date', dateField, state, { label: host.t('sight.date'), echo: '' })}
    <label class="years">
      ${host.t('field-map.year')} ${from}–${until}
      <input part="input"
        type="range"
        id="year"
        min=${from}
        max=${until}
        step="1"
        .defaultValue=${String(year)}
        aria-valuetext=${host.t('field-map.year.spoken', { year })}
        ?disabled=${host.isLocked('date') || host.isLocked('instant')}
        @input=${onSlide}
      />
    </label>
  </div>`;
}
