/** Texts by their keys. */
export type Catalogue = Readonly<Record<string, string>>;

type Texts = Record<string, string>;

/** An English catalogue as the build makes it: its texts as one, and the catalogues it holds; a later part comes before those earlier. */
interface Packed extends ReadonlyArray<string | Packed> {
  /** Once they are read. */
  texts?: Texts;
}

/** Adds the texts of parts. One is `.head.key=text=key=text`: a key that begins with a point brings a head, which those after it have too. */
function add(parts: Packed, to: Texts): Texts {
  for (const part of parts) {
    if (typeof part !== 'string') {
      add(part, to);
      continue;
    }
    const pieces = part.split('=');
    let head = '';
    for (let at = 0; at < pieces.length; at += 2) {
      const piece = pieces[at] as string;
      const key = piece.startsWith('.') ? piece.slice(1) : `${head}.${piece}`;
      head = key.split('.')[0] as string;
      to[key] = pieces[at + 1] as string;
    }
  }
  return to;
}

/** A list without a prototype: hundreds of keys, one after the other, would else each give it a new shape. */
const read = (parts: Packed): Texts => add(parts, { __proto__: null } as unknown as Texts);

/** A catalogue from its one text. */
export const catalogueOf = (text: string): Catalogue => read([text]);

/**
 * The texts of a catalogue. One that is packed is read when the first is asked for: of all that a
 * script holds a page shows one widget or two.
 */
export function textsOf(catalogue: Catalogue | Packed): Catalogue {
  return Array.isArray(catalogue) ? ((catalogue as Packed).texts ??= read(catalogue as Packed)) : (catalogue as Catalogue);
}
