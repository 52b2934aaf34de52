import { METRES_PER_MILE } from '../../core/sight/line-bearing.js';
import type { SwingSettings } from '../../core/swing/swing-settings.js';
import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { valueOf } from '../shared/field.js';
import type { FieldState } from '../shared/field.js';
import type { SwingFieldName } from './swing-fields.js';
import type { SwingState } from './swing-state.js';

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
