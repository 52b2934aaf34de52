import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatAngle, formatBearing, formatNumber } from '../../core/angle/format-angle.js';
import { bodiesForBearing } from '../../core/sight/bodies-for-bearing.js';
import type { BodyName } from '../../core/sky/body.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** More than a watch would choose from only hides the best. */
const SHOWN = 12;

/** The bodies fit for a bearing now, the best first, each to be taken by one press. */
export function bodiesView(
  host: LubberElement,
  place: { readonly latitude: number | undefined; readonly longitude: number | undefined; readonly instant: Date | null },
  chosen: BodyName | null,
  take: (body: BodyName) => void,
): TemplateResult {
  const { latitude, longitude, instant } = place;
  if (latitude === undefined || longitude === undefined || !instant) return html`<p class="small soft">${host.t('azimuth.now.needs')}</p>`;
  const { sunAltitude, bodies } = bodiesForBearing(latitude, longitude, instant);
  if (bodies.length === 0) return html`<p class="small soft">${host.t('azimuth.now.none')}</p>`;
  return html`<p class="small soft">${host.t('azimuth.now.sun', { altitude: formatAngle(sunAltitude, 1) })}</p>
    <div class="scroll" tabindex="0" role="region" aria-label=${host.t('azimuth.now')}>
      <table>
        <thead>
          <tr>
            <th scope="col">${host.t('azimuth.now.body')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.bearing')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.altitude')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.magnitude')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.rate')}</th>
            <th scope="col">${host.t('azimuth.now.why')}</th>
          </tr>
        </thead>
        <tbody>
          ${bodies.slice(0, SHOWN).map(
            (ranked) => html`<tr class=${ranked.body === chosen ? 'chosen' : ''}>
              <td>
                ${host.isLocked('body')
                  ? ranked.body
                  : html`<button
                      type="button"
                      class="plain"
                      aria-label=${host.t('azimuth.now.take', { body: ranked.body })}
                      aria-current=${ranked.body === chosen ? 'true' : nothing}
                      @click=${() => take(ranked.body)}
                    >
                      ${ranked.body}
                    </button>`}
              </td>
              <td class="figure">${formatBearing(ranked.azimuth)}</td>
              <td class="figure">${formatAngle(ranked.altitude, 1)}</td>
              <td class="figure">${formatNumber(ranked.magnitude, 1)}</td>
              <td class="figure">${formatAngle(Math.abs(ranked.azimuthRate), 2)}</td>
              <td>${ranked.reasons.map((reason) => host.t(`azimuth.reason.${reason}`)).join('; ')}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}
