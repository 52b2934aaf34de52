import { wrap360 } from '../../core/angle/wrap.js';
import type { AmplitudeObservation } from '../../core/sight/amplitude-observation.js';
import { expectedError } from '../../core/sight/expected-error.js';
import { variationSource } from '../../core/sight/variation-source.js';
import { formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** Where the magnetic compass should show the body, in words: where to look before it is up. Empty where the variation is not known. */
export function expectedBearingText(
  host: LubberElement,
  { latitude, longitude, instant }: Pick<AmplitudeObservation, 'latitude' | 'longitude' | 'instant'>,
  trueBearing: number,
  { compass, variation, cardDeviation }: Pick<AmplitudeObservation, 'compass' | 'variation' | 'cardDeviation'>,
): string {
  if (compass === 'gyro') return '';
  const source = variationSource({ latitude, longitude }, instant, variation);
  const expected = expectedError({ compass, variation: source, deviation: null, cardDeviation: cardDeviation ?? null, difference: null });
  if (source.source === 'none' || !expected) return '';
  return host.t(cardDeviation === undefined ? 'amplitude.expected.undeviated' : 'amplitude.expected', {
    bearing: formatBearing(wrap360(trueBearing - expected.error)),
    variation: formatError(source.value),
    deviation: formatError(cardDeviation ?? 0),
  });
}
