import { checkFinite, checkRange } from '../angle/check-number.js';

/**
 * The correctors of a binnacle. Forces are what they give at the compass, nanotesla, 0 or
 * more; distances and radii in metres.
 */
export type Corrector = Spheres | FlindersBar | HorizontalMagnet | HeelingMagnet;

/** A pair of soft-iron spheres, one each side of the compass, alike and equally far. */
export interface Spheres {
  readonly kind: 'spheres';
  /** Radius of a sphere. */
  readonly radius: number;
  /** From the needle to the centre of each, above the radius. */
  readonly distance: number;
  /** Relative bearing of the line through them, degrees: 90 athwartships, 0 fore and aft; more than 90 is slewed clockwise. */
  readonly bearing: number;
}

/** A vertical bar of soft iron before, behind or beside the compass. */
export interface FlindersBar {
  readonly kind: 'flinders-bar';
  /** The vertical rod it makes: force towards the bar for each unit of Z, a pure number of 0 or more. */
  readonly strength: number;
  /** Relative bearing of the bar from the compass, degrees: 0 forward, 180 aft. */
  readonly bearing: number;
}

/** Permanent magnets, fore and aft or athwartships, in the trays below the card or end-on to it. */
export interface HorizontalMagnet {
  readonly kind: 'fore-and-aft-magnet' | 'athwartship-magnet';
  /** Of the fore-and-aft magnet `forward` or `aft`, of the athwartship one `starboard` or `port`. */
  readonly redEnd: 'forward' | 'aft' | 'starboard' | 'port';
  readonly place: 'below' | 'end-on';
  readonly force: number;
}

/** A vertical magnet beneath the centre of the card. */
export interface HeelingMagnet {
  readonly kind: 'heeling-magnet';
  readonly redEnd: 'up' | 'down';
  readonly force: number;
}

function checkPlace(name: string, place: HorizontalMagnet['place']): void {
  if (place !== 'below' && place !== 'end-on') throw new RangeError(`${name}: ${String(place)} is neither below nor end-on`);
}

/**
 * Force of a short bar magnet, nanotesla, at a distance in metres, by its moment in A m²:
 * 100 m/r³ broadside on (`below`), twice that `end-on`. The field of a dipole, μ₀/4π = 10⁻⁷.
 * Throws `RangeError` for a moment below 0, a distance not above 0, or another place.
 */
export function magnetForce(moment: number, distance: number, place: HorizontalMagnet['place']): number {
  checkPlace('place', place);
  checkRange('moment', moment, 0, 1e100);
  checkRange('distance', distance, Number.MIN_VALUE, 1e100);
  return Math.min(1e100, ((place === 'below' ? 100 : 200) * moment) / distance ** 3);
}

/** Throws `RangeError` naming what is wrong with a corrector. */
export function checkCorrector(name: string, corrector: Corrector): void {
  switch (corrector.kind) {
    case 'spheres':
      checkRange(`${name}.radius`, corrector.radius, 0, 1e100);
      checkRange(`${name}.distance`, corrector.distance, Math.max(corrector.radius, Number.MIN_VALUE), 1e100);
      checkFinite(`${name}.bearing`, corrector.bearing);
      return;
    case 'flinders-bar':
      checkRange(`${name}.strength`, corrector.strength, 0, 1e100);
      checkFinite(`${name}.bearing`, corrector.bearing);
      return;
    case 'fore-and-aft-magnet':
    case 'athwartship-magnet': {
      const ends = corrector.kind === 'fore-and-aft-magnet' ? ['forward', 'aft'] : ['starboard', 'port'];
      if (!ends.includes(corrector.redEnd)) {
        throw new RangeError(`${name}.redEnd: ${corrector.redEnd} is neither ${ends.join(' nor ')}`);
      }
      checkPlace(`${name}.place`, corrector.place);
      checkRange(`${name}.force`, corrector.force, 0, 1e100);
      return;
    }
    case 'heeling-magnet':
      if (corrector.redEnd !== 'up' && corrector.redEnd !== 'down') throw new RangeError(`${name}.redEnd: ${String(corrector.redEnd)} is neither up nor down`);
      checkRange(`${name}.force`, corrector.force, 0, 1e100);
      return;
    default:
      throw new RangeError(`${name}.kind: ${String((corrector as { kind: unknown }).kind)} is no corrector`);
  }
}
