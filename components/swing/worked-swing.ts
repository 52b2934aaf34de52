import { swing } from '../../core/swing/swing.js';
import type { Swing, SwungRow } from '../../core/swing/swing.js';
import type { SwingRow } from '../../core/swing/swing-row.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';
import { valueOf } from '../shared/field.js';
import { marksWestWithMinus, readGridRow } from './grid-reading.js';
import type { ReadRow } from './grid-reading.js';
import { settingsOf } from './settings-given.js';
import type { SwingState } from './swing-state.js';

/** The grid read and the swing worked out. */
export interface WorkedSwing {
  /** One for each row of the grid. */
  readonly read: readonly ReadRow[];
  /** One for each row of the grid; null where it was not understood. */
  readonly swung: readonly (SwungRow | null)[];
  readonly rows: readonly SwingRow[];
  readonly settings: SwingSettings;
  /** Null while nothing is read, or a setting has to be put right first. */
  readonly result: Swing | null;
}

/** Reads every row, and works out what is understood. */
export function workOut(state: SwingState): WorkedSwing {
  const defaults = { method: state.method, headingBy: state.headingBy, date: valueOf(state.fields.date) };
  const signed = marksWestWithMinus(state.rows, defaults);
  const read = state.rows.map((row) => readGridRow(row, defaults, signed));
  const rows = read.flatMap((one) => (one.state === 'row' ? [one.row] : []));
  const settings = settingsOf(state);
  const refused = state.unknown || state.used.some((name) => state.fields[name].state === 'refused');
  const result = rows.length > 0 && !refused ? swing(rows, settings) : null;
  let next = 0;
  const swung = read.map((one) => (one.state === 'row' ? (result?.rows[next++] ?? null) : null));
  return { read, swung, rows, settings, result };
}

/** The swing is worked out once for the same rows and settings. */
export class SwingWork {
  #last: { readonly key: string; readonly state: SwingState; readonly worked: WorkedSwing } | null = null;

  of(now: SwingState): WorkedSwing {
    const { fields, limit, method, headingBy, headings, objectBy, turning, model, unknown } = now;
    const key = JSON.stringify([Object.values(fields).map(({ text }) => text), limit.code, method, headingBy, headings, objectBy, turning, model, unknown]);
    const last = this.#last;
    if (last?.key === key && last.state.rows === now.rows && last.state.given.card === now.given.card) return last.worked;
    const worked = workOut(now);
    this.#last = { key, state: now, worked };
    return worked;
  }
}
