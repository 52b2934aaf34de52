/** The module with the styles it holds as plain texts. */
export function plainStyles(source: string): string;
