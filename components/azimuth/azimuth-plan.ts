import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { AzimuthBearing } from '../../core/sight/azimuth-bearing.js';
import { altitudeCautions } from '../../core/sight/azimuth-cautions.js';
import { usualDoubts } from '../../core/sight/sight-doubts.js';
import { cautionsView } from '../shared/caution-view.js';
import { formatAngle } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { plannedBearing } from '../shared/planned-bearing.js';

/** Before a bearing is entered: where the body is, and whether it stands well for one. */
export function planView(host: LubberElement, bearing: AzimuthBearing, tilt = usualDoubts.tilt): TemplateResult {
  return html`${plannedBearing(host, bearing.trueBearing)}
    <p class="soft">${host.t('azimuth.plan', { altitude: formatAngle(bearing.altitude, 1) })}</p>
    ${cautionsView(host, altitudeCautions({ ...bearing, tilt }))}`;
}
