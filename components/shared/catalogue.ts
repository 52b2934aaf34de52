/**
 * The words of the widgets. Each widget brings its English catalogue; a translation is one
 * more catalogue with the same keys, added once for all widgets.
 */
export type Catalogue = Readonly<Record<string, string>>;

export type Values = Readonly<Record<string, string | number>>;

// The one state that all widgets of a page share: a language is added for the page, not for a widget.
const translations = new Map<string, Catalogue>();

/** Adds a language, by its primary subtag, such as `es`. A key it lacks is shown in English. */
export function addTranslation(language: string, catalogue: Catalogue): void {
  translations.set(language, { ...translations.get(language), ...catalogue });
}

/** The text of a key with its `{places}` filled; a key nobody knows is shown as it is. */
export function translate(language: string, english: Catalogue, key: string, values: Values = {}): string {
  const primary = language.toLowerCase().split('-')[0] ?? 'en';
  const text = translations.get(primary)?.[key] ?? english[key] ?? key;
  return text.replace(/\{(\w+)\}/g, (place, name: string) => String(values[name] ?? place));
}
