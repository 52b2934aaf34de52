import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import type { CorrectorsByCompass } from '../../core/swing/adjusted-swing.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';
import type { FieldState } from '../shared/field.js';
import type { GivenCard } from '../shared/given-card.js';
import { limitNamed } from '../shared/limit-view.js';
import { typedColumns } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { markFieldNames } from './swing-fields.js';
import type { SwingFieldName, chosenSettings, swingFields } from './swing-fields.js';
import type { StageName } from './swing-sheet.js';
import { countNamed, methodNamed, reckoningNamed } from './swing-words.js';

type FieldValue<Name extends SwingFieldName> = (typeof swingFields)[Name] extends { parse(text: string): infer R } ? Extract<R, { ok: true }> extends { value: infer V } ? V : never : never;

type SwingFieldStates = { readonly [Name in SwingFieldName]: FieldState<FieldValue<Name>> };

/** Everything the views show of the settings. */
export interface SwingState {
  readonly fields: SwingFieldStates;
  readonly method: SwingMethod;
  readonly headingBy: HeadingReckoning;
  readonly headings: 8 | 16 | 24 | 36;
  readonly objectBy: 'true' | 'magnetic';
  readonly turning: 'starboard' | 'port' | 'unknown';
  /** Whether the transit is given by its charted bearing or by its two marks. */
  readonly transitBy: 'bearing' | 'marks';
  readonly model: 'auto' | 'approximate' | 'exact';
  readonly limit: DeviationLimit;
  /** A choice stands on a word that is none of its own. */
  readonly unknown: boolean;
  readonly given: GivenCard;
  /** The methods of all rows, the usual one first. */
  readonly methods: readonly SwingMethod[];
  /** Settings in use: those of methods nobody uses are passed over. */
  readonly used: readonly SwingFieldName[];
  readonly rows: readonly GridRow[];
  /** The round these rows are of, and whether there are two of them. */
  readonly stage: StageName;
  readonly two: boolean;
  /** Whether a steering compass is read beside the standard. */
  readonly steering: boolean;
  readonly correctors: CorrectorsByCompass;
  /** Those of the page's language that readings may be written in. */
  readonly words: string;
}

function methodsOf(rows: readonly GridRow[], method: SwingMethod): readonly SwingMethod[] {
  const methods = [method];
  for (const row of rows) {
    const own = row.method || method;
    if (!methods.includes(own)) methods.push(own);
  }
  return methods;
}

interface Uses {
  readonly methods: readonly SwingMethod[];
  /** A head is by gyro. */
  readonly byGyro: boolean;
  readonly gyroKnown: boolean;
  readonly objectBy: 'true' | 'magnetic';
  readonly transitBy: 'bearing' | 'marks';
}

/** The settings that methods ask for, in the order they are shown. */
function usedFields({ methods, byGyro, gyroKnown, objectBy, transitBy }: Uses): readonly SwingFieldName[] {
  const uses = (...names: readonly SwingMethod[]): boolean => names.some((name) => methods.includes(name));
  const gyro = byGyro || uses('gyro');
  const variation = gyro || uses('sun', 'transit') || (uses('known-object') && objectBy === 'true');
  const used: SwingFieldName[] = [];
  if (uses('known-object')) used.push('objectBearing');
  if (uses('known-object', 'unknown-object')) used.push('circleRadius', 'circleDistance');
  if (uses('transit')) used.push(...(transitBy === 'marks' ? markFieldNames : (['transitBearing'] as const)));
  if (gyro) used.push('gyroError');
  if (uses('shore-compass')) used.push('shoreError');
  if (variation) used.push('latitude', 'longitude', 'date', 'variation');
  if (uses('unknown-object') || (uses('gyro') && !gyroKnown)) used.push('constant');
  return used;
}

/** The columns that rows ask for: only some methods need a second reading. */
export function columnsFor(rows: readonly GridRow[], method: unknown, steering: boolean): readonly TypedColumn[] {
  const methods = methodsOf(rows, methodNamed(method));
  const second = methods.includes('sun') || methods.includes('shore-compass');
  return typedColumns.filter((column) => (column === 'second' ? second : column === 'steering' ? steering : true));
}

/** The choices of a swing as a page or the user set them. */
type Chosen = Readonly<Partial<Record<(typeof chosenSettings)[number], unknown>>>;

/** What is none of the settings. */
type Beside = Pick<SwingState, 'rows' | 'correctors' | 'stage' | 'two' | 'steering' | 'given' | 'unknown' | 'words'>;

/** Settings and rows together, every word understood or replaced by the usual one. */
export function swingState(chosen: Chosen, fields: SwingFieldStates, { rows, ...rest }: Beside): SwingState {
  const method = methodNamed(chosen.method);
  const headingBy = reckoningNamed(chosen.headingBy);
  const objectBy = chosen.objectBy === 'true' ? 'true' : 'magnetic';
  const transitBy = chosen.transitBy === 'marks' ? 'marks' : 'bearing';
  const methods = methodsOf(rows, method);
  const byGyro = headingBy === 'gyro' || rows.some(({ by, heading }) => by === 'gyro' || /\d\s*g\s*$/i.test(heading));
  return {
    ...rest,
    fields,
    method,
    headingBy,
    headings: countNamed(chosen.headings),
    objectBy,
    turning: chosen.turning === 'starboard' || chosen.turning === 'port' ? chosen.turning : 'unknown',
    transitBy,
    model: chosen.model === 'approximate' || chosen.model === 'exact' ? chosen.model : 'auto',
    limit: limitNamed(chosen.limit),
    methods,
    used: usedFields({ methods, byGyro, gyroKnown: fields.gyroError.state !== 'empty', objectBy, transitBy }),
    rows,
  };
}
