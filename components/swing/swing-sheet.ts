import { readCorrectors } from '../../core/deviation/corrector-states.js';
import type { CorrectorsByCompass } from '../../core/swing/adjusted-swing.js';
import { blankRow, hasReadings, plannedRows, replanned } from './grid-row.js';
import type { GridRow } from './grid-row.js';

/** Before anything is moved, and after; a swing of one round is as left. */
export const stageNames = ['found', 'left'] as const;

export type StageName = (typeof stageNames)[number];

/** One round of a swing as typed. */
export interface StageSheet {
  readonly rows: readonly GridRow[];
  readonly correctors: CorrectorsByCompass;
}

/** Both rounds as typed. */
export type SwingSheet = Readonly<Record<StageName, StageSheet>>;

const noCorrectors: CorrectorsByCompass = { standard: readCorrectors(null), steering: readCorrectors(null) };

/** So many headings for each round, and nothing read. */
export function plannedSheet(count: number): SwingSheet {
  const stage = { rows: plannedRows(count), correctors: noCorrectors };
  return { found: stage, left: stage };
}

export function withStage(sheet: SwingSheet, name: StageName, change: Partial<StageSheet>): SwingSheet {
  return { ...sheet, [name]: { ...sheet[name], ...change } };
}

const inBoth = ({ found, left }: SwingSheet, change: (stage: StageSheet) => StageSheet): SwingSheet => ({ found: change(found), left: change(left) });

/** Another number of headings in both rounds; what has been read stays. */
export function replannedSheet(sheet: SwingSheet, count: number): SwingSheet {
  return inBoth(sheet, (stage) => ({ ...stage, rows: replanned(stage.rows, count) }));
}

/** A round without any rows has those that are planned. */
export function withPlannedRows(sheet: SwingSheet, count: number): SwingSheet {
  return inBoth(sheet, (stage) => (stage.rows.length > 0 ? stage : { ...stage, rows: plannedRows(count) }));
}

/** The same headings, to be read anew. */
const unread = (rows: readonly GridRow[]): readonly GridRow[] => rows.map(({ heading, by, method }) => ({ ...blankRow, heading, by, method }));

/** A swing of one round becomes one of two: what has been read so far is what was found, and the correctors stand as they did. */
export function parted(sheet: SwingSheet): SwingSheet {
  const { found, left } = sheet;
  if (hasReadings(found.rows) || !hasReadings(left.rows)) return sheet;
  return { found: left, left: { rows: unread(left.rows), correctors: left.correctors } };
}

/** Back to one round: where nothing is read after adjusting it is the one that was found. */
export function joined(sheet: SwingSheet): SwingSheet {
  const { found, left } = sheet;
  return hasReadings(left.rows) || !hasReadings(found.rows) ? sheet : { found: left, left: found };
}
