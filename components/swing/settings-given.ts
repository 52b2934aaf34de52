import { METRES_PER_MILE } from '../../core/sight/line-bearing.js';
import { transitLine } from '../../core/sight/transit-line.js';
import type { TransitLine } from '../../core/sight/transit-line.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';
import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import { markFieldNames } from './swing-fields.js';
import type { SwingFieldName } from './swing-fields.js';
import type { SwingState } from './swing-state.js';

/** The two marks of a transit; undefined until both are entered. */
function marksOf({ fields }: SwingState): TransitLine | undefined {
  const [a, b, c, d] = markFieldNames.map((name) => valueOf(fields[name]));
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  return { kind: 'two-marks', front: { latitude: a, longitude: b }, rear: { latitude: c, longitude: d } };
}

function transitOf(state: SwingState): TransitLine | undefined {
  if (state.transitBy === 'marks') return marksOf(state);
  const bearing = valueOf(state.fields.transitBearing);
  return bearing === undefined ? undefined : { kind: 'charted', bearing };
}

/** Where the line of the two marks lies, or that they give none; null until both are entered. */
export function lineOfMarks(state: SwingState): ReturnType<typeof transitLine> | null {
  const line = state.methods.includes('transit') && state.transitBy === 'marks' ? marksOf(state) : undefined;
  return line ? transitLine(line, settingsOf(state).place) : null;
}

/** The settings as core takes them. */
export function settingsOf(state: SwingState): SwingSettings {
  const { fields, used } = state;
  const value = (name: Exclude<SwingFieldName, 'date'>): number | undefined => (used.includes(name) ? valueOf(fields[name] as FieldState<number>) : undefined);
  const [latitude, longitude, radius, miles] = [value('latitude'), value('longitude'), value('circleRadius'), value('circleDistance')];
  const object = value('objectBearing');
  const date: CivilDate | undefined = used.includes('date') ? valueOf(fields.date) : undefined;
  const distance = miles === undefined ? undefined : miles * METRES_PER_MILE;
  const circle = radius !== undefined && distance !== undefined && radius * 2 < distance ? { radius, distance, turning: state.turning === 'unknown' ? null : state.turning } : undefined;
  return {
    variation: value('variation'),
    place: latitude === undefined || longitude === undefined ? undefined : { latitude, longitude },
    instant: date ? instantOf(date, 43_200) : undefined,
    object: object === undefined ? undefined : { bearing: object, by: state.objectBy },
    circle,
    transit: state.methods.includes('transit') ? transitOf(state) : undefined,
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
