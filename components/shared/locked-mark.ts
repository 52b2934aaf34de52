import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** Behind the label of what the page has fixed; a form that is disabled as a whole says so itself. */
export function lockedMark(host: LubberElement, name: string): TemplateResult | typeof nothing {
  return host.isLocked(name) && !host.isDisabled ? html` <span>(${host.t('field.locked')})</span>` : nothing;
}
