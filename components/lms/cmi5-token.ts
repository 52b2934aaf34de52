import { askPlatform } from './ask-platform.js';
import { readNote, writeNote } from './session-note.js';

/**
 * The token of a session: from this tab if it was fetched before, else by one POST (cmi5 8.2);
 * the address answers once only, so it is never asked again. Null where the platform gives none.
 */
export async function sessionToken(address: string): Promise<string | null> {
  const kept = readNote(address).token;
  if (kept) return kept;
  try {
    const response = await askPlatform(address, { method: 'POST' });
    const answer = (await response.json()) as Record<string, unknown> | null;
    const token = answer?.['auth-token'];
    if (typeof token !== 'string' || token === '') return null;
    writeNote(address, { token });
    return token;
  } catch {
    return null;
  }
}
