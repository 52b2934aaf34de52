import type { Translate } from './catalogue.js';

/** What is said in one breath, as the page's language sets sentences one behind the other: Chinese leaves no space between them. */
export const sentences = (t: Translate, ...said: readonly string[]): string => said.filter(Boolean).join(t('list.gap'));
