import type { TypedColumn } from './grid-row.js';
import type { GridKey } from './grid-keys.js';
import type { GridRow } from './grid-row.js';
import type { SwingState } from './swing-state.js';
import type { WorkedSwing } from './worked-swing.js';

/** What the grid asks of its widget. */
export interface GridActions {
  edit(place: number, change: Partial<GridRow>, cell: string | null): void;
  paste(place: number, column: TypedColumn, text: string): boolean;
  press(key: NonNullable<GridKey>, place: number, column: TypedColumn): void;
  /** A mouse or finger goes to a cell. */
  point(): void;
  leave(): void;
}

export interface GridContent {
  readonly state: SwingState;
  readonly worked: WorkedSwing;
  readonly columns: readonly TypedColumn[];
  /** Rows may differ in method and in the north of their heading. */
  readonly mixed: boolean;
  /** The cell being typed in: what is wrong with it is not said yet. */
  readonly typing: string | null;
  readonly locked: boolean;
}
