export type EntryKind = 'observation' | 'no-observation' | 'event' | 'correction';

export type MagneticCompass = 'standard' | 'steering';

export type CompassName = 'gyro' | MagneticCompass;

/** What happened to the ship or her compass; the statistics start anew after any of them. */
export type EventKind = 'adjustment' | 'dock' | 'lightning' | 'cargo' | 'lay-up' | 'electrical' | 'other';

/** The watches by name, so that no spreadsheet takes "04-08" for a day: middle is 00 to 04, dog 16 to 20, first 20 to 24. */
export type Watch = 'middle' | 'morning' | 'forenoon' | 'afternoon' | 'dog' | 'first';

/**
 * What is written in one line of the book: plain data. Degrees; bearings and headings in
 * [0, 360), errors, variation and deviations in (-180, 180] with east positive, north and
 * east positive for the place. `null` or an empty text where nothing was observed.
 */
export interface EntryFields {
  readonly kind: EntryKind;
  /** When it was observed, UTC, to the second: `2026-11-26T09:05:20Z`. */
  readonly instant: string;
  readonly latitude: number | null;
  readonly longitude: number | null;
  /** Ship's head by each compass. */
  readonly headingGyro: number | null;
  readonly headingStandard: number | null;
  readonly headingSteering: number | null;
  /** How the error was found: `amplitude`, `azimuth`, `transit`, `comparison`, or a host's own word. */
  readonly method: string;
  /** Body or mark. */
  readonly target: string;
  /** The compass the bearing was taken by. */
  readonly bearingBy: CompassName | null;
  readonly bearing: number | null;
  readonly trueBearing: number | null;
  /** Error of each compass: true less compass. */
  readonly errorGyro: number | null;
  readonly errorStandard: number | null;
  readonly errorSteering: number | null;
  readonly variation: number | null;
  /** The model or chart the variation came from. */
  readonly variationSource: string;
  /** The compass of the four that follow. */
  readonly deviationOf: MagneticCompass | null;
  readonly deviation: number | null;
  /** One standard deviation of the deviation found. */
  readonly doubt: number | null;
  readonly cardDeviation: number | null;
  /** Deviation found less that of the card. */
  readonly difference: number | null;
  /** Starboard side down positive. */
  readonly heel: number | null;
  readonly watch: Watch | null;
  /** Initials. */
  readonly observer: string;
  /** Only for an event. */
  readonly event: EventKind | null;
  /** Only for a correction: the number of the entry it strikes out. */
  readonly corrects: number | null;
  /** Only for a correction: what its own fields put in the struck-out entry's place; null for nothing. */
  readonly replacement: Exclude<EntryKind, 'correction'> | null;
  readonly compassSerial: string;
  /** Day of the card in use: `2025-03-01`, or empty. */
  readonly cardDate: string;
  readonly remarks: string;
}

/** An entry as it stands in the book: numbered from 1 and chained to the one before. */
export interface RecordEntry extends EntryFields {
  readonly number: number;
  /** When it was written, by the clock of the device, UTC. */
  readonly written: string;
  /** Hash of the entry before; of the book's name for the first. 64 hexadecimal figures. */
  readonly previous: string;
  readonly hash: string;
}

/** What is offered for entry: any fields, the rest stay empty. */
export type EntryDraft = Partial<Omit<EntryFields, 'kind' | 'instant'>> & {
  readonly kind: EntryKind;
  readonly instant: string | Date;
};
