/** The module with its named numbers written where they are used. */
export function inlineNumbers(source: string): string;
