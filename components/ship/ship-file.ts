import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { readDeviationCard } from '../../core/deviation/read-deviation-card.js';
import { readShipCorrectors } from './ship-correctors.js';
import type { ShipCorrectors } from './ship-correctors.js';

/** What a ship writes to a file and reads back: fields as text, the card as plain data. */
export interface ShipFile {
  readonly schema: 'lubberline-ship';
  readonly version: 1;
  readonly name: string;
  readonly compassName: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly heightOfEye: string;
  readonly variation: string;
  readonly heading: string;
  readonly card: DeviationCard | null;
  /** Left out where there is none. */
  readonly steeringCard?: DeviationCard;
  /** By compass; left out where nothing is known. */
  readonly correctors?: ShipCorrectors;
}

export type ShipFileReading = { readonly ok: true; readonly file: ShipFile } | { readonly ok: false; readonly reason: string; readonly where: string };

/** The fields a file holds, each as text. */
export const filedFields = ['latitude', 'longitude', 'heightOfEye', 'variation', 'heading'] as const;

const textNames = ['name', 'compassName', ...filedFields] as const;

/** More than any ship is written in; the longest table of deviations is far shorter. */
export const MOST_CHARACTERS = 1_000_000;

/** The file as text, two spaces deep, so that a person can read it. */
export function writeShipFile(file: ShipFile): string {
  return `${JSON.stringify(file, null, 2)}\n`;
}

const refuse = (reason: string, where = ''): ShipFileReading => ({ ok: false, reason, where });

/** Reads a file; all of it or, with the reason, nothing. */
export function readShipFile(text: string): ShipFileReading {
  if (text.length > MOST_CHARACTERS) return refuse('too-long');
  let value: unknown;
  try {
    value = JSON.parse(text) as unknown;
  } catch {
    return refuse('not-json');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return refuse('not-a-ship');
  const bag = value as Readonly<Record<string, unknown>>;
  if (bag['schema'] !== 'lubberline-ship') return refuse('not-a-ship');
  if (bag['version'] !== 1) return refuse('unknown-version', String(bag['version']));
  const texts: Record<string, string> = {};
  for (const name of textNames) {
    const part = bag[name] ?? '';
    if (typeof part !== 'string') return refuse('not-a-text', name);
    texts[name] = part;
  }
  const cards: Partial<Record<'card' | 'steeringCard', DeviationCard>> = {};
  for (const name of ['card', 'steeringCard'] as const) {
    const reading = (bag[name] ?? null) === null ? null : readDeviationCard(bag[name]);
    if (reading && !reading.ok) return refuse('not-a-card', reading.where || name);
    if (reading) cards[name] = reading.card;
  }
  const correctors = readShipCorrectors(bag['correctors']);
  const known = Object.keys(correctors).length > 0 ? { correctors } : {};
  return { ok: true, file: { schema: 'lubberline-ship', version: 1, ...(texts as Record<(typeof textNames)[number], string>), card: null, ...cards, ...known } };
}
