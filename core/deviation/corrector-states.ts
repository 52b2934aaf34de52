/** What a card says of one corrector, in words. */
export interface CorrectorState {
  /** How many, or how large. */
  readonly what: string;
  /** Where the red ends lie, or on which side it stands: a code of `correctorEnds`; empty where not said. */
  readonly end: string;
  /** Distance from the card or place in the binnacle. */
  readonly distance: string;
}

/** The correctors of a binnacle and which ways each can go. */
export const correctorEnds = {
  foreAndAft: ['red-forward', 'red-aft'],
  athwartships: ['red-starboard', 'red-port'],
  heeling: ['red-up', 'red-down'],
  spheres: ['athwartships', 'fore-and-aft', 'slewed'],
  flinders: ['forward', 'aft'],
} as const;

export type CorrectorName = keyof typeof correctorEnds;

/** The correctors in the order they are listed. */
export const correctorNames = Object.keys(correctorEnds) as readonly CorrectorName[];

export type Correctors = Readonly<Record<CorrectorName, CorrectorState>>;

function stateOf(name: CorrectorName, given: unknown): CorrectorState {
  const bag = typeof given === 'object' && given !== null ? (given as Readonly<Record<string, unknown>>) : {};
  const text = (part: string): string => (typeof bag[part] === 'string' ? bag[part] : '');
  const end = text('end');
  return { what: text('what'), end: (correctorEnds[name] as readonly string[]).includes(end) ? end : '', distance: text('distance') };
}

/** Reads the correctors from plain data or from its JSON; what is not understood is left empty. Never throws. */
export function readCorrectors(given: unknown): Correctors {
  let value: unknown = given;
  if (typeof given === 'string') {
    try {
      value = JSON.parse(given) as unknown;
    } catch {
      value = null;
    }
  }
  const bag = typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
  return {
    foreAndAft: stateOf('foreAndAft', bag['foreAndAft']),
    athwartships: stateOf('athwartships', bag['athwartships']),
    heeling: stateOf('heeling', bag['heeling']),
    spheres: stateOf('spheres', bag['spheres']),
    flinders: stateOf('flinders', bag['flinders']),
  };
}

/** Whether anything is said of any corrector. */
export function anyCorrector(correctors: Correctors): boolean {
  return correctorNames.some((name) => Object.values(correctors[name]).some((text) => text !== ''));
}
