import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { exerciseKinds, levels } from '../../../core/drill/exercise.js';
import type { Exercise, ExerciseKind, Given, GivenValue } from '../../../core/drill/exercise.js';
import { exerciseFrom } from '../../../core/drill/generate.js';
import { solve } from './solve.js';

/** The same exercise with some of what is told taken wrongly. */
function taken(exercise: Exercise, changes: Readonly<Record<string, (value: GivenValue) => GivenValue>>): Exercise {
  const change = ({ code, value }: Given): Given => ({ code, value: changes[code]?.(value) ?? value });
  return { ...exercise, givens: exercise.givens.map(change) };
}

const number =
  (to: (value: number) => number) =>
  (value: GivenValue): GivenValue =>
    value.is === 'quantity' ? { is: 'quantity', quantity: { ...value.quantity, value: to(value.quantity.value) } } : value;
const text =
  (to: (value: string) => string) =>
  (value: GivenValue): GivenValue =>
    value.is === 'text' ? { is: 'text', text: to(value.text) } : value.is === 'word' ? { is: 'word', word: to(value.word) } : value;
/** The last column of a card or a swing. */
const column =
  (to: (value: number) => number) =>
  (value: GivenValue): GivenValue =>
    value.is === 'table' ? { ...value, rows: value.rows.map((row) => [...row.slice(0, -1), to(row[row.length - 1] ?? NaN)]) } : value;
const turned = number((value) => -value);
const left = number(() => 0);
const swapped = (one: string, other: string) => text((word) => (word.endsWith(one) ? word.replace(one, other) : word.replace(other, one)));
const told = ({ givens }: Exercise, code: string): number => {
  const value = givens.find((each) => each.code === code)?.value;
  return value?.is === 'quantity' ? value.quantity.value : NaN;
};
const equal = (exercise: Exercise, from: string) => number(() => told(exercise, from));

type Answers = ReturnType<typeof solve>;
type Mistake = (exercise: Exercise) => Answers | null;
const wrongly = (changes: Parameters<typeof taken>[1]): Mistake => (exercise) => solve(taken(exercise, changes));

/** What is made of the right numbers. */
const ofRight =
  (to: (value: number, exercise: Exercise) => number, only?: readonly string[]): Mistake =>
  (exercise) =>
    Object.fromEntries(Object.entries(solve(exercise)).map(([code, value]) => [code, only?.includes(code) === false ? NaN : to(Number(value), exercise)]));
/** A card is entered the other way where a course is made compass: the deviation found there is then the right one. */
const butToCompass =
  (mistake: Mistake): Mistake =>
  (exercise) =>
    ['conversion.true-to-compass-by-card', 'card.magnetic'].includes(exercise.task) ? null : mistake(exercise);
/** Of the true bearing, and with it of all that follows. */
const ofBearing =
  (to: (trueBearing: number, exercise: Exercise) => number): Mistake =>
  (exercise) => {
    const right = solve(exercise);
    const off = to(Number(right['trueBearing']), exercise) - Number(right['trueBearing']);
    return Object.fromEntries(Object.entries(right).map(([code, value]) => [code, Number(value) + off]));
  };

/**
 * What each mistake makes of an exercise, by the sentence that explains it to the learner: the
 * exercise is worked out by the tests' own arithmetic with one thing taken wrongly.
 */
