/** The module with its imports in the order that packs best. */
export function orderImports(source: string): string;
