import { checkCard } from '../deviation/check-card.js';
import { deviationCurve } from '../deviation/deviation-curve.js';
import type { Chain } from './chain.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { ConversionInput } from './conversion.js';
import { variationSlip } from './variation-slip.js';
import { ABSURD_DEVIATION, ODD_GYRO_ERROR } from './odd-errors.js';

/** A value this near to what a card says is taken from it; one this far is not: degrees, common practice, no source. */
const NEAR = 0.3;
const FAR = 1;

/**
 * Above this the five terms themselves err by a degree and more, degrees: our own count over 60 ships has 0.5° as the middle of their worst misfits
 * at 16°, and 1.7° as the worst; the Elementary Manual for the Deviations of the Compass has 1°30′ at 21°.
 */
const FIVE_TERMS = 15;

/** What of a card's own faults matters to a conversion. */
const ofCard = new Set(['slope-too-steep', 'lost-headings', 'half-of-compass', 'wide-gap']);

/** A typed deviation that the card gives for the bearing and not for the head: the classic mistake. */
function takenForBearing({ deviation, cardBeside, bearing }: ConversionInput, { head, values }: Chain): Caution[] {
  if (typeof deviation !== 'number' || !cardBeside || !bearing || head.compass === null || values.compass === null) return [];
  const curve = deviationCurve(cardBeside);
  const [ofHead, ofBearing] = [curve.at(head.compass), curve.at(values.compass)];
  if (ofHead === null || ofBearing === null) return [];
  if (Math.abs(deviation - ofBearing) > NEAR || Math.abs(deviation - ofHead) < FAR) return [];
  return [warning('taken-for-bearing', { deviation: quantity(deviation, 'error'), ofHead: quantity(ofHead, 'error') })];
}

/** How much it would matter to enter the card with the bearing. */
function belongsToHead({ deviation, bearing }: ConversionInput, { values, deviation: found }: Chain): Caution[] {
  if (typeof deviation !== 'object' || deviation === null || !bearing || values.compass === null || found === null) return [];
  const ofBearing = deviationCurve(deviation).at(values.compass);
  if (ofBearing === null || Math.abs(ofBearing - found) < FAR) return [];
  return [note('belongs-to-head', { deviation: quantity(found, 'error'), ofBearing: quantity(ofBearing, 'error') })];
}

/** A typed deviation with the card's size for the head and the other name. */
function wrongName({ deviation, cardBeside }: ConversionInput, { head }: Chain): Caution[] {
  if (typeof deviation !== 'number' || !cardBeside || head.compass === null) return [];
  const ofHead = deviationCurve(cardBeside).at(head.compass);
  if (ofHead === null || Math.abs(ofHead) < FAR || Math.abs(deviation + ofHead) > NEAR) return [];
  return [warning('wrong-name', { deviation: quantity(deviation, 'error'), ofHead: quantity(ofHead, 'error') })];
}

/** What is odd about a conversion, by code. */
export function conversionCautions(input: ConversionInput, chain: Chain): readonly Caution[] {
  const { deviation } = chain;
  const cautions = [...takenForBearing(input, chain), ...wrongName(input, chain), ...belongsToHead(input, chain)];
  if (deviation !== null && Math.abs(deviation) > ABSURD_DEVIATION) cautions.push(warning(typeof input.deviation === 'number' ? 'deviation-beyond' : 'deviation-beyond-by-card', { deviation: quantity(deviation, 'error') }));
  if (input.variation !== null) cautions.push(...variationSlip(input.variation, input.modelledVariation?.value, input.modelledVariation?.sigma));
  if (input.zone === 'blackout') cautions.push(warning('blackout-zone'));
  if (input.zone === 'caution') cautions.push(warning('caution-zone'));
  if (input.gyroError !== null && Math.abs(input.gyroError) > ODD_GYRO_ERROR) cautions.push(warning('gyro-error-beyond', { error: quantity(input.gyroError, 'error') }));
  if (typeof input.deviation === 'object' && input.deviation !== null) {
    const { largest, cautions: found } = checkCard(input.deviation);
    cautions.push(...found.filter(({ code }) => ofCard.has(code)));
    const size = Math.abs(largest.deviation);
    if (input.deviation.kind === 'approximate' && size > FIVE_TERMS) cautions.push(note('five-terms', { largest: quantity(size, 'angle') }));
  }
  return cautions;
}