const mistakes: Readonly<Record<string, Mistake>> = {
  'declination-name': wrongly({ declination: turned, almanac: column((value) => -value) }),
  'latitude-name': wrongly({ latitude: turned }),
  'longitude-sign': wrongly({ longitude: turned }),
  'rising-for-setting': wrongly({ event: swapped('rising', 'setting') }),
  'zone-time': wrongly({ zoneDescription: text(() => '+0 h') }),
  'increment-forgotten': wrongly({ zoneTime: text((time) => time.replace(/:\d\d:\d\d$/, ':00:00')) }),
  // Equal latitudes but for their difference, on the equator: no cosine.
  'no-departure': (exercise) =>
    solve(taken(exercise, { frontLatitude: left, rearLatitude: number((rear) => rear - told(exercise, 'frontLatitude')) })),
  'variation-sign': wrongly({ variation: turned }),
  'variation-omitted': wrongly({ variation: left }),
  'error-for-deviation': wrongly({ variation: left }),
  'deviation-omitted': wrongly({ deviation: left, card: column(() => 0) }),
  // Variation and deviation exchanged: the sum is the same, the magnetic course is not.
  'other-step': (exercise) => solve(taken(exercise, { variation: equal(exercise, 'deviation'), deviation: equal(exercise, 'variation') })),
  'gyro-omitted': wrongly({ gyroError: left }),
  'gyro-sign': wrongly({ gyroError: turned }),
  'change-direction': wrongly({ changeDirection: swapped('increasing', 'decreasing') }),
  'change-forgotten': wrongly({ annualChange: left }),
  // Six minutes a year for six tenths of a degree.
  'minutes-as-degrees': wrongly({ annualChange: number((minutes) => minutes * 6) }),
  'deviation-of-bearing': (exercise) => {
    const bearing = ['bearingBeside', 'compassBearing', 'trueBearing'].map((code) => told(exercise, code)).find(Number.isFinite) ?? NaN;
    return exercise.task === 'card.magnetic' ? null : solve(taken(exercise, { headOfShip: number(() => bearing) }));
  },
  sign: (exercise) => (exercise.task.includes('gyro-to') || exercise.task.includes('to-gyro') ? solve(taken(exercise, { gyroError: turned })) : ofRight((value) => -value)(exercise)),
  'through-zero': ofRight((value) => -value),
  'coefficient-sign': ofRight((value) => -value),
  // B and C are half a difference, A, D and E part of a sum.
  'not-halved': ofRight((value) => 2 * value, ['coefficientB', 'coefficientC']),
  'divided-by-half': ofRight((value) => 2 * value, ['coefficientA', 'coefficientD', 'coefficientE']),
  // The opposite heading stands twelve rows on.
  'opposite-heading': butToCompass((exercise) =>
    exercise.kind === 'coefficients' ? null : solve(taken(exercise, { card: (value) => (value.is === 'table' ? { ...value, rows: value.rows.map(([heading = NaN], row, { length }) => [heading, value.rows[(row + length / 2) % length]?.[1] ?? NaN]) } : value) })),
  ),
  // Compass less true for true less compass.
  'compass-less-true': ofRight((deviation, exercise) => -(deviation + told(exercise, 'variation')) - told(exercise, 'variation')),
  'deviation-sign': butToCompass(wrongly({ deviation: turned, card: column((value) => -value) })),
  'both-signs': butToCompass(wrongly({ variation: turned, deviation: turned, card: column((value) => -value) })),
  reciprocal: ofBearing((bearing) => bearing + 180),
  'east-for-west': ofBearing((bearing) => -bearing),
  'longitude-name': ofBearing((bearing) => -bearing),
  'from-other-pole': ofBearing((bearing) => 180 - bearing),
  'amplitude-as-bearing': ofBearing((bearing) => Math.abs(bearing < 180 ? 90 - bearing : bearing - 270)),
  'no-latitude': ofBearing((bearing, exercise) => (bearing < 180 ? 90 - told(exercise, 'declination') : 270 + told(exercise, 'declination'))),
  'place-ignored': (exercise) => {
    const before = told(exercise, exercise.level === 3 ? 'coefficient2' : 'coefficient1');
    return { coefficientB: before, coefficientC: before };
  },
  hemisphere: (exercise) => solve(taken(exercise, exercise.level === 3 ? { Z3: number(Math.abs) } : { Z2: turned })),
  'as-if-permanent': (exercise) => {
    const to = exercise.level === 3 ? 3 : 2;
    return { coefficientB: (told(exercise, 'coefficient1') * told(exercise, 'H1')) / told(exercise, `H${to}`) };
  },
  'as-if-induced': (exercise) => {
    const tangent = (place: number): number => told(exercise, `Z${place}`) / told(exercise, `H${place}`);
    return { coefficientB: (told(exercise, 'coefficient1') * tangent(3)) / tangent(1) };
  },
  'vertical-only': (exercise) => solve(taken(exercise, { H2: equal(exercise, 'H1') })),
  'ratio-inverted': (exercise) =>
    solve(taken(exercise, { H1: equal(exercise, 'H2'), H2: equal(exercise, 'H1'), Z1: equal(exercise, 'Z2'), Z2: equal(exercise, 'Z1') })),
};

/** The mistakes that each kind knows by their numbers; none has been lost. */
const known: Readonly<Record<ExerciseKind, string>> = {
  conversion:
    'both-signs compass-less-true deviation-of-bearing deviation-omitted deviation-sign error-for-deviation gyro-omitted gyro-sign opposite-heading other-step sign true-as-compass variation-omitted variation-sign',
  'chart-variation': 'change-direction change-forgotten minutes-as-degrees sign through-zero',
  card: 'card-backwards deviation-of-bearing deviation-omitted deviation-sign magnetic-as-compass opposite-heading row-after row-before sign',
  amplitude: 'amplitude-as-bearing compass-less-true declination-name error-for-deviation no-latitude rising-for-setting sign variation-sign wrong-horizon',
  azimuth:
    'compass-less-true declination-name east-for-west error-for-deviation from-other-pole increment-forgotten latitude-name longitude-sign sign variation-sign zone-time',
  transit: 'compass-less-true error-for-deviation longitude-name no-departure reciprocal sign variation-sign',
  coefficients: 'coefficient-sign divided-by-half not-halved opposite-heading other-coefficient quadrantal-forgotten sign signs-ignored sine-for-cosine',
  polarity: '',
  latitude: 'as-if-induced as-if-permanent coefficient-sign hemisphere place-ignored ratio-inverted vertical-only',
};

/** How far an answer lies from a mistake's, in degrees; round the seam. */
const apart = (a: number, b: number): number => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

describe('a mistake that is named', () => {
  for (const kind of exerciseKinds) {
    it(`leads to the number it is known by: ${kind}`, () => {
      const met = new Set<string>();
      for (const level of levels) {
        for (let index = 0; index < 30; index++) {
          const exercise = exerciseFrom({ kind, level, seed: `mistake-${index}` });
          for (const question of exercise.asked) {
            if (question.is !== 'number') continue;
            for (const { code, value } of question.distractors) {
              met.add(code);
              const made = mistakes[code]?.(exercise)?.[question.code];
              if (made === undefined) continue;
              // So near a mistake an answer is told by its name.
              assert.ok(apart(Number(made), value) < question.tolerance / 2, `${exercise.id} ${question.code} ${code}: ${made}, not ${value}`);
            }
          }
        }
      }
      assert.equal([...met].sort().join(' '), known[kind]);
    });
  }
});
