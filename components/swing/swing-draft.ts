import { readCorrectors } from '../../core/deviation/corrector-states.js';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import { typedColumns } from './grid-row.js';
import type { GridRow } from './grid-row.js';
import type { StageSheet, SwingSheet } from './swing-sheet.js';

const PREFIX = 'lubber-swing:';

/** A swing under way, as it is kept: readings, correctors and settings as typed. */
export interface SwingDraft {
  readonly sheet: SwingSheet;
  readonly settings: Readonly<Record<string, string>>;
}

const isBag = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

const text = (value: unknown): string => (typeof value === 'string' ? value : typeof value === 'number' && Number.isFinite(value) ? String(value) : '');

/** A row from data of unknown origin: what is no text is left empty. */
function readRowData(value: unknown): GridRow | null {
  if (!isBag(value)) return null;
  const [heading, reading, second, steering] = typedColumns.map((column) => text(value[column])) as [string, string, string, string];
  const by = headingReckonings.find((name) => name === value['by']) ?? '';
  const method = swingMethods.find((name) => name === value['method']) ?? '';
  return { heading, by, method, reading, second, steering, struck: value['struck'] === true, steeringStruck: value['steeringStruck'] === true };
}

export function readRowsData(value: unknown): readonly GridRow[] | null {
  if (!Array.isArray(value)) return null;
  return value.map(readRowData).filter((row) => row !== null);
}

function readStage(given: unknown, correctors: unknown): StageSheet | null {
  const rows = readRowsData(given);
  const bag = isBag(correctors) ? correctors : {};
  return rows && { rows, correctors: { standard: readCorrectors(bag['standard']), steering: readCorrectors(bag['steering']) } };
}

/** A sheet as it is kept: plain data. */
export function keptSheet({ left, found }: SwingSheet) {
  return { rows: left.rows, correctors: left.correctors, found: found.rows, foundCorrectors: found.correctors };
}

/** What was kept, from its text; null where that holds something else. */
export function readDraft(text: string | null): SwingDraft | null {
  try {
    const value = JSON.parse(text ?? 'null') as unknown;
    if (!isBag(value)) return null;
    const left = readStage(value['rows'], value['correctors']);
    const found = readStage(value['found'], value['foundCorrectors']);
    const settings = isBag(value['settings']) ? Object.entries(value['settings']).filter((entry): entry is [string, string] => typeof entry[1] === 'string') : [];
    return left ? { sheet: { left, found: found ?? { ...left, rows: [] } }, settings: Object.fromEntries(settings) } : null;
  } catch {
    return null;
  }
}

/** Whether a change of the storage is that of a draft. */
export const isOfDraft = ({ key }: StorageEvent, draft: string): boolean => key === PREFIX + draft;

/** The draft kept under a key, or null; storage may be refused, full or hold something else. */
export function loadDraft(key: string): SwingDraft | null {
  try {
    return readDraft(localStorage.getItem(PREFIX + key));
  } catch {
    return null;
  }
}

/** Whether the browser kept it. */
export function saveDraft(key: string, { sheet, settings }: SwingDraft): boolean {
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify({ ...keptSheet(sheet), settings }));
    return true;
  } catch {
    return false;
  }
}

export function dropDraft(key: string): void {
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // Where nothing may be stored there is nothing to drop.
  }
}
