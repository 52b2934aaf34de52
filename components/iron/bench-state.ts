import { ironParameterNames } from '../../core/iron/iron-parameters.js';
import { benchFields } from './bench-fields.js';
import { placeFieldName, placeNames, placeSources } from './place-names.js';

/**
 * All that is set on the bench, as typed, by the name of each field; what is left out
 * stands at its beginning. Plain data: it goes into JSON, a link or an attribute as it is.
 */
export type BenchState = Readonly<Record<string, string | number>>;

export const views = ['place', 'slip', 'iron', 'heel', 'correctors', 'voyage', 'separate'] as const;

export type ViewName = (typeof views)[number];

/** What is chosen, not typed: the answers of each, the first being the one it begins with. */
export const choices: Readonly<Record<string, readonly string[]>> = {
  view: views,
  flindersPlace: ['forward', 'aft'],
  foreAftRed: ['forward', 'aft'],
  athwartRed: ['starboard', 'port'],
  heelingRed: ['up', 'down'],
  ...Object.fromEntries(placeNames.map((place) => [placeFieldName(place, 'source'), placeSources])),
};

const positions = { here: ['43-30S', '149-00E'], slip: ['43-30S', '149-00E'], there: ['60-30N', '003-00E'], third: ['06-10N', '079-30E'] };

/** The bench before anything is set: a ship without iron at a place of the invented scenario. */
export const beginning: Readonly<Record<string, string>> = {
  ...Object.fromEntries(ironParameterNames.map((name) => [name, '0'])),
  ...Object.fromEntries(Object.entries(choices).map(([name, [first = '']]) => [name, first])),
  ...Object.fromEntries(
    placeNames.flatMap((place) => [
      [placeFieldName(place, 'latitude'), positions[place][0]],
      [placeFieldName(place, 'longitude'), positions[place][1]],
      [placeFieldName(place, 'horizontal'), '20'],
      [placeFieldName(place, 'vertical'), '40'],
      [placeFieldName(place, 'dip'), '60'],
    ]),
  ),
  // The lines of the picture shown: parts by letter, and `split` for permanent and induced apart.
  parts: 'A B C D E',
  date: '2026-07-01',
  heading: '090',
  heel: '0',
  slipHeading: '180',
  slipStrength: '10',
  sphereDiameter: '0',
  sphereDistance: '30',
  sphereBearing: '90',
  flindersStrength: '0',
  foreAftForce: '0',
  athwartForce: '0',
  heelingForce: '0',
};

/** The names a state may have, in the order they are written. */
export const stateNames: readonly string[] = [...Object.keys(choices), 'parts', ...Object.keys(benchFields)];

/** Reads a state: plain data, its JSON, or the text of a link such as `c=0.08&P=2`. What is no state is null. */
export function readState(input: unknown): BenchState | null {
  if (typeof input === 'string') return readState(input.trim().startsWith('{') ? parsed(input) : fromLink(input));
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return null;
  const state: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(input)) {
    if (!stateNames.includes(name)) continue;
    if (typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value))) state[name] = value;
  }
  return state;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function fromLink(text: string): BenchState {
  return Object.fromEntries(new URLSearchParams(text.trim().replace(/^[#?]/, '')));
}

/** The state as the text of a link, fit to stand behind `#` or in an attribute. */
export function stateText(state: BenchState): string {
  return new URLSearchParams(Object.entries(state).map(([name, value]) => [name, String(value)])).toString();
}
