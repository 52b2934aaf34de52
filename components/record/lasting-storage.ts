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

let asked: Promise<Lasting> | undefined;

/** Asks for the promise, once for a page and all its books; a browser may put the question to the user. A refusal is an answer. */
export function askToLast(): Promise<Lasting> {
  asked ??= lastingSoFar().then(async (promised) => (promised === false ? ((await answerTo('persist')) ?? false) : promised));
  return asked;
}
