import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { bodySelect } from '../shared/body-select.js';
import { choiceView } from '../shared/choice-view.js';
import { compassChoice, headAndSplitView } from '../shared/compass-view.js';
import { valueOf } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { bearingField } from '../shared/trade-fields.js';
import { amplitudeFields, moments } from './amplitude-fields.js';
import type { AmplitudeStates } from './amplitude-fields.js';
import { momentRule } from './moment-rule.js';

/** What the fields show besides what was typed into them. */
export interface Entered {
  readonly states: AmplitudeStates;
  readonly body: BodyName;
  readonly bodyInWords: string;
  readonly moment: HorizonMoment;
  readonly gyro: boolean;
  /** Whether body and moment are understood. */
  readonly understood: boolean;
}

/** What is read at every sight stands first and near the answer; moment and height of eye seldom change. `next` is the way to the next rising. */
export function fieldsView(host: LubberElement, entered: Entered, next: TemplateResult | typeof nothing): TemplateResult {
  const { states, body, moment, gyro } = entered;
  return html`<div class="fields">
    ${bodySelect(host, body)} ${placeView(host, states, amplitudeFields)} ${whenView(host, states, amplitudeFields)} ${next} ${compassChoice(host, gyro)}
    ${fieldView(host, 'bearing', bearingField(gyro ? 'G' : 'C'), states.bearing, { label: bearingLabel(host, entered) })}
    ${headAndSplitView(host, gyro, states)}
    ${choiceView(
      host,
      'moment',
      host.t('amplitude.moment'),
      moment,
      moments.map((value) => ({ value, label: host.t(`amplitude.moment.${value}`) })),
    )}
    ${entered.understood ? momentRule(host, body, moment, valueOf(states.heightOfEye)) : nothing}
    ${fieldView(host, 'heightOfEye', amplitudeFields.heightOfEye, states.heightOfEye, { label: host.t('sight.heightOfEye') })}
  </div>`;
}

/** What the field of the bearing is called. */
export function bearingLabel(host: LubberElement, { gyro, bodyInWords }: Entered): string {
  return host.t(gyro ? 'sight.bearing.gyro' : 'sight.bearing', { body: bodyInWords });
}
