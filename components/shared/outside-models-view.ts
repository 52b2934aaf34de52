import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticModelName } from '../../core/field/magnetic-models.js';
import type { OutsideModels } from '../../core/field/outside-models.js';
import { formatNumber } from './figures.js';
import type { LubberElement } from './lubber-element.js';

/** In place of the field: the years the models hold for, and the nearest date to take instead. */
export function outsideModelsView(host: LubberElement, outside: OutsideModels, model: MagneticModelName | undefined): TemplateResult {
  const values = { from: formatNumber(outside.from, 1), until: formatNumber(outside.until, 1), model: model ?? '' };
  const locked = host.isLocked('date') || host.isLocked('instant');
  const take = (): void => {
    host.change('time', '00:00');
    host.change('date', `${outside.nearest}-01-01`);
  };
  return html`<p class="waiting wrong">${host.t(model ? 'earth.outside.model' : 'earth.outside', values)}</p>
    ${locked ? '' : html`<p class="no-print"><button part="button" type="button" @click=${take}>${host.t('earth.outside.take', { year: outside.nearest })}</button></p>`}`;
}
