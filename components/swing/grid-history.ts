/** Steps kept; a swing of 36 headings typed twice over fits in. */
const MOST = 200;

/** What the sheet was before and after: typing on in one cell is one step. */
export class GridHistory<Sheet> {
  #past: Sheet[] = [];
  #future: Sheet[] = [];
  #cell: string | null = null;

  /** Keeps what the sheet was before a change; `cell` names the cell typed in, null for a change of its own. */
  before(sheet: Sheet, cell: string | null): void {
    if (cell === null || cell !== this.#cell) this.#past = [...this.#past.slice(1 - MOST), sheet];
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

  undo(now: Sheet): Sheet | null {
    const sheet = this.#past.pop();
    if (!sheet) return null;
    this.#future.push(now);
    this.#cell = null;
    return sheet;
  }

  redo(now: Sheet): Sheet | null {
    const sheet = this.#future.pop();
    if (!sheet) return null;
    this.#past.push(now);
    this.#cell = null;
    return sheet;
  }
}
