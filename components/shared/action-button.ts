import { html } from 'lit';
import type { TemplateResult } from 'lit';

/** A button that says what it does. */
export const actionButton = (words: string, onClick: () => void): TemplateResult => html`<button part="button" type="button" @click=${onClick}>${words}</button>`;
