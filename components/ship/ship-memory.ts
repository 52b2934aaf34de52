import { readShipFile, writeShipFile } from './ship-file.js';
import type { ShipFile } from './ship-file.js';

/** Under what the browser's storage has the ship of a name. */
export const shipKey = (name: string): string => `lubberline-ship-${name}`;

/** The ship kept under a name in this browser; null without a name, without storage, or where there is none. */
export function recall(name: string): ShipFile | null {
  if (!name) return null;
  try {
    const text = localStorage.getItem(shipKey(name));
    const reading = text === null ? null : readShipFile(text);
    return reading?.ok ? reading.file : null;
  } catch {
    // A sandboxed frame or a private window may refuse storage: the ship then lasts as long as the page.
    return null;
  }
}

/** Keeps the ship under a name; where storage is refused nothing is kept and nothing thrown. */
export function remember(name: string, file: ShipFile): void {
  if (!name) return;
  try {
    localStorage.setItem(shipKey(name), writeShipFile(file));
  } catch {
    // As above.
  }
}
