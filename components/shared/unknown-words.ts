import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { isUnset } from './field.js';
import type { FieldInput } from './field.js';
import type { LubberElement } from './lubber-element.js';

/** The words a choice takes, or a test of one. */
export type Choice = readonly string[] | ((word: string) => boolean);

/** What stands in a choice and is none of its words; empty where all is well. */
export function unknownWord(choice: Choice | undefined, input: FieldInput): string {
  if (!choice || isUnset(input)) return '';
  const word = String(input).trim();
  return word === '' || (typeof choice === 'function' ? choice(word) : choice.includes(word)) ? '' : word;
}

/** Beside a choice: that what was set is none of its words. */
export function unknownWordView(host: LubberElement, name: string): TemplateResult {
  const word = host.unknownWord(name);
  return html`<p class="problem" id="${name}-problem" ?hidden=${!word}>${word && `${word}: ${host.t('refusal.unknown-name')}`}</p>`;
}
