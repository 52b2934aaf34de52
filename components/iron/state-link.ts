import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { BenchElement } from './bench-element.js';

/** The whole bench as a line of text, for a link or the `state` attribute of a course page. */
export function stateLink(bench: BenchElement): TemplateResult {
  const copy = async (event: Event): Promise<void> => {
    const line = (event.currentTarget as HTMLElement).parentElement?.querySelector('input');
    line?.select();
    try {
      await navigator.clipboard.writeText(bench.stateText);
      bench.say(bench.t('iron.link.copied'));
    } catch {
      // Pages of plain http and refusing browsers: the text is selected, the user's own keys copy it.
      bench.say(bench.t('iron.link.selected'));
    }
  };
  return html`<details class="no-print">
    <summary part="summary">${bench.t('iron.link')}</summary>
    <p class="small soft">${bench.t('iron.link.lead')}</p>
    <div class="field">
      <label for="state-text">${bench.t('iron.link.text')}</label>
      <div class="entry"><input part="input" id="state-text" type="text" dir="ltr" readonly .defaultValue=${bench.stateText} /></div>
    </div>
    <p class="row"><button part="button" type="button" @click=${copy}>${bench.t('iron.link.copy')}</button></p>
  </details>`;
}
