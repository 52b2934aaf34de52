import { swungStage } from '../../core/swing/adjusted-swing.js';
import type { SwungStage } from '../../core/swing/adjusted-swing.js';
import type { SwungRow } from '../../core/swing/swing.js';
import type { SwingRow } from '../../core/swing/swing-row.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';
import { valueOf } from '../shared/field.js';
import { marksWestWithMinus } from './grid-reading.js';
import type { ReadRow } from './grid-reading.js';
import { RowReader } from './row-reader.js';
import { settingsOf } from './settings-given.js';
import type { SwingState } from './swing-state.js';

/** The grid read and the swing worked out. */
export interface WorkedSwing {
  /** One for each row of the grid. */
  readonly read: readonly ReadRow[];
  /** One for each row of the grid; null where it was not understood. */
  readonly swung: readonly (SwungRow | null)[];
  /** The same for the steering compass; empty where there is none. */
  readonly steered: readonly (SwungRow | null)[];
  readonly rows: readonly SwingRow[];
  readonly settings: SwingSettings;
  /** Null while nothing is read, or a setting has to be put right first. */
  readonly result: SwungStage | null;
}

/** Reads every row, and works out what is understood. */
function workOut(state: SwingState, reader: RowReader): WorkedSwing {
  const { method, headingBy, steering, words } = state;
  const defaults = { method, headingBy, date: valueOf(state.fields.date), steering, words };
  const signed = marksWestWithMinus(state.rows, defaults);
  const read = reader.readAll(state.rows, defaults, signed);
  const rows = read.flatMap((one) => (one.state === 'row' ? [one.row] : []));
  const settings = settingsOf(state);
  const refused = state.unknown || state.used.some((name) => state.fields[name].state === 'refused');
  const result = rows.length > 0 && !refused ? swungStage(rows, state.correctors, settings) : null;
  let next = 0;
  const places = read.map((one) => (one.state === 'row' ? next++ : -1));
  const swung = places.map((place) => result?.rows[place] ?? null);
  const beside = result?.steering;
  const steered = beside ? places.map((place) => (place < 0 ? null : (beside.rows[beside.places.indexOf(place)] ?? null))) : [];
  return { read, swung, steered, rows, settings, result };
}

/** The swing is worked out once for the same rows and settings. */
export class SwingWork {
  readonly #reader = new RowReader();
  #last: { readonly key: string; readonly state: SwingState; readonly worked: WorkedSwing } | null = null;

  of(now: SwingState): WorkedSwing {
    const { fields, limit, method, headingBy, headings, objectBy, turning, transitBy, model, unknown, steering, words } = now;
    const texts = Object.values(fields).map(({ text }) => text);
    const key = JSON.stringify([texts, limit.code, method, headingBy, headings, objectBy, turning, transitBy, model, unknown, steering, words]);
    const last = this.#last;
    const same = last?.key === key && last.state.rows === now.rows && last.state.correctors === now.correctors && last.state.given.card === now.given.card;
    if (last && same) return last.worked;
    const worked = workOut(now, this.#reader);
    this.#last = { key, state: now, worked };
    return worked;
  }
}
