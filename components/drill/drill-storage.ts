const PREFIX = 'lubber-drill:';

/** What was stored under a key, or null; storage may be refused, full or empty. */
export function loadState(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + key) ?? 'null') as unknown;
  } catch {
    return null;
  }
}

/** Stores a state under a key where the browser lets it; whoever needs it surely takes the property. */
export function saveState(key: string, state: unknown): void {
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify(state));
  } catch {
    // A sandboxed frame has no storage: the drill works on without.
  }
}
