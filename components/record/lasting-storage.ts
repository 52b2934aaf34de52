/**
 * Whether the browser has promised to keep what pages of this address store until the user himself
 * clears it; null where it gives no answer: no secure context, a sandboxed frame, an older browser.
 */
export type Lasting = boolean | null;

async function answerTo(question: 'persisted' | 'persist'): Promise<Lasting> {
  try {
    const storage = navigator.storage as Partial<StorageManager> | undefined;
    return (await storage?.[question]?.()) ?? null;
  } catch {
    // A frame without an origin has nothing that could be kept.
    return null;
  }
}

/** What the browser has promised so far; nobody is asked. */
export const lastingSoFar = (): Promise<Lasting> => answerTo('persisted');

let asked: Promise<unknown> | undefined;

/** The books of the page: what is promised is promised to all of them. */
const books = new Set<() => void>();

/** Tells a book when the browser may have changed its mind; returns how to stop. */
export function onAnswer(book: () => void): () => void {
  books.add(book);
  return () => books.delete(book);
}

/** Asks for the promise, once for a page and all its books; a browser may put the question to the user. A refusal is an answer. */
export async function askToLast(): Promise<void> {
  asked ??= lastingSoFar().then((promised) => promised === false && answerTo('persist'));
  await asked;
  for (const book of books) book();
}
