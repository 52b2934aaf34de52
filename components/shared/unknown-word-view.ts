import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** Beside a choice: that what was set is none of its words. */
export function unknownWordView(host: LubberElement, name: string): TemplateResult {
  const word = host.unknownWord(name);
  return html`<p class="problem" id="${name}-problem" ?hidden=${!word}>${word && `${word}: ${host.t('refusal.unknown-name')}`}</p>`;
}
