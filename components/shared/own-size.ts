import type { CSSResult, CSSResultOrNative } from 'lit';

/**
 * Measures a style by the widgets' own `--rem` in place of the size of the page's root, which
 * many a page makes 10 pixels small for its own reckoning. A second time it finds nothing to do.
 */
export function inOwnSize(style: CSSResultOrNative): void {
  const { cssText } = style as CSSResult;
  Object.assign(style, { cssText: cssText.replace(/(-?[\d.]+)rem/g, 'calc($1 * var(--rem))') });
}
