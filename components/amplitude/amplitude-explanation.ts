import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { AmplitudeSight } from '../../core/sight/amplitude-result.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { doubtView } from '../shared/doubt-view.js';
import type { Field, StatesOf } from '../shared/field.js';
import { RIBBON_WIDTH, horizonRibbon } from '../shared/horizon-ribbon.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { otherCautions } from '../shared/reason.js';
import { recordButton } from '../shared/record-button.js';
import { stepsView, workingView } from '../shared/working-view.js';
import { handText, isGrave, pictureText, rateText } from './amplitude-answer.js';

/** What stands below the answer: picture, cautions, doubt, working, and the way into the record. */
export function explanationView(
  host: LubberElement,
  result: AmplitudeSight,
  compassBearing: number,
  body: string,
  states: StatesOf<Readonly<Record<string, Field<unknown>>>>,
  onRecord: () => void,
): TemplateResult {
  const hand = () =>
    result.handSteps.length > 0
      ? html`<h3>${host.t('amplitude.hand')}</h3>
          ${stepsView(host, result.handSteps, host.t('amplitude.hand'))} ${handText(host, result, result.latitude)}`
      : nothing;
  return html`${horizonRibbon(
      host,
      [
        { bearing: result.trueBearing, label: host.t('sight.mark.true'), kind: 'body', height: result.centreHeight },
        { bearing: compassBearing, label: host.t(`sight.mark.${result.compass === 'gyro' ? 'gyro' : 'compass'}`), kind: 'reading' },
      ],
      host.t('sight.mark.error'),
      pictureText(host, result, compassBearing, body),
      RIBBON_WIDTH[host.width.picture],
    )}
    <p class="small soft">${rateText(host, result)}</p>
    ${cautionsView(host, otherCautions(result.cautions, isGrave))}
    <div class="after">
      ${workingView(host, result.steps, hand)} ${doubtView(host, result.doubt, states)}
      ${recordButton(host, result.cautions.some(isGrave), onRecord)}
    </div>
    ${standingCautions(host)}`;
}
