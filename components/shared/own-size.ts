import { CSSResult, unsafeCSS } from 'lit';
import type { CSSResultOrNative } from 'lit';

const made = new WeakMap<CSSResult, CSSResult>();

/** A length in `rem`; or what is left alone: a rule's conditions, whose `rem` no page can change, and the own size itself. */
const lengths = /@[^{]*\{|--rem:[^;]*;|(-?\d*\.?\d+)rem\b/g;

/**
 * Measures a style by the widgets' own `--rem` in place of the size of the page's root, which
 * many a page makes 10 pixels small for its own reckoning. Shared styles stay shared.
 */
export function inOwnSize(style: CSSResultOrNative): CSSResultOrNative {
  if (!(style instanceof CSSResult)) return style;
  const own = made.get(style) ?? unsafeCSS(style.cssText.replace(lengths, (all, number?: string) => (number === undefined ? all : `calc(${number} * var(--rem))`)));
  made.set(style, own);
  return own;
}
