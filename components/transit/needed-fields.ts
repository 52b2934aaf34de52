import { headAndSplitNames } from '../shared/compass-view.js';
import { fieldNames } from '../shared/field-names.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { FieldName } from '../shared/missing-view.js';
import { partLabel } from './line-view.js';
import type { LineShown } from './line-view.js';
import { partsOf } from './mark-texts.js';
import type { TransitStates } from './transit-fields.js';

function namesOfLine(host: LubberElement, line: LineShown): FieldName[] {
  const { kind, gyro, several, index } = line;
  return partsOf[kind].map((part) => {
    const label = partLabel(host, part, kind, gyro);
    return { state: line.state(part), label: several ? host.t('transit.named', { label, number: index + 1 }) : label, needed: true };
  });
}

/** The fields of the lines, and of the ship, as they stand one below the other; her place is needed only for a bearing of one mark from her. */
export function neededFields(host: LubberElement, lines: readonly LineShown[], states: TransitStates, gyro: boolean): FieldName[] {
  const place = lines.some(({ kind }) => kind === 'one-mark');
  return [
    ...lines.flatMap((line) => namesOfLine(host, line)),
    ...headAndSplitNames(host, gyro, states),
    ...fieldNames(host, states, { latitude: place, longitude: place, date: false, time: false }),
  ];
}
