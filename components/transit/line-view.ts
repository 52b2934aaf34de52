import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { choiceView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { bearingField } from '../shared/trade-fields.js';
import { lineKinds } from './line-reading.js';
import type { LineRead } from './line-reading.js';
import { lineFields } from './transit-fields.js';

/** The property of a field of a line: its own name for the first, with the number behind for the others. */
export function nameOf(name: string, number: number): string {
  return number === 1 ? name : `${name}-${number}`;
}

function positionView(host: LubberElement, which: 'front' | 'rear' | 'mark', { number, states }: LineRead): TemplateResult {
  const [latitude, longitude] = [`${which}Latitude` as const, `${which}Longitude` as const];
  return html`<fieldset class="mark">
    <legend class="legend">${host.t(`transit.${which}`)}</legend>
    <div class="pair">
      ${fieldView(host, nameOf(latitude, number), lineFields[latitude], states[latitude], { label: host.t('sight.latitude') })}
      ${fieldView(host, nameOf(longitude, number), lineFields[longitude], states[longitude], { label: host.t('sight.longitude') })}
    </div>
  </fieldset>`;
}

function placedView(host: LubberElement, read: LineRead): TemplateResult {
  if (read.kind === 'two-marks') return html`${positionView(host, 'front', read)} ${positionView(host, 'rear', read)}`;
  if (read.kind === 'one-mark') return positionView(host, 'mark', read);
  return fieldView(host, nameOf('charted', read.number), lineFields.charted, read.states.charted, {
    label: host.t('transit.charted'),
    hint: host.t('transit.charted.hint'),
  });
}

/** The fields of one line: what it is, where its marks are, and how it bore. */
export function lineView(host: LubberElement, read: LineRead, several: boolean, gyro: boolean, onRemove: () => void): TemplateResult {
  const { number, states } = read;
  return html`<section class="line-fields" aria-label=${host.t('transit.line', { number })}>
    ${several
      ? html`<div class="row line-head">
          <h3>${host.t('transit.line', { number })}</h3>
          ${number === 1
            ? nothing
            : html`<button type="button" class="plain" aria-label=${host.t('transit.remove.line', { number })} @click=${onRemove}>${host.t('transit.remove')}</button>`}
        </div>`
      : nothing}
    ${choiceView(
      host,
      nameOf('kind', number),
      host.t('transit.kind'),
      read.kind,
      lineKinds.map((value) => ({ value, label: host.t(`transit.kind.${value}`) })),
    )}
    ${placedView(host, read)}
    ${fieldView(host, nameOf('bearing', number), bearingField(gyro ? 'G' : 'C'), states.bearing, {
      label: host.t(gyro ? 'transit.bearing.gyro' : 'transit.bearing'),
    })}
    ${fieldView(host, nameOf('markName', number), lineFields.markName, states.markName, { label: host.t('transit.markName') })}
  </section>`;
}
