import { writeDecimalsWith } from './figures.js';

/**
 * To be called before figures are written outside an update, in answer to a key or late: a widget
 * of another language may have drawn itself since, and left its decimal mark.
 */
export function inOwnFigures({ t }: { readonly t: (key: string) => string }): void {
  writeDecimalsWith(t('figures.decimal'));
}
