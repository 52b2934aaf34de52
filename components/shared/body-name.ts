import type { LubberElement } from './lubber-element.js';

/**
 * A body's name in the page's language, as it stands in a list. Sun, Moon and planets have
 * one in every language; the stars keep those of the almanac, and so does what is no body.
 */
export function bodyName(host: LubberElement, body: string): string {
  const key = `body.name.${body}`;
  const text = host.t(key);
  return text === key ? body : text;
}

/** A body as it stands in a sentence: `the Sun`. */
export function bodyInWords(host: LubberElement, body: string): string {
  const key = `body.${body}`;
  const text = host.t(key);
  return text === key ? bodyName(host, body) : text;
}
