import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatError as formatWithPoint, roundTo } from '../../core/angle/format-angle.js';
import type { CompassKind } from '../../core/sight/compass-kind.js';
import type { VariationSource } from '../../core/sight/variation-source.js';
import type { Caution } from '../../core/working/caution.js';
import type { Doubt } from '../../core/working/doubt.js';
import { cautionsView } from './caution-view.js';
import { formatAngle, formatBearing, formatError } from './figures.js';
import type { LubberElement } from './lubber-element.js';
import type { IsGrave } from './reason.js';
import { reasonsOf } from './reason.js';
import { spokenError } from './spoken.js';

/** What a sight's headline needs of its result. */
export interface Headline {
  /** Null where the error is the mean of several directions. */
  readonly trueBearing: number | null;
  readonly error: number;
  readonly compass: CompassKind;
  readonly doubt: Doubt;
  readonly variation: VariationSource;
  readonly deviation: number | null;
  /** One standard deviation of the deviation found: that of the error and that of the variation. */
  readonly deviationDoubt: number | null;
  readonly cardDeviation: number | null;
  readonly difference: number | null;
  readonly cautions: readonly Caution[];
}

/** Above this doubt, degrees, an error told to the half degree would claim more than is known. Common practice, no source. */
const PRACTICE_DOUBT = 2;

/** Practice rounds the error to the nearest half degree (Pub. 9, 2002 and later, art. 1700). */
function ofPractice(error: number): string {
  const half = roundTo(error * 2, 0) / 2;
  return formatWithPoint(half, 1).replace('.5°', '½°').replace('.0°', '°').replace(/^0½/, '½');
}

function part(label: string, value: string, spoken: string, remark: string | readonly TemplateResult[] = ''): TemplateResult {
  return html`<div>
    <dt>${label}</dt>
    <dd>
      <bdi dir="ltr" aria-hidden="true">${value}</bdi><span class="spoken">${spoken}</span>
      ${remark ? html`<small>${remark}</small>` : nothing}
    </dd>
  </div>`;
}

function variationPart(host: LubberElement, variation: VariationSource): TemplateResult {
  if (variation.source === 'none') {
    return part(host.t('sight.split.variation'), '–', host.t('sight.split.unknown'), host.t('sight.split.unknown'));
  }
  const remark = variation.source === 'model' ? variation.model : host.t('sight.split.given');
  return part(host.t('sight.split.variation'), formatError(variation.value), spokenError(variation.value, host.t), remark);
}

/** Officers say it of the gyro's own reading: with an easterly error it reads low. Common practice, no source. */
function gyroReads(host: LubberElement, error: number): string {
  const tenths = roundTo(error, 1);
  return tenths === 0 ? '' : host.t(`sight.gyro.${tenths > 0 ? 'low' : 'high'}`);
}

/** How much of the sight the reader should know beside its figures. */
export interface HeadlineNote {
  /** Ship's head by the compass, degrees: a deviation belongs to a heading. */
  readonly heading?: number | null | undefined;
  /** Under which cautions no error was found. For a reason not to use it no doubt is claimed, nor a figure for practice. */
  readonly isGrave: IsGrave;
}

/** The error in one line to be read at arm's length, why it is not to be used where it is not, then what it consists of. */
export function headlineView(host: LubberElement, result: Headline, { heading, isGrave }: HeadlineNote): TemplateResult {
  const reasons = reasonsOf(result.cautions, isGrave);
  const worthless = reasons.length > 0;
  const gyro = result.compass === 'gyro';
  const name = host.t(gyro ? 'sight.gyroError' : 'sight.error');
  const { deviation, deviationDoubt, cardDeviation, difference } = result;
  const within = (sigma: number | null): string => (sigma === null || worthless ? '' : `±\u00a0${formatAngle(sigma, 1)}`);
  const doubt = worthless ? host.t('sight.worthless') : within(result.doubt.total);
  const reads = gyro ? gyroReads(host, result.error) : '';
  const listed = (...words: readonly string[]): string => words.filter(Boolean).join(host.t('list.comma'));
  // Each runs its own way where words run from right to left.
  const apart = (...words: readonly string[]): TemplateResult[] => words.filter(Boolean).map((word, index) => html`${index ? host.t('list.comma') : ''}<bdi>${word}</bdi>`);
  const errorPart = (label: string, value: number): TemplateResult => part(host.t(label), formatError(value), spokenError(value, host.t));
  return html`<p class="answer" part="answer">
      <span class="spoken">${listed(`${name} ${spokenError(result.error, host.t)}`, reads, doubt)}</span>
      <span aria-hidden="true">
        <span class="name">${name}</span> <bdi dir="ltr">${formatError(result.error)}</bdi><small
          >${apart(doubt, reads, worthless || result.doubt.total > PRACTICE_DOUBT ? '' : host.t('sight.practice', { error: ofPractice(result.error) }))}</small
        >
      </span>
    </p>
    ${cautionsView(host, reasons)}
    <dl class="split" part="split">
      ${result.trueBearing === null ? nothing : part(host.t('sight.split.true'), formatBearing(result.trueBearing), formatBearing(result.trueBearing))}
      ${gyro ? nothing : variationPart(host, result.variation)}
      ${deviation === null
        ? nothing
        : part(
            host.t('sight.split.deviation'),
            formatError(deviation),
            spokenError(deviation, host.t),
            apart(within(deviationDoubt), typeof heading !== 'number' ? host.t('sight.split.noHeading') : host.t('sight.split.onHeading', { heading: formatBearing(heading) })),
          )}
      ${cardDeviation === null ? nothing : errorPart('sight.split.card', cardDeviation)}
      ${difference === null ? nothing : errorPart('sight.split.difference', difference)}
    </dl>`;
}
