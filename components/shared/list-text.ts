import type { Translate } from './catalogue.js';

/** Things told one after the other as the page's language strings them: `A, B and C`. */
export function listText(t: Translate, parts: readonly string[]): string {
  const before = [...parts];
  const last = before.pop() ?? '';
  return before.length > 0 ? before.join(t('list.comma')) + t('list.last') + last : last;
}
