import { formatBearing } from '../../core/angle/format-angle.js';
import { parseBearing } from '../../core/angle/parse-bearing.js';
import { plannedHeadings } from '../../core/swing/planned-headings.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';

/** One row of the entry grid: what was typed, as it was typed. */
export interface GridRow {
  readonly heading: string;
  /** By which north; empty where the whole swing's holds. */
  readonly by: HeadingReckoning | '';
  /** Empty where the whole swing's holds. */
  readonly method: SwingMethod | '';
  readonly reading: string;
  /** Time of the Sun, or the shore's bearing of the ship. */
  readonly second: string;
  /** Head by the steering compass at the same moment. */
  readonly steering: string;
  readonly struck: boolean;
  /** Struck for the steering compass alone. */
  readonly steeringStruck: boolean;
}

/** The columns that are typed in, from left to right. */
export const typedColumns = ['heading', 'reading', 'second', 'steering'] as const;

export type TypedColumn = (typeof typedColumns)[number];

export const blankRow: GridRow = { heading: '', by: '', method: '', reading: '', second: '', steering: '', struck: false, steeringStruck: false };

/** A heading as a hand writes it in the grid. */
const written = (heading: number): string => formatBearing(heading, heading % 1 ? 1 : 0).replace('°', '');

/** Rows for so many headings, spread evenly, with nothing read yet. */
export function plannedRows(count: number): readonly GridRow[] {
  return plannedHeadings(count).map((heading) => ({ ...blankRow, heading: written(heading) }));
}

/** Whether anything has been read on any heading. */
export function hasReadings(rows: readonly GridRow[]): boolean {
  return rows.some(({ reading, second, steering }) => `${reading}${second}${steering}`.trim() !== '');
}

/** Whether nothing at all stands in a row. */
export const isBlank = (row: GridRow): boolean => typedColumns.every((column) => row[column].trim() === '');

/** The same rows with one changed; rows are added where there are too few. */
export function withRow(rows: readonly GridRow[], place: number, change: Partial<GridRow>): readonly GridRow[] {
  const length = Math.max(rows.length, place + 1);
  return Array.from({ length }, (_, index) => (index === place ? { ...(rows[index] ?? blankRow), ...change } : (rows[index] ?? blankRow)));
}

/** The first cell in which two states of the grid differ; null where none of these columns does. */
export function changedCell(before: readonly GridRow[], after: readonly GridRow[], columns: readonly TypedColumn[]): { readonly place: number; readonly column: TypedColumn } | null {
  for (let place = 0; place < Math.max(before.length, after.length); place += 1) {
    const column = columns.find((one) => (before[place] ?? blankRow)[one] !== (after[place] ?? blankRow)[one]);
    if (column) return { place, column };
  }
  return null;
}

const headingOf = ({ heading }: GridRow): number | null => {
  const reading = parseBearing(heading);
  return reading.ok ? reading.value : null;
};

/** Rows for another number of headings: what has been read stays, in order where all headings can be read. */
export function replanned(rows: readonly GridRow[], count: number): readonly GridRow[] {
  const kept = rows.filter((row) => hasReadings([row]));
  const taken = kept.map(headingOf);
  const merged = [...kept, ...plannedRows(count).filter((row) => !taken.includes(headingOf(row)))];
  return taken.includes(null) ? merged : merged.sort((a, b) => (headingOf(a) ?? 0) - (headingOf(b) ?? 0));
}
