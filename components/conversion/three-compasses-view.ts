import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { ThreeCompasses } from '../../core/sight/three-compasses.js';
import { threeCompasses } from '../../core/sight/three-compasses.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { Ship } from '../shared/ship-context.js';
import { stepsView } from '../shared/working-view.js';
import { conversionFields } from './conversion-fields.js';

export interface LookStates {
  readonly lookGyro: FieldState<number>;
  readonly lookStandard: FieldState<number>;
  readonly lookSteering: FieldState<number>;
  readonly gyroError: FieldState<number>;
  readonly variation: FieldState<number>;
  /** Of the ship's place and time, for where none is typed. */
  readonly modelVariation: Ship['modelVariation'] | undefined;
}

/** The variation typed, else that of the ship's place; undefined where neither is known or what is typed is not understood. */
export function variationInUse({ variation, modelVariation }: Pick<LookStates, 'variation' | 'modelVariation'>): number | undefined {
  return variation.state === 'empty' ? modelVariation?.value : valueOf(variation);
}

/** One look at three compasses; null while gyro, gyro error or variation is missing, or no magnetic compass was read. */
function lookOf(states: LookStates): ThreeCompasses | null {
  const [gyro, gyroError, variation] = [valueOf(states.lookGyro), valueOf(states.gyroError), variationInUse(states)];
  const [standard, steering] = [valueOf(states.lookStandard), valueOf(states.lookSteering)];
  if (gyro === undefined || gyroError === undefined || variation === undefined || (standard === undefined && steering === undefined)) return null;
  return threeCompasses({ gyro, gyroError, variation, standard, steering });
}

function table(host: LubberElement, look: ThreeCompasses): TemplateResult {
  const rows = (['standard', 'steering'] as const).flatMap((name) => (look[name] ? [{ name, found: look[name] }] : []));
  return html`<p>${host.t('conversion.look.heads', { true: formatBearing(look.trueHead), magnetic: formatBearing(look.magneticHead) })}</p>
    <div class="scroll" role="group" aria-label=${host.t('conversion.look')}>
      <table part="table">
        <thead>
          <tr>
            <th scope="col">${host.t('conversion.look.compass')}</th>
            <th scope="col" class="figure">${host.t('conversion.look.error')}</th>
            <th scope="col" class="figure">${host.t('conversion.deviation')}</th>
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ({ name, found }) => html`<tr>
              <th scope="row">${host.t(`conversion.look.${name}`)}</th>
              <td class="figure"><bdi dir="ltr">${formatError(found.error)}</bdi></td>
              <td class="figure"><bdi dir="ltr">${formatError(found.deviation)}</bdi></td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${host.working === 'none' ? nothing : stepsView(host, look.steps, `${host.t('conversion.look')}: ${host.t('working')}`)}`;
}

/** Gyro, standard and steering compass read at one moment: the error and deviation of each. */
export function threeCompassesView(host: LubberElement, states: LookStates): TemplateResult {
  const look = lookOf(states);
  return html`<details class="part" part="look">
    <summary part="summary">${host.t('conversion.look')}</summary>
    <p class="hint">${host.t('conversion.look.what')}</p>
    <div class="look">
      ${(['lookGyro', 'lookStandard', 'lookSteering'] as const).map((name) =>
        fieldView(host, name, conversionFields[name], states[name], { label: host.t(`conversion.${name}`) }),
      )}
    </div>
    <div>${look ? (host.answer === 'shown' ? table(host, look) : nothing) : html`<p class="hint">${host.t('conversion.look.needs')}</p>`}</div>
  </details>`;
}
