/** Modules, by their paths, with their named numbers written where they are used. */
export function inlineNumbers(sources: ReadonlyMap<string, string>): Map<string, string>;
