import type { TransitLine } from '../../core/sight/transit-line.js';

export const markKinds = ['charted', 'two-marks', 'one-mark'] as const;
export type MarkKind = (typeof markKinds)[number];

/** One line ashore as typed: every part stays as it was written, whichever kind is chosen. */
export interface MarkTexts {
  readonly kind: MarkKind;
  /** What the marks are called, for the record. */
  readonly name: string;
  readonly bearing: string;
  readonly charted: string;
  readonly frontLatitude: string;
  readonly frontLongitude: string;
  readonly rearLatitude: string;
  readonly rearLongitude: string;
}

/** The parts that are angles. */
export type MarkPart = Exclude<keyof MarkTexts, 'kind' | 'name'>;

export const noMark: MarkTexts = {
  kind: 'charted',
  name: '',
  bearing: '',
  charted: '',
  frontLatitude: '',
  frontLongitude: '',
  rearLatitude: '',
  rearLongitude: '',
};

/** The parts each kind needs, in the order they are asked. */
export const partsOf: Readonly<Record<MarkKind, readonly MarkPart[]>> = {
  charted: ['charted', 'bearing'],
  'two-marks': ['frontLatitude', 'frontLongitude', 'rearLatitude', 'rearLongitude', 'bearing'],
  'one-mark': ['frontLatitude', 'frontLongitude', 'bearing'],
};

/** The line of a mark whose parts have all been understood; null otherwise. */
export function lineOf(kind: MarkKind, value: (part: MarkPart) => number | undefined): TransitLine | null {
  const position = (which: 'front' | 'rear'): { latitude: number; longitude: number } | null => {
    const [latitude, longitude] = [value(`${which}Latitude`), value(`${which}Longitude`)];
    return latitude === undefined || longitude === undefined ? null : { latitude, longitude };
  };
  if (kind === 'charted') {
    const bearing = value('charted');
    return bearing === undefined ? null : { kind, bearing };
  }
  const front = position('front');
  if (!front) return null;
  if (kind === 'one-mark') return { kind, mark: front };
  const rear = position('rear');
  return rear && { kind, front, rear };
}

/** The places of a line as typed, latitude and longitude of each. */
export function placesOf({ kind, frontLatitude, frontLongitude, rearLatitude, rearLongitude }: MarkTexts): string[][] {
  const places = [[frontLatitude, frontLongitude], [rearLatitude, rearLongitude]];
  return places.slice(0, { charted: 0, 'one-mark': 1, 'two-marks': 2 }[kind]);
}

const isText = (value: unknown): value is string | number => typeof value === 'string' || typeof value === 'number';

/** Marks handed over by the host, as an array or as JSON; what is not understood is left empty. */
export function givenMarks(given: unknown): MarkTexts[] {
  let value = given;
  if (typeof given === 'string') {
    try {
      value = JSON.parse(given) as unknown;
    } catch {
      return [];
    }
  }
  if (!Array.isArray(value)) return [];
  return value.map((each: unknown) => {
    const bag = (typeof each === 'object' && each !== null ? each : {}) as Readonly<Record<string, unknown>>;
    const texts: Record<string, string> = {};
    for (const part of Object.keys(noMark)) if (part !== 'kind' && isText(bag[part])) texts[part] = String(bag[part]);
    const kind = markKinds.find((name) => name === bag['kind']) ?? 'charted';
    return { ...noMark, ...texts, kind };
  });
}
