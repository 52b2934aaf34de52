import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { bodySelect } from '../shared/body-select.js';
import { choiceView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { azimuthFields } from './azimuth-fields.js';
import { altitudeKinds, azimuthMethods } from './placing.js';
import type { Placing } from './placing.js';

type PlacingField = keyof Placing['state'];

function field(host: LubberElement, { state }: Placing, name: PlacingField, { placeholder = '', hint = '' } = {}): TemplateResult {
  const label = host.t(name === 'heightOfEye' ? 'sight.heightOfEye' : `azimuth.${name}`);
  return fieldView(host, name, azimuthFields[name], state[name], { label, placeholder, hint });
}

function choice(host: LubberElement, name: 'method' | 'side' | 'altitudeOf', chosen: string, values: readonly string[]): TemplateResult {
  return choiceView(host, name, host.t(`azimuth.${name}`), chosen, values.map((value) => ({ value, label: host.t(`azimuth.${name}.${value}`) })));
}

function almanacView(host: LubberElement, placing: Placing): TemplateResult {
  return html`${field(host, placing, 'gha', { placeholder: host.t('azimuth.gha.instead') })}
    <div class="pair">${field(host, placing, 'sha')} ${field(host, placing, 'aries')}</div>
    ${field(host, placing, 'declination')}`;
}

function altitudeView(host: LubberElement, placing: Placing): TemplateResult {
  return html`${bodySelect(host, placing.body)} ${choice(host, 'altitudeOf', placing.altitudeOf, altitudeKinds)}
    ${field(host, placing, 'altitude', { hint: placing.altitudeOf === 'true' ? '' : host.t('azimuth.altitude.index') })}
    ${placing.altitudeOf === 'true' ? nothing : field(host, placing, 'heightOfEye')}
    ${field(host, placing, 'declination', { placeholder: host.t('azimuth.declination.body') })} ${choice(host, 'side', placing.side, ['east', 'west'])}`;
}

/** The choice of how the body is placed, and the fields that do it. */
export function placingView(host: LubberElement, placing: Placing): TemplateResult {
  const { method } = placing;
  return html`${choice(host, 'method', method, azimuthMethods)}
  ${method === 'body' ? bodySelect(host, placing.body) : method === 'almanac' ? almanacView(host, placing) : altitudeView(host, placing)}`;
}
