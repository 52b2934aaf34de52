import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { compassKinds } from '../../core/sight/compass-kind.js';
import { cardDeviationOn } from './card-deviation.js';
import { choiceView } from './choice-view.js';
import { valueOf } from './field.js';
import type { FieldState } from './field.js';
import { fieldNames } from './field-names.js';
import { fieldView } from './field-view.js';
import { formatError } from './figures.js';
import type { LubberElement } from './lubber-element.js';
import type { FieldName } from './missing-view.js';
import { bearingField, errorField } from './trade-fields.js';

/** Which compass the bearing was read from. */
export function compassChoice(host: LubberElement, gyro: boolean): TemplateResult {
  return choiceView(
    host,
    'compass',
    host.t('sight.compass'),
    gyro ? 'gyro' : 'magnetic',
    compassKinds.map((value) => ({ value, label: host.t(`sight.compass.${value}`) })),
  );
}

interface HeadAndSplit {
  readonly heading: FieldState<number>;
  readonly variation: FieldState<number>;
  readonly cardDeviation: FieldState<number>;
}

const headingLabel = (host: LubberElement, gyro: boolean): string => host.t(gyro ? 'sight.heading.gyro' : 'sight.heading');

/** Ship's head, and for a magnetic compass what splits its error: variation and the card's deviation. */
export function headAndSplitView(host: LubberElement, gyro: boolean, state: HeadAndSplit): (TemplateResult | typeof nothing)[] {
  const byShip = cardDeviationOn(host.ship, valueOf(state.heading));
  return [
    fieldView(host, 'heading', bearingField(gyro ? 'G' : 'C'), state.heading, { label: headingLabel(host, gyro) }),
    gyro
      ? nothing
      : html`<div class="pair long">
          ${fieldView(host, 'variation', errorField, state.variation, { label: host.t('sight.variation'), placeholder: host.t('sight.variation.model') })}
          ${fieldView(host, 'cardDeviation', errorField, state.cardDeviation, {
            label: host.t('sight.cardDeviation'),
            placeholder: byShip === undefined ? host.t('sight.cardDeviation.none') : formatError(byShip),
          })}
        </div>`,
  ];
}

/** The same fields by their names; none of them is needed for an error. */
export function headAndSplitNames(host: LubberElement, gyro: boolean, state: HeadAndSplit): FieldName[] {
  const heading = { state: state.heading, label: headingLabel(host, gyro), needed: false };
  return [heading, ...(gyro ? [] : fieldNames(host, state, { variation: false, cardDeviation: false }))];
}
