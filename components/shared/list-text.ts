import type { Translate } from './catalogue.js';

/** Things told one after the other as the page's language strings them: `A, B and C`. */
export function listText(t: Translate, parts: readonly string[]): string {
  const [last, ...before] = [...parts].reverse();
  if (last === undefined) return '';
  return before.length === 0 ? last : `${before.reverse().join(t('list.comma'))}${t('list.last')}${last}`;
}
