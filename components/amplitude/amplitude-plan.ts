import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatAmplitude } from '../../core/angle/quadrantal.js';
import type { AmplitudeObservation } from '../../core/sight/amplitude-observation.js';
import type { AmplitudeBearing } from '../../core/sight/amplitude-result.js';
import { isFarFromMoment } from '../../core/sight/far-from-moment.js';
import { lightCautions } from '../../core/sight/light-cautions.js';
import { warning } from '../../core/working/caution.js';
import { quantity } from '../../core/working/quantity.js';
import { cautionsView } from '../shared/caution-view.js';
import { decimalMark, formatBearing } from '../shared/figures.js';
import { instantText } from '../shared/instant-text.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { isWhenLocked, takeInstant } from '../shared/place-and-time.js';
import { plannedBearing } from '../shared/planned-bearing.js';
import { expectedBearingText } from './expected-bearing.js';
import { nearestEvent } from './next-event.js';

/** What is planned: the body looked for, where it will be, and what is known of the compass there. */
interface Plan {
  readonly seen: Omit<AmplitudeObservation, 'compassBearing' | 'compass'>;
  readonly bearing: AmplitudeBearing;
  /** The body at the head of a sentence. */
  readonly body: string;
  readonly known: Pick<AmplitudeObservation, 'compass' | 'variation' | 'cardDeviation'>;
}

/** The time of the plan is taken over; the button has gone with it, so the focus stays at the time. */
function take(host: LubberElement, instant: Date, said: string): void {
  takeInstant(host, instant);
  host.say(said);
  host.renderRoot.querySelector<HTMLElement>('#time')?.focus();
}

/** At a time far from rising or setting nobody should go out: when it is, and the way to take that over. Nor for what no eye finds in the light of that time. */
function timeView(host: LubberElement, { seen, bearing, body }: Plan): TemplateResult | typeof nothing {
  if (!isFarFromMoment(bearing)) return cautionsView(host, lightCautions(seen.body, seen, 'on-horizon'));
  const { side } = bearing;
  const instant = nearestEvent({ ...seen, event: side }, seen.instant);
  const said = instant ? host.t(`amplitude.next.found.${side}`, { body, instant: instantText(instant) }) : '';
  return html`${cautionsView(host, [warning('far-from-moment', { altitude: quantity(bearing.altitudeByTime, 'angle') })])}
  ${instant
    ? html`<p class="row">
        <span>${said}</span>
        ${isWhenLocked(host) ? nothing : html`<button part="button" type="button" @click=${() => take(host, instant, said)}>${host.t('amplitude.plan.take')}</button>`}
      </p>`
    : nothing}`;
}

/** Before a bearing is entered: where the body will be, and whether it will be there at this time. */
export function planView(host: LubberElement, plan: Plan): TemplateResult {
  const { seen, bearing, body, known } = plan;
  return html`${plannedBearing(host, bearing.trueBearing)}
    <p class="soft">
      ${host.t('amplitude.plan', {
        body,
        side: host.t(`amplitude.side.${bearing.side}`),
        bearing: formatBearing(bearing.trueBearing),
        amplitude: formatAmplitude(bearing.amplitude, bearing.side, 1, decimalMark()),
      })}
      ${expectedBearingText(host, seen, bearing.trueBearing, known)}
    </p>
    ${timeView(host, plan)}`;
}
