import type { LubberElement } from '../shared/lubber-element.js';
import { GridHistory } from './grid-history.js';
import type { GridKey } from './grid-keys.js';
import { isTable, pasteInto, pastedCells } from './grid-paste.js';
import { changedCell, hasReadings, withRow } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { withStage } from './swing-sheet.js';
import type { StageName, StageSheet, SwingSheet } from './swing-sheet.js';

/** The round that is shown, and of how many. */
interface ShownRound {
  readonly stages: 'one' | 'two';
  readonly stage: StageName;
}

/** What the desk needs of its widget. */
interface DeskHost {
  readonly widget: LubberElement;
  /** The columns that are shown. */
  columns(): readonly TypedColumn[];
  /** Whether deviations are entered as such. */
  deviations(): boolean;
  shown(): ShownRound;
  /** Shows another round, where something of it has been taken back. */
  show(shown: ShownRound): void;
  /** The user has changed something. */
  changed(): void;
}

/** A sheet as it lay on the desk. */
interface Laid {
  readonly sheet: SwingSheet;
  readonly shown: ShownRound;
}

/** Where the readings lie while they are typed, pasted, walked through and taken back. */
export class GridDesk {
  sheet: SwingSheet;

  /** The cell being typed in. */
  typing: string | null = null;

  /** What the last table, pasted or given by the page, has besides its rows: the names of columns; empty where nothing. */
  leftOut = '';

  /** Where the user began to type in a row, while it is gone through by Tab. */
  #begun: { readonly place: number; readonly column: TypedColumn } | null = null;

  readonly #host: DeskHost;
  readonly #history = new GridHistory<Laid>();

  constructor(host: DeskHost, sheet: SwingSheet) {
    this.#host = host;
    this.sheet = sheet;
  }

  /** The round that is shown. */
  get stage(): StageSheet {
    return this.sheet[this.#host.shown().stage];
  }

  get rows(): readonly GridRow[] {
    return this.stage.rows;
  }

  get canUndo(): boolean {
    return this.#history.canUndo;
  }

  get canRedo(): boolean {
    return this.#history.canRedo;
  }

  get #locked(): boolean {
    return this.#host.widget.isLocked('rows');
  }

  get #now(): Laid {
    return { sheet: this.sheet, shown: this.#host.shown() };
  }

  /** Lays another sheet on the desk; Undo brings back the one that lay there. */
  replace(sheet: SwingSheet): void {
    this.#history.before(this.#now, null);
    this.sheet = sheet;
    this.leftOut = '';
  }

  /** The user puts another sheet in the place of this one. */
  takeSheet(sheet: SwingSheet): void {
    this.replace(sheet);
    this.#host.changed();
  }

  /** The user changes the round that is shown; `cell` names what is typed in. */
  take(change: Partial<StageSheet>, cell: string | null): void {
    this.#history.before(this.#now, cell);
    this.sheet = withStage(this.sheet, this.#host.shown().stage, change);
    this.#host.changed();
  }

  #step(back: Laid | null, said: string): void {
    if (!back) return;
    this.sheet = back.sheet;
    this.#host.show(back.shown);
    this.typing = null;
    this.leftOut = '';
    this.#host.changed();
    this.#host.widget.say(this.#host.widget.t(said));
  }

  readonly undo = (): void => this.#step(this.#history.undo(this.#now), 'swing.undone');
  readonly redo = (): void => this.#step(this.#history.redo(this.#now), 'swing.redone');

  edit(place: number, change: Partial<GridRow>, cell: string | null): void {
    this.typing = cell;
    this.take({ rows: withRow(this.rows, place, change) }, cell);
  }

  /** Says above the grid which names of columns are no row of it. */
  leaveOut(caption: string): void {
    this.leftOut = caption && this.#host.widget.t('swing.pasted.caption', { caption });
  }

  /** Whether the text was a table: one cell's worth is left to the browser. */
  paste(row: number, column: TypedColumn, text: string): boolean {
    const { t } = this.#host.widget;
    const words = t('entry.words');
    if (!isTable(text, words)) return false;
    this.typing = null;
    const place = { row, column, columns: this.#host.columns(), deviations: this.#host.deviations(), words };
    const { rows, caption } = pasteInto(this.rows, text, place);
    this.take({ rows }, null);
    this.leaveOut(caption);
    this.#host.widget.say(`${t('swing.pasted', { count: pastedCells(text, words).length })} ${this.leftOut}`.trim());
    return true;
  }

  /** The cell has been left. */
  leave(): void {
    this.#history.left();
    this.typing = null;
    this.#host.widget.requestUpdate();
  }

  /** Puts the caret into a cell; one row beyond the last is made. */
  async goTo(place: number, column: TypedColumn): Promise<void> {
    const { widget } = this.#host;
    if (place >= this.rows.length) this.sheet = withStage(this.sheet, this.#host.shown().stage, { rows: withRow(this.rows, place, {}) });
    widget.requestUpdate();
    await widget.updateComplete;
    (widget.renderRoot as ParentNode).querySelector<HTMLInputElement>(`#${column}-${place}`)?.focus();
  }

  /** Who points to another cell does not go on through the row by Tab. */
  readonly point = (): void => {
    this.#begun = null;
  };

  press(key: NonNullable<GridKey>, place: number, column: TypedColumn): void {
    const begun = this.#begun?.place === place ? this.#begun : null;
    this.#begun = key.to === 'further' ? (begun ?? (this.typing === `${column}-${place}` ? { place, column } : null)) : null;
    if (key.to === 'further') return;
    // Notes are read row by row: after a row's second reading to the first of the next, as in a spreadsheet.
    if (key.to === 'next line') return this.press({ to: 'cell', down: 1, across: 0 }, place, begun?.column ?? column);
    const columns = this.#host.columns();
    if (key.to !== 'cell') {
      if (this.#locked) return;
      const before = this.rows;
      this[key.to]();
      // To what has changed, as in a spreadsheet; and the row the caret stood in may be gone.
      const changed = changedCell(before, this.rows, columns);
      void this.goTo(Math.min(changed?.place ?? place, this.rows.length - 1), changed?.column ?? column);
      return;
    }
    const across = columns[columns.indexOf(column) + key.across];
    const last = this.rows[this.rows.length - 1];
    // A further row is made by going down from one that is in use.
    const most = this.rows.length - (this.#locked || !last || !hasReadings([last]) ? 1 : 0);
    if (across) void this.goTo(Math.max(0, Math.min(most, place + key.down)), across);
  }
}
