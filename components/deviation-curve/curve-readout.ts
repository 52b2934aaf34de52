import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { CurveState } from './curve-result.js';

/** The magnetic heading of a compass heading and the way back, by the first curve. */
function backText(host: LubberElement, { curves }: CurveState, heading: number): string {
  const found = curves[0]?.curve.toCompass(heading);
  if (!found) return '';
  const values = { heading: formatBearing(heading, 0) };
  if (found.determined) return host.t('curve.readout.back', { ...values, compass: formatBearing(found.heading) });
  return found.headings.length === 0 ? '' : host.t('curve.readout.back.many', { ...values, compass: found.headings.map((one) => formatBearing(one)).join(host.t('list.comma')) });
}

/** What the curves say on the heading under the cursor, politely spoken when it moves. */
export function readoutView(host: LubberElement, state: CurveState, heading: number): TemplateResult {
  const [first, ...rest] = state.curves;
  const deviation = first?.at(heading) ?? null;
  const magnetic = first?.curve.toMagnetic(heading) ?? null;
  const text =
    deviation === null || magnetic === null
      ? host.t('curve.readout.none', { heading: formatBearing(heading, 0) })
      : host.t('curve.readout', { heading: formatBearing(heading, 0), deviation: formatError(deviation), magnetic: formatBearing(magnetic) });
  const back = backText(host, state, heading);
  const gap = host.t('list.gap');
  return html`<output for="cursor" class="readout" aria-live="polite">
    ${text}${rest.map((curve) => {
      const other = curve.at(heading);
      return other === null ? nothing : html`${gap}<span class="soft">${host.t('curve.readout.other', { name: curve.name, deviation: formatError(other) })}</span>`;
    })}${back && gap + back}
  </output>`;
}
