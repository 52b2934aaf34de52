import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { compassChoice, headAndSplitView } from '../shared/compass-view.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { bearingField } from '../shared/trade-fields.js';
import { azimuthFields } from './azimuth-fields.js';
import type { AzimuthStates } from './azimuth-fields.js';
import type { Placing } from './placing.js';
import { placingView } from './placing-view.js';
import type { LineProblem } from './series-text.js';
import { seriesField } from './series-view.js';

/** What the fields show besides what was typed into them. */
interface Entered {
  readonly states: AzimuthStates;
  readonly placing: Placing;
  readonly gyro: boolean;
  readonly series: string;
  readonly problems: readonly LineProblem[];
}

/** What the field of the bearing is called. */
export function bearingLabel(host: LubberElement, gyro: boolean): string {
  return host.t(gyro ? 'azimuth.bearing.gyro' : 'azimuth.bearing');
}

/** What places the body, where and when, what the compass showed; a series behind a summary. */
export function fieldsView(host: LubberElement, { states, placing, gyro, series, problems }: Entered): TemplateResult {
  return html`<div class="fields">
    ${placingView(host, placing)} ${placeView(host, states, azimuthFields)} ${whenView(host, states, azimuthFields)} ${compassChoice(host, gyro)}
    ${fieldView(host, 'bearing', bearingField(gyro ? 'G' : 'C'), states.bearing, { label: bearingLabel(host, gyro) })}
    ${headAndSplitView(host, gyro, states)}
    <details ?open=${series.trim() !== ''}>
      <summary part="summary">${host.t('azimuth.series')}</summary>
      ${seriesField(host, series, problems)}
    </details>
  </div>`;
}
