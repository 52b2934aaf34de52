import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Swing } from '../../core/swing/swing.js';
import { formatAngle, formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { missingView } from '../shared/missing-view.js';
import { spokenError } from '../shared/spoken.js';
import { settingLabel } from './setting-label.js';
import { markFieldNames } from './swing-fields.js';
import type { SwingFieldName } from './swing-fields.js';
import type { SwingState } from './swing-state.js';
import type { WorkedSwing } from './worked-swing.js';

const optional: readonly SwingFieldName[] = ['circleRadius', 'circleDistance', 'gyroError', 'shoreError', 'constant'];

/** Which settings still stand in the way. */
function waiting(host: LubberElement, state: SwingState, worked: WorkedSwing): TemplateResult | typeof nothing {
  if (state.used.length === 0 && !state.unknown) return nothing;
  const reasons = new Set(worked.swung.flatMap((row) => (row && !row.ok ? [row.reason] : [])));
  const needed: Partial<Record<SwingFieldName, boolean>> = {
    objectBearing: reasons.has('no-object'),
    transitBearing: reasons.has('no-transit'),
    ...Object.fromEntries(markFieldNames.map((name) => [name, reasons.has('no-transit')])),
    latitude: reasons.has('no-place'),
    longitude: reasons.has('no-place'),
    date: worked.read.some((read) => read.state === 'refused' && read.refusal === 'date-missing'),
    variation: reasons.has('no-variation'),
    gyroError: reasons.has('gyro-error-needed'),
  };
  return missingView(
    host,
    state.used.map((name) => ({ state: state.fields[name], label: settingLabel(host, name), needed: needed[name] === true || (worked.rows.length === 0 && name === 'objectBearing' && !optional.includes(name)) })),
  );
}

/** The steering compass in one line below the standard. */
function steeringLine(host: LubberElement, state: SwingState, steering: Swing | null): TemplateResult | typeof nothing {
  if (!steering?.check) return nothing;
  const { largest, withinLimit } = steering.check;
  const text = host.t('swing.steering.largest', { deviation: formatError(largest.deviation), heading: formatBearing(largest.heading, 0) });
  const verdict = host.t(withinLimit ? 'swing.within' : 'swing.beyond', { limit: formatAngle(state.limit.largest, 0) });
  return html`<p class=${withinLimit ? 'soft' : 'beyond'} id="steering-answer">${text} ${verdict}</p>`;
}

/** The largest deviation of the card against the limit; or what is still to be done. */
export function answerView(host: LubberElement, state: SwingState, worked: WorkedSwing): TemplateResult {
  const { result } = worked;
  const taken = worked.swung.filter((row) => row?.ok && !row.struck).length;
  const count = html`<p class="soft">${host.t('swing.count', { count: taken, planned: state.headings })}</p>`;
  if (!result?.check) {
    return html`${taken > 0 ? count : nothing} ${waiting(host, state, worked)}
      ${taken === 0 ? html`<p class="waiting">${host.t('swing.start')}</p>` : html`<p class="waiting">${host.t(result?.constantLost ? 'swing.noCard.constant' : 'swing.noCard')}</p>`}`;
  }
  if (host.answer !== 'shown') return count;
  const { largest, withinLimit } = result.check;
  const words = host.t('swing.largest', { heading: formatBearing(largest.heading, 0) });
  return html`<p class="answer" part="answer">
      <span class="spoken">${spokenError(largest.deviation, host.t)}, ${words}</span>
      <span aria-hidden="true"><bdi dir="ltr">${formatError(largest.deviation)}</bdi><small>${words}</small></span>
    </p>
    <p class="after ${withinLimit ? 'soft' : 'beyond'}">${host.t(withinLimit ? 'swing.within' : 'swing.beyond', { limit: formatAngle(state.limit.largest, 0) })}</p>
    ${steeringLine(host, state, result.steering)} ${count} ${waiting(host, state, worked)}`;
}

/** The scatter of the readings about the curve, in one sentence. */
export function scatterText(host: LubberElement, { fit, commonDoubt }: Swing): string {
  const scatter = fit.scatter === null ? host.t('swing.scatter.none') : host.t('swing.scatter', { scatter: formatAngle(fit.scatter, 2), freedom: fit.degreesOfFreedom });
  return commonDoubt > 0 ? `${scatter} ${host.t('swing.common', { doubt: formatAngle(commonDoubt, 2) })}` : scatter;
}
