import type { Quantity } from './quantity.js';

/**
 * Something the user should know about a result, by code; the words belong to the view.
 * A `warning` says the result may be wrong or unfit for use, a `note` that it needs thought.
 */
export interface Caution {
  readonly code: string;
  readonly level: 'note' | 'warning';
  readonly values: Readonly<Record<string, Quantity | string>>;
}

export function note(code: string, values: Caution['values'] = {}): Caution {
  return { code, level: 'note', values };
}

export function warning(code: string, values: Caution['values'] = {}): Caution {
  return { code, level: 'warning', values };
}
