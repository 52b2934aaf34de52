import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Reckoning } from '../../core/sight/chain-steps.js';
import { choiceView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import { formatError } from '../shared/figures.js';
import { cardProblemView } from '../shared/given-card-view.js';
import type { North } from '../shared/field.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { bearingField } from '../shared/trade-fields.js';
import { conversionFields as fields } from './conversion-fields.js';
import type { ConversionState } from './conversion-state.js';
import { gyroSpeedView } from './gyro-speed-view.js';
import { sourceView } from './source-view.js';

const letters: Readonly<Record<Reckoning, North>> = { true: 'T', magnetic: 'M', compass: 'C', gyro: 'G' };

/** A direction and the north it is counted from. */
function directionView(host: LubberElement, name: 'heading' | 'bearing', state: ConversionState, labels: { field: string; by: string }): TemplateResult {
  const by = name === 'heading' ? state.headingBy : state.bearingBy;
  return html`${fieldView(host, name, bearingField(letters[by]), state[name], { label: host.t(labels.field) })}
  ${choiceView(
    host,
    `${name}By`,
    host.t(labels.by),
    by,
    (['true', 'magnetic', 'compass', 'gyro'] as const).map((value) => ({ value, label: host.t(`conversion.by.${value}`) })),
  )}`;
}

/** The wind's part: for a course only, since a bearing makes no leeway. */
function leewayView(host: LubberElement, state: ConversionState): TemplateResult {
  return html`<div class="pair">
      ${fieldView(host, 'leeway', fields.leeway, state.leeway, { label: host.t('conversion.leeway'), placeholder: '0' })}
      ${fieldView(host, 'wind', fields.wind, state.wind, { label: host.t('conversion.wind') })}
    </div>
    ${state.leeway.state === 'empty' ? nothing : html`<p class="hint after-pair">${host.t('conversion.wind.what')}</p>`}`;
}

/** What the model says for the ship's place, in the place of a variation typed. */
const modelText = ({ modelVariation }: ConversionState): string => (modelVariation ? `${formatError(modelVariation.value)} ${modelVariation.model}` : '');

/** All fields in the order they are asked for; `course` is the true course as far as it is known. */
export function fieldsView(host: LubberElement, state: ConversionState, course: number | null): TemplateResult {
  const bearing = state.kind === 'bearing';
  return html`${choiceView(
    host,
    'kind',
    host.t('conversion.kind'),
    state.kind,
    (['course', 'bearing'] as const).map((value) => ({ value, label: host.t(`conversion.kind.${value}`) })),
  )}
  ${bearing ? directionView(host, 'bearing', state, { field: 'conversion.bearing', by: 'conversion.bearingBy' }) : nothing}
  ${directionView(host, 'heading', state, bearing ? { field: 'conversion.heading', by: 'conversion.headBy' } : { field: 'conversion.course', by: 'conversion.headingBy' })}
  ${fieldView(host, 'variation', fields.variation, state.variation, { label: host.t('conversion.variation'), placeholder: modelText(state) || host.t('conversion.unknown') })}
  ${cardProblemView(host, state.given)} ${sourceView(host, state.source, state.sources)}
  ${fieldView(host, 'gyroError', fields.gyroError, state.gyroError, { label: host.t('conversion.gyroError'), placeholder: host.t('conversion.noGyro') })}
  ${bearing ? nothing : leewayView(host, state)}
  ${fieldView(host, 'byHand', fields.byHand, state.byHand, { label: host.t('conversion.byHand') })} ${gyroSpeedView(host, state.speed, state.latitude, course)}`;
}
