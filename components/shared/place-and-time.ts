import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { formatInstant, instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { dayText } from './day-text.js';
import { askPosition } from './device-position.js';
import { valueOf } from './field.js';
import type { Field, FieldState } from './field.js';
import { fieldView } from './field-view.js';
import { instantParts } from './instant-parts.js';
import { instantText } from './instant-text.js';
import type { LubberElement } from './lubber-element.js';
import { latitudeField, longitudeField } from './trade-fields.js';

/** The instant of the two fields; null unless both are in order. */
export function combinedInstant(date: FieldState<CivilDate>, time: FieldState<number>): Date | null {
  const [day, second] = [valueOf(date), valueOf(time)];
  return day === undefined || second === undefined ? null : instantOf(day, second);
}

/** The same where a day will do, as for the variation, which changes little within one: without a time its beginning. */
export function instantOfDay(date: FieldState<CivilDate>, time: FieldState<number>): Date | null {
  return combinedInstant(date, time.state === 'empty' ? { state: 'value', text: '', value: 0 } : time);
}

interface HasInstant {
  instant?: string | Date;
  date?: string | undefined;
  time?: string | undefined;
}

/** Takes an `instant` set by the host over into the fields of date and time; taken away, it takes them along. */
export function splitInstant(host: LubberElement & HasInstant, changed: ReadonlyMap<PropertyKey, unknown>): void {
  if (!changed.has('instant')) return;
  const parts = instantParts(host.instant);
  const before = instantParts(changed.get('instant'));
  for (const name of ['date', 'time'] as const) {
    if (parts) host[name] = parts[name];
    else if (before && host[name] === before[name]) host[name] = undefined;
    // What the host set is no half-typed text: what is wrong with it is said at once.
    if (parts && (name === 'date' || !parts.understood)) host.settle(name);
  }
}

const typedPlace = (host: object): string => {
  const { latitude, longitude } = host as Record<string, unknown>;
  return JSON.stringify([latitude, longitude]);
};

/** Whether the host has fixed when. */
export const isWhenLocked = (host: LubberElement): boolean => host.isLocked('date') || host.isLocked('time');

/** The word beside a label that fills the field; none where that may not be changed. */
function filledBy(host: LubberElement, locked: boolean, word: string, onClick: () => void): TemplateResult | undefined {
  return locked ? undefined : html`<button part="button" type="button" class="plain" @click=${onClick}>${host.t(word)}</button>`;
}

/** Latitude and longitude, and the button that asks the device. */
export function placeView(
  host: LubberElement,
  state: { readonly latitude: FieldState<number>; readonly longitude: FieldState<number> },
  fields: { readonly latitude: Field<number>; readonly longitude: Field<number> },
): TemplateResult[] {
  const onHere = async (): Promise<void> => {
    host.say(host.t('here.waiting'));
    const before = typedPlace(host);
    const answer = await askPosition();
    // The device may take many seconds, and what was typed meanwhile is the user's.
    if (answer.outcome === 'taken' && typedPlace(host) !== before) return host.say(host.t('here.late'));
    host.say(host.t(`here.${answer.outcome}`, answer.outcome === 'taken' ? { metres: Math.ceil(answer.accuracy) } : {}));
    if (answer.outcome !== 'taken') return;
    host.change('latitude', latitudeField.write(answer.latitude));
    host.change('longitude', longitudeField.write(answer.longitude));
  };
  return [
    fieldView(host, 'latitude', fields.latitude, state.latitude, {
      label: host.t('sight.latitude'),
      action: filledBy(host, host.isLocked('latitude') || host.isLocked('longitude'), 'here', onHere),
    }),
    fieldView(host, 'longitude', fields.longitude, state.longitude, { label: host.t('sight.longitude') }),
  ];
}

/** Sets date and time for the user, to the second. */
export function takeInstant(host: LubberElement, instant: Date): void {
  const text = formatInstant(instant);
  host.change('date', text.slice(0, 10));
  host.change('time', text.slice(11, 19));
}

/** Date and time, UTC, and the button that asks the clock. */
export function whenView(
  host: LubberElement,
  state: { readonly date: FieldState<CivilDate>; readonly time: FieldState<number> },
  fields: { readonly date: Field<CivilDate>; readonly time: Field<number> },
): TemplateResult[] {
  const onNow = (): void => {
    const now = new Date();
    takeInstant(host, now);
    host.say(host.t('now.taken', { instant: instantText(now) }));
  };
  const day = valueOf(state.date);
  return [
    fieldView(host, 'date', fields.date, state.date, {
      label: host.t('sight.date'),
      echo: day === undefined ? '' : dayText(host, day),
      action: filledBy(host, isWhenLocked(host), 'now', onNow),
    }),
    fieldView(host, 'time', fields.time, state.time, { label: host.t('sight.time') }),
  ];
}
