import type { Catalogue } from './catalogue.js';

/** A catalogue from the one text that the build makes of it, `.head.key=text=key=text`: a key that begins with a point brings a head, which those after it have too. */
export function catalogueOf(text: string): Catalogue {
  const catalogue: Record<string, string> = {};
  const parts = text.split('=');
  let head = '';
  for (let at = 0; at < parts.length; at += 2) {
    const part = parts[at] as string;
    const key = part.startsWith('.') ? part.slice(1) : `${head}.${part}`;
    head = key.split('.')[0] as string;
    catalogue[key] = parts[at + 1] as string;
  }
  return catalogue;
}
