import { readCorrectors } from '../../core/deviation/corrector-states.js';
import { hasReadings, plannedRows } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { pasteInto } from './grid-paste.js';
import { readRowsData } from './swing-draft.js';
import type { SwingProperties } from './swing-properties.js';
import { withStage } from './swing-sheet.js';
import type { StageName, SwingSheet } from './swing-sheet.js';

/** Which property hands over what, for each round. */
const rowsOf = { found: 'foundRows', left: 'rows' } as const;
const correctorsOf = {
  found: { standard: 'foundCorrectors', steering: 'foundSteeringCorrectors' },
  left: { standard: 'correctors', steering: 'steeringCorrectors' },
} as const;

/** Rows as a page gives them, data or text; as many empty ones as are planned where it gives none. */
function rowsGiven(given: SwingProperties['rows'], { planned, columns, leaves }: Given): readonly GridRow[] {
  const pasted = typeof given === 'string' && given.trim() ? pasteInto([], given, { row: 0, column: 'heading', columns, words: '' }) : null;
  leaves(pasted?.caption ?? '');
  const read = pasted?.rows ?? readRowsData(given);
  return read && read.length > 0 ? read : plannedRows(planned);
}

interface Given {
  readonly page: SwingProperties;
  /** Headings planned. */
  readonly planned: number;
  /** Columns a text of rows has. */
  readonly columns: readonly TypedColumn[];
  /** Whether a property is to be taken over. */
  wants(name: keyof SwingProperties): boolean;
  /** Told what is no row of those given: the names of columns over them; empty where there are none. */
  leaves(caption: string): void;
}

/** The sheet with what the page gives of a round. */
function stageGiven(sheet: SwingSheet, name: StageName, offer: Given): SwingSheet {
  const { page, wants } = offer;
  const rows = rowsOf[name];
  const { standard, steering } = correctorsOf[name];
  let given = sheet;
  if (wants(rows) && page[rows] !== undefined) given = withStage(given, name, { rows: rowsGiven(page[rows], offer) });
  if (wants(standard)) given = withStage(given, name, { correctors: { ...given[name].correctors, standard: readCorrectors(page[standard]) } });
  if (wants(steering)) given = withStage(given, name, { correctors: { ...given[name].correctors, steering: readCorrectors(page[steering]) } });
  return given;
}

/** The sheet with all that the page gives and that is wanted of it; the same sheet where that is nothing. */
export function sheetGiven(sheet: SwingSheet, given: Given): SwingSheet {
  return stageGiven(stageGiven(sheet, 'left', given), 'found', given);
}

/** Rows that ask for more than the simple grid. */
export function rowsNeed({ found, left }: SwingSheet): { readonly mixed: boolean; readonly steering: boolean; readonly found: boolean } {
  const rows = [...found.rows, ...left.rows];
  return {
    mixed: rows.some(({ by, method }) => by !== '' || method !== ''),
    steering: rows.some(({ steering }) => steering.trim() !== ''),
    found: hasReadings(found.rows),
  };
}
