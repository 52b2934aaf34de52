import { roundTo } from '../angle/format-angle.js';
import { atan2Degrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';
import { magneticField } from '../field/magnetic-field.js';
import { hardIronPolarity, permanentFromSlip } from '../iron/building-slip.js';
import { exactCoefficients } from '../iron/exact-coefficients.js';
import { inducedPolarity } from '../iron/induced-polarity.js';
import { compassKinds } from '../sight/compass-kind.js';
import { anyInstant, anyPlace } from './any-sight.js';
import type { Chance } from './chance.js';
import { redEndQuestion } from './corrector-question.js';
import type { Draft, Given, Level } from './exercise.js';
import { given, givenWord } from './given.js';
import { choiceQuestion } from '../answer/make-question.js';

const opposite = { red: 'blue', blue: 'red', east: 'west', west: 'east' } as const;

/** A choice of two, where the other one has one reason. */
function eitherOr(code: string, answer: keyof typeof opposite, mistake: string): Draft['asked'] {
  const other = opposite[answer];
  return [choiceQuestion(code, [answer, other].sort(), answer, [{ code: mistake, value: other }])];
}

/** A field somewhere well off the magnetic equator, nanotesla. */
function anyField(chance: Chance): { h: number; z: number } | null {
  const { h, z } = magneticField(anyPlace(chance, 15, 60), anyInstant(chance));
  return Math.abs(z) > h / 2 && h > 6000 ? { h, z } : null;
}

const givenDip = (code: string, field: { h: number; z: number }): Given => given(code, roundTo(atan2Degrees(field.z, field.h), 0), 'angle');

/** Is the error east or west? Compass least, error east. */
function nameOfError(chance: Chance): Draft {
  const compass = chance.pick(compassKinds);
  const trueBearing = chance.between(0, 359);
  const error = compass === 'gyro' ? chance.either(1, 4) : chance.either(2, 25);
  return {
    task: `polarity.error-${compass}`,
    givens: [given('trueBearingOfMark', trueBearing, 'bearing'), given(compass === 'gyro' ? 'gyroBearing' : 'compassBearing', wrap360(trueBearing - error), 'bearing')],
    asked: eitherOr('nameOfError', error > 0 ? 'east' : 'west', 'error-name'),
    steps: [],
  };
}

/** The colour of one end of an upright or level piece of soft iron. */
function inducedColour(chance: Chance, level: Level): Draft | null {
  const field = anyField(chance);
  if (!field) return null;
  if (level === 1) {
    const piece = chance.pick(['mast', 'funnel'] as const);
    const end = chance.pick(['top', 'foot'] as const);
    const answer = inducedPolarity(field, 0)[piece][end];
    const givens = [givenDip('dip', field), givenWord('piece', `piece.${piece}.${end}`)];
    return answer && { task: 'polarity.upright', givens, asked: eitherOr('colour', answer, 'hemisphere'), steps: [] };
  }
  const heading = chance.below(8) * 45 + chance.pick([0, 10, 20]);
  const polarity = inducedPolarity(field, heading);
  const [piece, end, answer] = chance.pick([
    ['keel', 'bow', polarity.keel.bow],
    ['keel', 'stern', polarity.keel.stern],
    ['beam', 'port', polarity.beam.port],
    ['beam', 'starboard', polarity.beam.starboard],
  ] as const);
  if (!answer) return null;
  return {
    task: 'polarity.level',
    givens: [given('magneticHeading', heading, 'bearing'), givenWord('piece', `piece.${piece}.${end}`)],
    asked: eitherOr('colour', answer, 'opposite-end'),
    steps: [],
  };
}

/** The colour the slip left in a part of the hull, to be found again in any other hemisphere. */
function colourOfSlip(chance: Chance): Draft | null {
  const [slip, now] = [anyField(chance), anyField(chance)];
  if (!slip || !now || Math.sign(slip.z) === Math.sign(now.z)) return null;
  const answer = hardIronPolarity({ magneticHeading: 0, field: slip }).deck.upper;
  if (!answer) return null;
  return {
    task: 'polarity.slip-deck',
    givens: [givenDip('dipOfSlip', slip), givenDip('dip', now)],
    asked: eitherOr('colour', answer, 'hard-as-soft'),
    steps: [],
  };
}

const coefficientOptions = ['+B', '−B', '+C', '−C'] as const;

/** The semicircular coefficient of a ship built on a cardinal heading. */
function coefficientOfSlip(chance: Chance): Draft | null {
  const field = anyField(chance);
  if (!field) return null;
  const magneticHeading = chance.below(4) * 90;
  const { B, C } = exactCoefficients(permanentFromSlip({ magneticHeading, field }), field);
  const [b, c] = [B ?? 0, C ?? 0];
  const name = Math.abs(b) > Math.abs(c) ? 'B' : 'C';
  const sign = (name === 'B' ? b : c) > 0 ? '+' : '−';
  const turned = sign === '+' ? '−' : '+';
  const other = name === 'B' ? 'C' : 'B';
  return {
    task: 'polarity.slip-coefficient',
    givens: [given('slipHeading', magneticHeading, 'bearing')],
    asked: [
      choiceQuestion('coefficient', coefficientOptions, `${sign}${name}`, [
        { code: 'coefficient-sign', value: `${turned}${name}` },
        { code: 'other-coefficient', value: `${sign}${other}` },
        { code: 'other-coefficient-and-sign', value: `${turned}${other}` },
      ]),
    ],
    steps: [],
  };
}

/** Names of errors, colours of iron, signs of coefficients, and which way a corrector goes. */
export function polarityExercise(chance: Chance, level: Level): Draft | null {
  if (level === 1) return chance.below(2) === 0 ? nameOfError(chance) : inducedColour(chance, 1);
  if (level === 2) return chance.below(2) === 0 ? inducedColour(chance, 2) : coefficientOfSlip(chance);
  return chance.below(3) === 0 ? colourOfSlip(chance) : redEndQuestion(chance);
}
