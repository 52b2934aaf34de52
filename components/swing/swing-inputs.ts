import { formatInstant } from '../../core/time/instant.js';
import type { SwingRow } from '../../core/swing/swing-row.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';

/** Rows and settings as they travel in an event: times as text, settings nobody gave left out. */
export function swingInputs(rows: readonly SwingRow[], settings: SwingSettings): Record<string, unknown> {
  const given = Object.entries(settings).filter(([, value]) => value !== undefined);
  return {
    rows: rows.map((row) => (row.method === 'sun' ? { ...row, instant: formatInstant(row.instant) } : row)),
    settings: Object.fromEntries(given.map(([name, value]) => [name, value instanceof Date ? formatInstant(value) : (value as unknown)])),
  };
}
