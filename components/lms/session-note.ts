/** What must outlive a reload of the page, and no longer than its tab. */
export interface SessionNote {
  token?: string;
  /** Whether `terminated` was sent: the session is over, whatever the page does. */
  ended?: boolean;
}

const PREFIX = 'lubber-cmi5:';

/** Kept by the address of the token, which is another at every launch; storage may be refused. */
export function readNote(fetchAddress: string): SessionNote {
  try {
    return JSON.parse(sessionStorage.getItem(PREFIX + fetchAddress) ?? '{}') as SessionNote;
  } catch {
    return {};
  }
}

export function writeNote(fetchAddress: string, note: SessionNote): void {
  try {
    sessionStorage.setItem(PREFIX + fetchAddress, JSON.stringify({ ...readNote(fetchAddress), ...note }));
  } catch {
    // A sandboxed frame has no storage: the token lasts as long as the page.
  }
}
