import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { horizonMoment } from '../../core/sight/horizon-moment.js';
import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

const RADIUS = 12;
const HORIZON = 44;

/** The disc against the horizon as it looks at the moment chosen, to scale for the height of eye. */
function disc(centre: number, summary: string): TemplateResult {
  const y = HORIZON - centre * 2 * RADIUS;
  return html`<svg part="picture" viewBox="0 0 120 70" role="img" aria-label=${summary} class="moment">
    <clipPath id="above"><rect x="0" y="0" width="120" height=${HORIZON}></rect></clipPath>
    <circle cx="60" cy=${y} r=${RADIUS} fill="none" stroke="var(--body)" stroke-width="1" stroke-dasharray="2 2"></circle>
    <circle cx="60" cy=${y} r=${RADIUS} fill="none" stroke="var(--body)" stroke-width="2" clip-path="url(#above)"></circle>
    <circle cx="60" cy=${y} r="1.5" fill="var(--body)"></circle>
    <line x1="4" x2="116" y1=${HORIZON} y2=${HORIZON} stroke="var(--ink)" stroke-width="1.4"></line>
  </svg>`;
}

/** The moment chosen, drawn, and for the celestial horizon the rule by which it is known at sea. */
export function momentRule(host: LubberElement, body: BodyName, moment: HorizonMoment, heightOfEye: number | undefined): TemplateResult | typeof nothing {
  if (heightOfEye === undefined) return nothing;
  const { centre, lowerLimb, upperLimb } = horizonMoment(body, moment, heightOfEye);
  const rule =
    moment !== 'celestial'
      ? host.t(`amplitude.moment.${moment}`)
      : body === 'Sun'
        ? host.t('amplitude.rule.Sun', { fraction: formatNumber(lowerLimb, 2) })
        : body === 'Moon'
          ? host.t(`amplitude.rule.Moon.${upperLimb >= 0 ? 'above' : 'below'}`, { fraction: formatNumber(Math.abs(upperLimb), 2) })
          : host.t('amplitude.rule.other', { fraction: formatNumber(centre, 2) });
  return html`<div class="moment-rule">${disc(centre, rule)}${moment === 'celestial' ? html`<p class="hint">${rule}</p>` : nothing}</div>`;
}
