import { textsOf } from './catalogue-text.js';
import type { Catalogue } from './catalogue-text.js';

/**
 * The words of the widgets. Each widget brings its English catalogue; a translation is one
 * more catalogue with the same keys, added once for all widgets.
 */
export type { Catalogue };

export type Values = Readonly<Record<string, string | number>>;

/** The text of a key in the page's language, as a widget's `t` gives it. */
export type Translate = (key: string, values?: Values) => string;

interface PageWords {
  readonly catalogues: Map<string, Catalogue>;
  readonly listeners: Set<() => void>;
}

// The one state that all widgets of a page share: a language is added for the page, not for a
// widget, and a language's script and the widgets' are two bundles with a copy of this file each.
const place = Symbol.for('lubberline.words');
const page = globalThis as { [place]?: PageWords };
const { catalogues, listeners } = (page[place] ??= { catalogues: new Map(), listeners: new Set() });

/** Languages whose usual script runs from right to left. */
const fromRight = /^(ar|ckb|dv|fa|he|ks|ps|sd|ug|ur|yi)$/;

/** In a text read from right to left every value runs by its own first letter (Unicode Annex 9, first strong isolate): 3.4° E stays 3.4° E. */
function isolated(catalogue: Catalogue): Catalogue {
  return Object.fromEntries(Object.entries(catalogue).map(([key, text]) => [key, text.replace(/\{\w+\}/g, '\u2068$&\u2069')]));
}

/**
 * Adds a language, by its primary subtag, such as `es`; widgets that stand already take it up. A
 * key it lacks is shown in English. Arabic, Persian, Hebrew, Urdu and the like are laid out from
 * right to left; any other language is where its catalogue says `direction: 'rtl'`.
 */
export function addTranslation(language: string, catalogue: Catalogue): void {
  const before = catalogues.get(language);
  const { direction = before?.['direction'] ?? (fromRight.test(language) ? 'rtl' : 'ltr') } = catalogue;
  catalogues.set(language, { ...before, ...(direction === 'rtl' ? isolated(catalogue) : catalogue), direction });
  for (const listener of listeners) listener();
}

/** Calls whenever a language is added; returns how to stop that. */
export function onTranslation(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Remembered, since every text asks for it. */
const primaries: Record<string, string> = {};
const primaryOf = (language: string): string => (primaries[language] ??= language.toLowerCase().split('-')[0] ?? 'en');

/** The language the widgets speak on a page of a language: that one, or English where it has not been added. */
export function shownLanguage(language: string): string {
  return primaryOf(language) === 'en' || catalogues.has(primaryOf(language)) ? language : 'en';
}

const places = /\{(\w+)\}/g;

/** The spaces between ± and its figure, between what is counted and its count, and between a figure and its letter: no line may break there. */
const bound = /(±|:(?= \d)|[°′](?= (?:[A-Z]\b|\d))) /g;

/** The text of a key with its `{places}` filled; a key nobody knows is shown as it is. */
export function translate(language: string, english: Catalogue, key: string, values?: Values): string {
  const text = catalogues.get(primaryOf(language))?.[key] ?? textsOf(english)[key] ?? key;
  return values ? text.replace(places, (place, name: string) => String(values[name] ?? place)).replace(bound, '$1\u00a0') : text;
}
