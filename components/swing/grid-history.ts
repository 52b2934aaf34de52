import type { GridRow } from './grid-row.js';

type Rows = readonly GridRow[];

/** Steps kept; a swing of 36 headings typed twice over fits in. */
const MOST = 200;

/** What the grid was before and after: typing on in one cell is one step. */
export class GridHistory {
  #past: Rows[] = [];
  #future: Rows[] = [];
  #cell: string | null = null;

  /** Keeps what the rows were before a change; `cell` names the cell typed in, null for a change of its own. */
  before(rows: Rows, cell: string | null): void {
    if (cell === null || cell !== this.#cell) this.#past = [...this.#past.slice(1 - MOST), rows];
    this.#future = [];
    this.#cell = cell;
  }

  /** A cell has been left: typing in it again is another step. */
  left(): void {
    this.#cell = null;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  undo(now: Rows): Rows | null {
    const rows = this.#past.pop();
    if (!rows) return null;
    this.#future.push(now);
    this.#cell = null;
    return rows;
  }

  redo(now: Rows): Rows | null {
    const rows = this.#future.pop();
    if (!rows) return null;
    this.#past.push(now);
    this.#cell = null;
    return rows;
  }
}
