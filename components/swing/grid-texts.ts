import type { NoReadingReason } from '../../core/swing/swing-reading.js';
import type { Swing, SwungRow } from '../../core/swing/swing.js';
import { formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import type { GridContent } from './grid-content.js';
import { methodOf } from './grid-reading.js';
import type { Refused } from './grid-reading.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import type { SwingState } from './swing-state.js';

/** What stands over a column, for the methods in use. */
export function columnLabel(host: LubberElement, column: TypedColumn, { methods, headingBy }: SwingState): string {
  if (column === 'heading') return host.t(`swing.column.heading.${headingBy}`);
  if (column === 'steering') return host.t('swing.column.steering');
  const [method] = methods;
  if (column === 'second') return host.t(methods.includes('sun') ? 'swing.column.time' : 'swing.column.shore');
  if (methods.length > 1) return host.t('swing.column.reading');
  if (method === 'gyro') return host.t(headingBy === 'compass' ? 'swing.column.gyro' : 'swing.column.compass');
  return host.t(method === 'deviation' ? 'swing.column.deviation' : 'swing.column.bearing');
}

/** Reasons that lie with the settings, not with a row. */
const ofSettings: readonly NoReadingReason[] = ['no-variation', 'no-place', 'no-object', 'no-transit', 'transit-undetermined', 'gyro-error-needed'];

/** The column of a row that is not understood, once the caret has left it. */
export function refusedColumn(place: number, { worked, typing }: GridContent): TypedColumn | '' {
  const read = worked.read[place];
  const refused = read?.state === 'refused' ? read : read?.state === 'row' ? read.beside : undefined;
  return refused && refused.refusal !== 'date-missing' && typing !== `${refused.column}-${place}` ? refused.column : '';
}

/** What is wrong with a cell and, unless the row is what is wrong, what the cell takes. */
function refusalText(host: LubberElement, place: number, { column, refusal }: Refused, content: GridContent): string {
  if (!refusedColumn(place, content)) return '';
  const { state } = content;
  const method = methodOf(state.rows[place] as GridRow, state);
  const takes = method === 'deviation' && column === 'reading' ? 'error' : method === 'sun' && column === 'second' ? 'time' : 'bearing';
  const what = sentences(host.t, host.t(`refusal.${refusal}`), /^(heading|standard)-/.test(refusal) ? '' : host.t(`accepted.${takes}`));
  return host.t('swing.named', { name: columnLabel(host, column, state), what });
}

/** What is wrong with the head by the steering compass beside a reading that is in order. */
function besideProblem(host: LubberElement, place: number, content: GridContent): string {
  const read = content.worked.read[place];
  if (read?.state === 'row' && read.beside) return refusalText(host, place, read.beside, content);
  const steered = content.worked.steered[place];
  return host.answer === 'shown' && steered?.ok && steered.suspect && !steered.struck ? host.t('swing.named', { name: host.t('swing.compass.steering'), what: host.t('swing.suspect', { residual: formatError(steered.residual ?? 0) }) }) : '';
}

/** What a row's reader has to know: a refusal with the cell it is about, or why the row gives no deviation, or that it does not fit. */
export function problemOf(host: LubberElement, place: number, content: GridContent): string {
  const read = content.worked.read[place];
  if (read?.state === 'refused') return refusalText(host, place, read, content);
  const swung = content.worked.swung[place];
  // What is wanting for every row is said once, in place of the answer.
  if (swung && !swung.ok) return ofSettings.includes(swung.reason) ? '' : host.t(`swing.reason.${swung.reason}`);
  const own = host.answer === 'shown' && swung?.ok && swung.suspect && !swung.struck ? host.t('swing.suspect', { residual: formatError(swung.residual ?? 0) }) : '';
  return `${own} ${besideProblem(host, place, content)}`.trim();
}

/** What a row came to, as it is written beside it; a curve through every reading leaves nothing over. */
export type FoundTexts = readonly [deviation: string, residual: string, bad: boolean];

const nothingFound: FoundTexts = ['', '', false];

export function foundTexts(swung: SwungRow | null | undefined, whole: Swing | null | undefined): FoundTexts {
  if (!swung?.ok) return nothingFound;
  const { deviation, residual, suspect, struck } = swung;
  const over = residual !== null && (whole?.fit.degreesOfFreedom ?? 0) > 0;
  return [formatError(deviation), over ? formatError(residual) : '', suspect && !struck];
}

/** The head by compass that a row came to. */
export const headText = (swung: SwungRow | null | undefined): string => (swung?.ok ? formatBearing(swung.heading) : '');
