import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { AmplitudeBearing, AmplitudeSight } from '../../core/sight/amplitude-result.js';
import { formatAngle, formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { IsGrave } from '../shared/reason.js';
import { spokenError } from '../shared/spoken.js';
import { atHead } from './sentence-head.js';

/** Whether under a caution the error found is worth nothing. By day nothing but Sun and Moon is found on the horizon. */
export const isGrave: IsGrave = ({ code }) => /^(not-at|time-by|other|lost)|itude-turned/.test(code);

/** How fast the bearing moves: what a minute or a tenth of a degree of altitude would matter. */
export function rateText(host: LubberElement, bearing: AmplitudeBearing): string {
  return host.t('amplitude.rate', {
    perMinute: formatAngle(bearing.perMinute, 2),
    perTenth: formatAngle(bearing.perTenthOfAltitude, 2),
  });
}

/** The picture in words. */
export function pictureText(host: LubberElement, result: AmplitudeSight, compassBearing: number, body: string): string {
  return host.t('amplitude.picture', {
    body: atHead(body),
    side: host.t(`amplitude.side.${result.side}`),
    true: formatBearing(result.trueBearing),
    compass: formatBearing(compassBearing),
    error: spokenError(result.error, host.t),
  });
}

/** The correction of the hand tables in words, and which way an observed amplitude is moved by it. */
export function handText(host: LubberElement, result: AmplitudeSight, latitude: number): TemplateResult | typeof nothing {
  // On the equator no pole is elevated, and there is nothing to correct.
  if (result.celestialAmplitude === null || latitude === 0) return nothing;
  const correction = result.celestialAmplitude - result.amplitude;
  // The observed amplitude plus this correction is the celestial one; north is towards the pole of a northern observer.
  const towards = correction * latitude > 0;
  return html`<p class="small soft">
    ${host.t(towards ? 'amplitude.hand.towards' : 'amplitude.hand.away', { size: formatError(Math.abs(correction), 2).replace(/ [EW]$/, '') })}
  </p>`;
}
