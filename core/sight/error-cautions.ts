import { wrap180 } from '../angle/wrap.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { ErrorSplit } from './error-steps.js';
import { ODD_BESIDE_CARD, ODD_DEVIATION, ODD_GYRO_ERROR } from './odd-errors.js';
import { variationSlip } from './variation-slip.js';

/** Beyond this latitude, degrees, little holds a gyro to the meridian. Makers' manuals say 70 to 80, from memory. */
const GYRO_LATITUDE = 75;
/** Below this variation a magnetic and a gyro bearing cannot be told apart by their errors. */
const TELLING_VARIATION = 5;
/** How near an error must lie to what the other compass would show. */
const MIX_UP = 2;
/**
 * Which deviation is odd, degrees, by the zone of the place. In the caution zone the force that
 * holds the needle is a third of the usual or less, and what the ship's iron does to it three times
 * as much (B and C go as 1/H); beyond, the zone is told and enough.
 */
const UNUSUAL_DEVIATION = { normal: ODD_DEVIATION, caution: 3 * ODD_DEVIATION, blackout: Infinity } as const;
/**
 * Beyond so many times what is odd, 42°, a slip is far likelier than such a deviation: no card is made so, and the curve answers
 * a magnetic heading more than once (a D of 29° is enough, trade practice). Where the needle is weak it may be. Common practice, no source.
 */
const HARDLY_REAL = 6;

function gyroCautions({ error, variation, latitude = 0 }: ErrorSplit): Caution[] {
  const ofPlace = Math.abs(latitude) > GYRO_LATITUDE ? [note('gyro-high-latitude')] : [];
  if (Math.abs(error) <= ODD_GYRO_ERROR) return ofPlace;
  const likeMagnetic =
    variation.source !== 'none' && Math.abs(variation.value) >= TELLING_VARIATION && Math.abs(wrap180(error - variation.value)) < MIX_UP;
  const ofError = likeMagnetic
    ? warning('looks-like-magnetic', { variation: quantity(variation.value, 'error') })
    : warning('gyro-error-large', { error: quantity(error, 'error') });
  return [ofError, ...ofPlace];
}

/** What is odd about an error and its split, whatever body or mark it came from. */
export function errorCautions(split: ErrorSplit, doubt: number): Caution[] {
  const cautions: Caution[] = [];
  const { variation, deviation, difference, cardDeviation } = split;
  // Near a dip pole the variation itself may be so large, or hide what is: the deviation tells, but where no needle points anywhere.
  const blackout = variation.source !== 'none' && variation.zone === 'blackout';
  const turned = Math.abs(split.error) > 90 || blackout ? split.error : (deviation ?? 0);
  const otherSide = Math.abs(turned) > 90 && Math.abs(deviation ?? turned) > 90;
  if (otherSide) cautions.push(warning('other-side', { error: quantity(turned, 'error') }));
  // On the other side of the compass neither gyro nor deviation is to blame: one warning says it.
  if (split.compass === 'gyro') return otherSide ? cautions : gyroCautions(split);
  if (variation.source === 'none') cautions.push(warning('variation-missing'));
  if (variation.source === 'none' || deviation === null) return cautions;
  if (blackout) cautions.push(warning('blackout-zone'));
  if (variation.zone === 'caution') cautions.push(warning('caution-zone'));
  const slip = variation.source === 'given' ? variationSlip(variation.value, variation.modelled, variation.sigma) : [];
  cautions.push(...slip);
  // An error that the card foretells needs no slip to explain it.
  const telling = Math.abs(variation.value) >= TELLING_VARIATION && (difference === null || Math.abs(difference) > ODD_BESIDE_CARD);
  const looksLikeGyro = telling && Math.abs(split.error) < MIX_UP;
  const signTurned = telling && Math.abs(wrap180(split.error + variation.value)) < MIX_UP;
  if (looksLikeGyro) cautions.push(warning('looks-like-gyro', { variation: quantity(variation.value, 'error') }));
  else if (signTurned && slip.length === 0) cautions.push(warning('variation-turned', { variation: quantity(variation.value, 'error') }));
  if (otherSide) return cautions;
  // A slip named leads; what follows of it is not a second warning.
  const explained = looksLikeGyro || signTurned || slip.length > 0;
  const unusual = UNUSUAL_DEVIATION[variation.zone ?? 'normal'];
  if (Math.abs(difference ?? deviation) > HARDLY_REAL * unusual && !explained) {
    cautions.push(warning('deviation-unreal', { deviation: quantity(deviation, 'error') }));
  } else if (difference !== null && cardDeviation !== null) {
    const size = { difference: quantity(difference, 'error'), doubt: quantity(doubt, 'angle') };
    if (Math.abs(difference) > Math.max(ODD_BESIDE_CARD, 2 * doubt)) cautions.push((explained ? note : warning)('far-from-card', size));
    else if (Math.abs(difference) > 2 * doubt) cautions.push(warning('beyond-doubt-of-card', size));
    else cautions.push(note('within-doubt-of-card', size));
  } else if (Math.abs(deviation) > Math.max(unusual, 2 * doubt) && !explained) {
    cautions.push(warning('deviation-large', { deviation: quantity(deviation, 'error') }));
  }
  return cautions;
}
