import { readGridRow } from './grid-reading.js';
import type { GridDefaults, ReadRow } from './grid-reading.js';
import type { GridRow } from './grid-row.js';

/** Reads the rows of a grid, each once: a key typed changes one of them. */
export class RowReader {
  #key = '';
  #known = new WeakMap<GridRow, ReadRow>();

  /** `signed`: see `marksWestWithMinus`. */
  readAll(rows: readonly GridRow[], defaults: GridDefaults, signed: boolean): readonly ReadRow[] {
    const key = JSON.stringify([defaults, signed]);
    if (key !== this.#key) this.#known = new WeakMap();
    this.#key = key;
    return rows.map((row) => {
      const read = this.#known.get(row) ?? readGridRow(row, defaults, signed);
      this.#known.set(row, read);
      return read;
    });
  }
}
