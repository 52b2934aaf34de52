import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { gyroSpeedError } from '../../core/sight/gyro-speed-error.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { conversionFields } from './conversion-fields.js';

/** What a gyro without speed correction is out by on this course, and a button that takes it over. */
export function gyroSpeedView(host: LubberElement, speed: FieldState<number>, latitude: FieldState<number>, course: number | null): TemplateResult {
  const [knots, place] = [valueOf(speed), valueOf(latitude)];
  const ready = knots !== undefined && place !== undefined && course !== null;
  const error = ready ? gyroSpeedError({ speed: knots, course, latitude: place }) : null;
  return html`<details class="part">
    <summary part="summary">${host.t('conversion.gyroSpeed')}</summary>
    <p class="hint">${host.t('conversion.gyroSpeed.what')}</p>
    <div class="pair">
      ${fieldView(host, 'speed', conversionFields.speed, speed, { label: host.t('conversion.speed') })}
      ${fieldView(host, 'latitude', conversionFields.latitude, latitude, { label: host.t('conversion.latitude') })}
    </div>
    ${ready && error === null ? html`<p class="problem">${host.t('conversion.gyroSpeed.none')}</p>` : nothing}
    ${ready && error !== null
      ? html`<p class="row">
          <span>${host.t('conversion.gyroSpeed.found')}${host.t('list.gap')}<bdi dir="ltr">${formatError(error)}</bdi></span>
          <button part="button" type="button" ?disabled=${host.isLocked('gyroError')} @click=${() => host.change('gyroError', conversionFields.gyroError.write(error))}>${host.t('conversion.gyroSpeed.use')}</button>
        </p>`
      : nothing}
    ${!ready ? html`<p class="hint">${host.t('conversion.gyroSpeed.needs')}</p>` : nothing}
  </details>`;
}
