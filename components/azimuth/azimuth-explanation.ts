import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { AzimuthSight } from '../../core/sight/azimuth-sight.js';
import type { BearingSeries } from '../../core/sight/bearing-series.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { doubtView } from '../shared/doubt-view.js';
import type { Field, StatesOf } from '../shared/field.js';
import { formatAngle, formatBearing } from '../shared/figures.js';
import { RIBBON_WIDTH, horizonRibbon } from '../shared/horizon-ribbon.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { otherCautions } from '../shared/reason.js';
import { recordButton } from '../shared/record-button.js';
import { spokenError } from '../shared/spoken.js';
import { stepsView, workingView } from '../shared/working-view.js';
import { isGrave } from '../shared/worthless.js';
import { seriesPicture } from './series-picture.js';

type States = StatesOf<Readonly<Record<string, Field<unknown>>>>;

function picture(host: LubberElement, trueBearing: number, compassBearing: number, error: number, gyro: boolean): TemplateResult {
  return horizonRibbon(
    host,
    [
      { bearing: trueBearing, label: host.t('sight.mark.true'), kind: 'body', height: 1.2 },
      { bearing: compassBearing, label: host.t(gyro ? 'sight.mark.gyro' : 'sight.mark.compass'), kind: 'reading' },
    ],
    host.t('sight.mark.error'),
    host.t('azimuth.picture', { true: formatBearing(trueBearing), compass: formatBearing(compassBearing), error: spokenError(error, host.t) }),
    RIBBON_WIDTH[host.width.picture],
  );
}

/** How high the body stands and how fast its bearing moves. */
function rateText(host: LubberElement, { altitude, azimuthRate, doubt }: AzimuthSight): string {
  const tilt = doubt.items.find(({ code }) => code === 'tilt');
  return host.t('azimuth.rate', {
    altitude: formatAngle(altitude, 1),
    rate: formatAngle(Math.abs(azimuthRate), 2),
    tilt: formatAngle(tilt?.cause.value ?? 0, 1),
    effect: formatAngle(tilt?.effect ?? 0, 2),
  });
}

/** What stands below the answer of one bearing; the way into the record where the time of its day is told. */
export function sightExplanation(host: LubberElement, sight: AzimuthSight, compassBearing: number, states: States, onRecord: (() => void) | null): TemplateResult {
  const hand = () =>
    sight.handSteps.length > 0
      ? html`<h3>${host.t(`azimuth.hand.${sight.handForm}`)}</h3>
          ${stepsView(host, sight.handSteps, host.t(`azimuth.hand.${sight.handForm}`))}`
      : nothing;
  return html`${picture(host, sight.trueBearing, compassBearing, sight.error, sight.compass === 'gyro')}
    <p class="small soft">${rateText(host, sight)}</p>
    ${cautionsView(host, otherCautions(sight.cautions, isGrave))}
    <div class="after">${workingView(host, sight.steps, hand)} ${doubtView(host, sight.doubt, states)} ${recordButton(host, sight.cautions.some(isGrave), onRecord)}</div>
    ${standingCautions(host)}`;
}

/** What stands below the mean of a series. */
export function seriesExplanation(host: LubberElement, series: BearingSeries, states: States, onRecord: () => void): TemplateResult {
  return html`${seriesPicture(host, series)} ${cautionsView(host, otherCautions(series.cautions, isGrave))}
    <div class="after">${workingView(host, series.steps)} ${doubtView(host, series.doubt, states)} ${recordButton(host, series.cautions.some(isGrave), onRecord)}</div>
    ${standingCautions(host)}`;
}
