import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { actionButton } from '../shared/action-button.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { isWhenLocked, takeInstant } from '../shared/place-and-time.js';
import { nextEvent } from './next-event.js';
import type { NextEventQuestion } from './next-event.js';

type Question = Omit<NextEventQuestion, 'event'>;

/** The way to the next rising or setting, and what was found there, as long as it is still what is asked. */
export class NextEventButtons {
  readonly #host: LubberElement;
  readonly #asked: () => Question;
  #found = { said: '', asked: '' };

  /** `asked` is what the fields ask at the moment. */
  constructor(host: LubberElement, asked: () => Question) {
    this.#host = host;
    this.#asked = asked;
  }

  #press(event: NextEventQuestion['event']): void {
    const { said, instant } = nextEvent(this.#host.t, { ...this.#asked(), event });
    this.#host.say(said);
    if (instant) takeInstant(this.#host, instant);
    this.#found = { said, asked: JSON.stringify(this.#asked()) };
  }

  /** The buttons, unless the host has fixed when. */
  view(): TemplateResult | typeof nothing {
    const host = this.#host;
    if (isWhenLocked(host)) return nothing;
    const { said, asked } = this.#found;
    return html`<div class="row field no-print">
      ${(['rising', 'setting'] as const).map((event) => actionButton(host.t(`amplitude.next.${event}`), () => this.#press(event)))}
      ${said && asked === JSON.stringify(this.#asked()) ? html`<p class="hint" aria-hidden="true">${said}</p>` : nothing}
    </div>`;
  }
}
