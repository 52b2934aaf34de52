import type { Catalogue } from './catalogue.js';

/** A catalogue from the one text that the build makes of it, `head.key=text=.key=text`: a key that begins with a point has the head of the one before. */
export function catalogueOf(text: string): Catalogue {
  const catalogue: Record<string, string> = {};
  const parts = text.split('=');
  let head = '';
  for (let at = 0; at < parts.length; at += 2) {
    const key = parts[at] as string;
    if (!key.startsWith('.')) head = key.split('.')[0] as string;
    catalogue[key.startsWith('.') ? head + key : key] = parts[at + 1] as string;
  }
  return catalogue;
}
