export function litProperties(source: string): string;
