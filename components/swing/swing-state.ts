import { deviationLimits } from '../../core/deviation/deviation-limits.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { METRES_PER_MILE } from '../../core/sight/line-bearing.js';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import type { HeadingReckoning, SwingMethod } from '../../core/swing/swing-row.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';
import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import type { GivenCard } from '../shared/given-card.js';
import type { GridRow } from './grid-row.js';
import { methodOf } from './grid-reading.js';
import type { SwingFieldName, swingFields } from './swing-fields.js';

type FieldValue<Name extends SwingFieldName> = (typeof swingFields)[Name] extends { parse(text: string): infer R } ? Extract<R, { ok: true }> extends { value: infer V } ? V : never : never;

export type SwingFieldStates = { readonly [Name in SwingFieldName]: FieldState<FieldValue<Name>> };

/** Everything the views show of the settings. */
export interface SwingState {
  readonly fields: SwingFieldStates;
  readonly method: SwingMethod;
  readonly headingBy: HeadingReckoning;
  readonly headings: 8 | 16 | 24 | 36;
  readonly objectBy: 'true' | 'magnetic';
  readonly turning: 'starboard' | 'port' | 'unknown';
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
}

export const methodNamed = (text: unknown): SwingMethod => swingMethods.find((name) => name === text) ?? 'deviation';
export const reckoningNamed = (text: unknown): HeadingReckoning => headingReckonings.find((name) => name === text) ?? 'compass';
export const countNamed = (text: unknown): 8 | 16 | 24 | 36 => ([8, 16, 24, 36] as const).find((count) => String(count) === String(text)) ?? 8;
export const limitNamed = (text: unknown): DeviationLimit => deviationLimits.find(({ code }) => code === text) ?? (deviationLimits[0] as DeviationLimit);

/** The words each choice of the settings takes. */
export const swingWords = {
  method: swingMethods,
  headingBy: headingReckonings,
  headings: ['8', '16', '24', '36'],
  objectBy: ['magnetic', 'true'],
  turning: ['starboard', 'port', 'unknown'],
  model: ['auto', 'approximate', 'exact'],
  limit: deviationLimits.map(({ code }) => code),
};

export function methodsOf(rows: readonly GridRow[], method: SwingMethod): readonly SwingMethod[] {
  return [...new Set([method, ...rows.map((row) => methodOf(row, { method }))])];
}

interface Uses {
  readonly methods: readonly SwingMethod[];
  /** A head is by gyro. */
  readonly byGyro: boolean;
  readonly gyroKnown: boolean;
  readonly objectBy: 'true' | 'magnetic';
}

/** The settings that methods ask for, in the order they are shown. */
export function usedFields({ methods, byGyro, gyroKnown, objectBy }: Uses): readonly SwingFieldName[] {
  const uses = (...names: readonly SwingMethod[]): boolean => names.some((name) => methods.includes(name));
  const gyro = byGyro || uses('gyro');
  const variation = gyro || uses('sun', 'transit') || (uses('known-object') && objectBy === 'true');
  const used: SwingFieldName[] = [];
  if (uses('known-object')) used.push('objectBearing');
  if (uses('known-object', 'unknown-object')) used.push('circleRadius', 'circleDistance');
  if (uses('transit')) used.push('transitBearing');
  if (gyro) used.push('gyroError');
  if (uses('shore-compass')) used.push('shoreError');
  if (variation) used.push('latitude', 'longitude', 'date', 'variation');
  if (uses('unknown-object') || (uses('gyro') && !gyroKnown)) used.push('constant');
  return used;
}

/** The settings as core takes them. */
export function settingsOf(state: SwingState): SwingSettings {
  const { fields, used } = state;
  const value = (name: Exclude<SwingFieldName, 'date'>): number | undefined => (used.includes(name) ? valueOf(fields[name] as FieldState<number>) : undefined);
  const [latitude, longitude, radius, miles] = [value('latitude'), value('longitude'), value('circleRadius'), value('circleDistance')];
  const [object, transit] = [value('objectBearing'), value('transitBearing')];
  const date: CivilDate | undefined = used.includes('date') ? valueOf(fields.date) : undefined;
  const distance = miles === undefined ? undefined : miles * METRES_PER_MILE;
  const circle = radius !== undefined && distance !== undefined && radius * 2 < distance ? { radius, distance, turning: state.turning === 'unknown' ? null : state.turning } : undefined;
  return {
    variation: value('variation'),
    place: latitude === undefined || longitude === undefined ? undefined : { latitude, longitude },
    instant: date ? instantOf(date, 43_200) : undefined,
    object: object === undefined ? undefined : { bearing: object, by: state.objectBy },
    circle,
    transit: transit === undefined ? undefined : { kind: 'charted', bearing: transit },
    gyroError: value('gyroError') ?? null,
    shoreError: value('shoreError'),
    constant: value('constant') ?? null,
    model: state.model,
    planned: state.headings,
    oldCard: state.given.card,
    limit: state.limit,
  };
}

/** A circle wider than its object is far has been typed: the parallax is not allowed for. */
export function circleTooWide({ fields }: SwingState): boolean {
  const [radius, miles] = [valueOf(fields.circleRadius), valueOf(fields.circleDistance)];
  return radius !== undefined && miles !== undefined && radius * 2 >= miles * METRES_PER_MILE;
}
