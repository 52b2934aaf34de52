import { wrap180, wrap360 } from '../angle/wrap.js';
import { compassError } from '../sight/compass-error.js';
import type { CompassName, EntryFields, MagneticCompass } from './entry.js';

const headOf = { gyro: 'headingGyro', standard: 'headingStandard', steering: 'headingSteering' } as const;
const errorOf = { gyro: 'errorGyro', standard: 'errorStandard', steering: 'errorSteering' } as const;

type Mutable = { -readonly [Name in keyof EntryFields]: EntryFields[Name] };

/** The error of the compass the bearing was taken by. */
function fromBearing(fields: Mutable): void {
  const { bearingBy, bearing, trueBearing } = fields;
  if (bearingBy === null || bearing === null || trueBearing === null) return;
  fields[errorOf[bearingBy]] ??= compassError({ trueBearing, compassBearing: bearing }).error;
}

/** One look at all compasses: the head by one whose error is known gives the true head, and that the errors of the others. */
function fromHeads(fields: Mutable): void {
  const order: readonly CompassName[] = fields.bearingBy ? [fields.bearingBy, 'gyro', 'standard', 'steering'] : ['gyro', 'standard', 'steering'];
  const known = order.find((name) => fields[headOf[name]] !== null && fields[errorOf[name]] !== null);
  if (!known) return;
  const trueHead = wrap360((fields[headOf[known]] as number) + (fields[errorOf[known]] as number));
  for (const name of ['gyro', 'standard', 'steering'] as const) {
    const head = fields[headOf[name]];
    if (head !== null) fields[errorOf[name]] ??= wrap180(trueHead - head);
  }
}

/**
 * Works out what follows from what was read: the error of each compass, the deviation, and
 * its difference from the card. What is there already stays. `watched` is the compass whose
 * deviation is kept.
 */
export function completeDraft(given: EntryFields, watched: MagneticCompass = 'standard'): EntryFields {
  const fields: Mutable = { ...given };
  const kind = given.kind === 'correction' ? given.replacement : given.kind;
  if (kind !== 'observation') return fields;
  fromBearing(fields);
  fromHeads(fields);
  const compass = fields.deviationOf ?? watched;
  const error = fields[errorOf[compass]];
  if (fields.deviation === null && error !== null && fields.variation !== null) fields.deviation = wrap180(error - fields.variation);
  if (fields.deviation === null) return fields;
  fields.deviationOf = compass;
  if (fields.cardDeviation !== null) fields.difference ??= wrap180(fields.deviation - fields.cardDeviation);
  return fields;
}
