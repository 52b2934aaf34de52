import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatAngle, formatBearing } from '../../core/angle/format-angle.js';
import { tanDegrees } from '../../core/angle/trigonometry.js';
import type { AzimuthSight } from '../../core/sight/azimuth-sight.js';
import type { BearingSeries } from '../../core/sight/bearing-series.js';
import { usualDoubts } from '../../core/sight/sight-doubts.js';
import { cautionsView, inOwnWords, standingCautions } from '../shared/caution-view.js';
import { doubtView } from '../shared/doubt-view.js';
import { RIBBON_WIDTH, horizonRibbon } from '../shared/horizon-ribbon.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { recordButton } from '../shared/record-button.js';
import { spokenError } from '../shared/spoken.js';
import { stepsView, workingView } from '../shared/working-view.js';
import { seriesPicture } from './series-picture.js';

function picture(host: LubberElement, trueBearing: number, compassBearing: number, error: number, gyro: boolean): TemplateResult {
  return horizonRibbon(
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
function rateText(host: LubberElement, { altitude, azimuthRate }: AzimuthSight): string {
  return host.t('azimuth.rate', {
    altitude: formatAngle(altitude, 1),
    rate: formatAngle(Math.abs(azimuthRate), 2),
    tilt: formatAngle(usualDoubts.tilt, 1),
    effect: formatAngle(Math.min(90, Math.abs(usualDoubts.tilt * tanDegrees(altitude))), 2),
  });
}

/** What stands below the answer of one bearing. */
export function sightExplanation(host: LubberElement, sight: AzimuthSight, compassBearing: number, onRecord: () => void): TemplateResult {
  const hand =
    sight.handSteps.length > 0
      ? html`<h3>${host.t(`azimuth.hand.${sight.handForm}`)}</h3>
          ${stepsView(host, sight.handSteps, host.t(`azimuth.hand.${sight.handForm}`))}`
      : nothing;
  return html`${picture(host, sight.trueBearing, compassBearing, sight.error, sight.compass === 'gyro')}
    <p class="small soft">${rateText(host, sight)}</p>
    ${cautionsView(host, inOwnWords(sight.cautions, 'azimuth', ['longitude-turned']))}
    <div class="after">${workingView(host, sight.steps, hand)} ${doubtView(host, sight.doubt)} ${recordButton(host, onRecord)}</div>
    ${standingCautions(host)}`;
}

/** What stands below the mean of a series. */
export function seriesExplanation(host: LubberElement, series: BearingSeries, onRecord: () => void): TemplateResult {
  return html`${seriesPicture(host, series)} ${cautionsView(host, series.cautions)}
    <div class="after">${doubtView(host, series.doubt)} ${recordButton(host, onRecord)}</div>
    ${standingCautions(host)}`;
}
