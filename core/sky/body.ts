import { starCatalogue, starNames } from './star-catalogue.js';
import type { StarName } from './star-catalogue.js';

export type PlanetName = 'Venus' | 'Mars' | 'Jupiter' | 'Saturn';
/** The bodies of the almanac: Sun, Moon, four planets, 57 stars and Polaris, spelled as there. */
export type BodyName = 'Sun' | 'Moon' | PlanetName | StarName;
export type BodyKind = 'Sun' | 'Moon' | 'planet' | 'star';

/** All 64: Sun, Moon, the planets from the Sun outwards, the stars by their almanac numbers, Polaris. */
export const bodyNames: readonly BodyName[] = /* @__PURE__ */ (['Sun', 'Moon', 'Venus', 'Mars', 'Jupiter', 'Saturn'] as BodyName[]).concat(starNames);

export function isStar(body: BodyName): body is StarName {
  return Object.hasOwn(starCatalogue, body);
}

/** What sort of body it is, in any spelling `bodyNamed` reads. Throws `RangeError` naming `body`. */
export function kindOf(body: BodyName): BodyKind {
  const named = checkBody(body);
  if (named === 'Sun' || named === 'Moon') return named;
  return isStar(named) ? 'star' : 'planet';
}

function lettersOf(text: string): string {
  return text.toLowerCase().replace(/[^a-z]/g, '');
}

/** The two names the daily pages of the almanac shorten (from memory). */
function shortened(letters: string): BodyName | undefined {
  if (letters === 'rigilkent') return 'Rigil Kentaurus';
  return letters === 'zubenubi' ? 'Zubenelgenubi' : undefined;
}

/**
 * The body a text names, whatever its capitals, spaces, points and apostrophes: `SUN`,
 * `al nair`, `Rigil Kent.`; null for any other.
 */
export function bodyNamed(text: string): BodyName | null {
  // Every name of the list is its own spelling: no need to search.
  if ((bodyNames as readonly string[]).includes(text)) return text as BodyName;
  const letters = lettersOf(text);
  return bodyNames.find((name) => lettersOf(name) === letters) ?? shortened(letters) ?? null;
}

/** The body a text names; throws `RangeError` naming `body` where there is none. */
export function checkBody(body: string): BodyName {
  const named = typeof body === 'string' ? bodyNamed(body) : null;
  if (named === null) throw new RangeError(`body: ${String(body)} is not a body of the almanac`);
  return named;
}
