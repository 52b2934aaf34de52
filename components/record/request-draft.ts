import type { EntryDraft, MagneticCompass } from '../../core/record/entry.js';
import type { RecordRequestDetail } from '../shared/events.js';

type Bag = Readonly<Record<string, unknown>>;

const bagOf = (value: unknown): Bag => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Bag) : {});

/** The first of some values that is a finite number. */
function numberOf(...values: readonly unknown[]): number | null {
  const found = values.find((value) => typeof value === 'number' && Number.isFinite(value));
  return found === undefined ? null : (found as number);
}

function textOf(...values: readonly unknown[]): string {
  const found = values.find((value) => typeof value === 'string' && value !== '');
  return found === undefined ? '' : (found as string);
}

function variationSourceOf(variation: Bag): string {
  return variation['source'] === 'model' ? textOf(variation['model']) : variation['source'] === 'given' ? 'as entered' : '';
}

/** What a sight offers as the fields of an entry; what is not understood is left out. */
export function draftOfRequest(
  detail: RecordRequestDetail,
  own: { readonly magnetic: MagneticCompass; readonly observer: string; readonly compassSerial: string; readonly cardDate: string; readonly now: Date },
): EntryDraft {
  const entry = bagOf(detail.entry);
  const result = bagOf(entry['result']);
  const variation = bagOf(result['variation']);
  const gyro = textOf(entry['compass'], result['compass']) === 'gyro';
  const heading = numberOf(entry['heading'], result['heading']);
  const error = numberOf(result['error']);
  const deviation = gyro ? null : numberOf(result['deviation'], entry['deviation']);
  const name = gyro ? 'Gyro' : own.magnetic === 'standard' ? 'Standard' : 'Steering';
  return {
    kind: 'observation',
    instant: textOf(entry['instant']) || own.now,
    latitude: numberOf(entry['latitude']),
    longitude: numberOf(entry['longitude']),
    method: textOf(entry['method'], detail.widget).slice(0, 40),
    target: textOf(entry['body'], entry['mark'], entry['marks'], entry['target']).slice(0, 120),
    bearingBy: gyro ? 'gyro' : own.magnetic,
    bearing: numberOf(entry['bearing'], entry['compassBearing']),
    trueBearing: numberOf(result['trueBearing'], entry['trueBearing']),
    [`heading${name}`]: heading,
    [`error${name}`]: error,
    variation: numberOf(variation['value'], entry['variation']),
    variationSource: variationSourceOf(variation),
    deviationOf: deviation === null ? null : own.magnetic,
    deviation,
    doubt: numberOf(result['deviationDoubt'], bagOf(result['doubt'])['total']),
    cardDeviation: gyro ? null : numberOf(result['cardDeviation'], entry['cardDeviation']),
    difference: gyro ? null : numberOf(result['difference']),
    observer: own.observer,
    compassSerial: own.compassSerial,
    cardDate: own.cardDate,
    remarks: textOf(entry['remarks']).slice(0, 2000),
  };
}
