import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { bodiesForBearing } from '../../core/sight/bodies-for-bearing.js';
import type { RankedBody } from '../../core/sight/bodies-for-bearing.js';
import type { BodyName } from '../../core/sky/body.js';
import { daylight } from '../../core/sky/daylight.js';
import { bodyName } from '../shared/body-name.js';
import { formatAngle, formatBearing, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** More than a watch would choose from only hides the best. */
const SHOWN = 12;

/** What speaks for a body or against it, in words and the two figures they come from. */
function whyText(host: LubberElement, { magnitude, azimuthRate, reasons }: RankedBody): string {
  return host.t('azimuth.now.why', {
    reasons: reasons.map((reason) => host.t(`azimuth.reason.${reason}`)).join(host.t('list.semicolon')),
    magnitude: formatNumber(magnitude, 1),
    rate: formatAngle(Math.abs(azimuthRate), 2),
  });
}

function take(host: LubberElement, body: BodyName, name: string): void {
  host.change('body', body);
  host.change('method', 'body');
  host.say(host.t('azimuth.now.taken', { body: name }));
}

function nameView(host: LubberElement, { body }: RankedBody, chosen: BodyName | null): TemplateResult {
  const name = bodyName(host, body);
  return html`<button part="button"
    type="button"
    class="plain"
    value=${body}
    aria-label=${host.t('azimuth.now.take', { body: name })}
    aria-current=${body === chosen ? 'true' : nothing}
    @click=${() => take(host, body, name)}
  >
    ${name}
  </button>`;
}

/** Where and when a body is looked for. */
interface Now {
  readonly place: { readonly latitude: number; readonly longitude: number } | null;
  readonly instant: Date | null;
}

function rankedView(host: LubberElement, { place, instant }: Now, chosen: BodyName | null): TemplateResult {
  if (!place || !instant) return html`<p class="small soft">${host.t('azimuth.now.needs')}</p>`;
  const { sunAltitude, bodies } = bodiesForBearing(place.latitude, place.longitude, instant);
  if (bodies.length === 0) return html`<p class="small soft">${host.t('azimuth.now.none')}</p>`;
  return html`<p class="small soft">${host.t('azimuth.now.sun', { altitude: formatAngle(sunAltitude, 1), light: host.t(`azimuth.light.${daylight(sunAltitude)}`) })}</p>
    <div class="scroll" role="group" aria-label=${host.t('azimuth.now')}>
      <table part="table" class="bodies">
        <thead>
          <tr>
            <th scope="col">${host.t('azimuth.now.body')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.bearing')}</th>
            <th scope="col" class="figure">${host.t('azimuth.now.altitude')}</th>
          </tr>
        </thead>
        <tbody>
          ${bodies.slice(0, SHOWN).map(
            (ranked) => html`<tr class=${ranked.body === chosen ? 'chosen' : ''}>
              <td>${nameView(host, ranked, chosen)} <small>${whyText(host, ranked)}</small></td>
              <td class="figure">${formatBearing(ranked.azimuth)}</td>
              <td class="figure">${formatAngle(ranked.altitude, 1)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

/**
 * To be called before the list is drawn anew, and what it gives back after: rows keep their places
 * while bodies change theirs, so the focus is led to its body's row, or to the head of the list
 * where the body is gone from it.
 */
export function followBody(root: ShadowRoot): () => void {
  const buttons = (): HTMLButtonElement[] => [...root.querySelectorAll<HTMLButtonElement>('.bodies button')];
  const body = buttons().find((button) => button === root.activeElement)?.value;
  return () => {
    if (body) (buttons().find(({ value }) => value === body) ?? root.querySelector<HTMLElement>('[part=bodies] summary'))?.focus({ preventScroll: true });
  };
}

/** Behind a summary: the bodies fit for a bearing now, the best first, each to be taken by one press. */
export function bodiesView(host: LubberElement, now: Now, chosen: BodyName | null): TemplateResult {
  return html`<details class="no-print" part="bodies">
    <summary part="summary">${host.t('azimuth.now')}</summary>
    ${rankedView(host, now, chosen)}
  </details>`;
}
