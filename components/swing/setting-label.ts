import type { LubberElement } from '../shared/lubber-element.js';
import { markFieldNames } from './swing-fields.js';
import type { SwingFieldName } from './swing-fields.js';

/** What a setting is called; the marks of a transit are called as for a transit. */
export function settingLabel(host: LubberElement, name: SwingFieldName): string {
  return host.t(`${markFieldNames.some((mark) => mark === name) ? 'transit' : 'swing'}.${name}`);
}
