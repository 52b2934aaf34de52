import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { roundTo } from '../../../core/angle/format-angle.js';
import { exerciseKinds, levels } from '../../../core/drill/exercise.js';
import type { Exercise, ExerciseKind } from '../../../core/drill/exercise.js';
import type { AnswerForm, Question } from '../../../core/answer/question.js';
import { exerciseFrom } from '../../../core/drill/generate.js';
import { markAnswer } from '../../../core/answer/mark.js';
import { exerciseScore } from '../../../core/drill/score.js';
import { evaluate } from '../../../core/working/evaluate.js';
import type { Step } from '../../../core/working/step.js';
import { checkFigures, checkPossible } from './possible.js';
import { solve } from './solve.js';

/** Nine kinds and three levels make 10,017 of these. */
const EACH = 371;

/** The tasks of each kind by level: each of them is set. */
const sights = (kind: string): string[][] => [
  [`${kind}.magnetic`, `${kind}.gyro`],
  [`${kind}.deviation`, `${kind}.gyro`],
  [`${kind}.deviation`, `${kind}.gyro`],
];
const tasksOf: Readonly<Record<ExerciseKind, readonly (readonly string[])[]>> = {
  conversion: [
    ['compass-to-true', 'true-to-compass', 'gyro-to-true', 'true-to-gyro'],
    ['compass-to-true-by-card', 'bearing-compass-to-true'],
    ['true-to-compass-by-card', 'bearing-true-to-compass', 'gyro-against-magnetic'],
  ].map((tasks) => tasks.map((task) => `conversion.${task}`)),
  'chart-variation': [['chart-variation'], ['chart-variation'], ['chart-variation']],
  card: [['card.compass'], ['card.compass'], ['card.magnetic']],
  amplitude: sights('amplitude'),
  azimuth: sights('azimuth'),
  transit: [...sights('transit').slice(0, 2), ['transit.deviation.marks', 'transit.gyro.marks']],
  coefficients: [['coefficients.two'], ['coefficients.five'], ['coefficients.deviation']],
  polarity: [
    ['polarity.error-magnetic', 'polarity.error-gyro', 'polarity.upright'],
    ['polarity.level', 'polarity.slip-coefficient'],
    ['polarity.slip-deck', 'polarity.corrector-below', 'polarity.corrector-end-on'],
  ],
  latitude: [['latitude.permanent-B', 'latitude.permanent-C'], ['latitude.induced-B'], ['latitude.separated-B']],
};

/** As a learner types it: three figures, or a letter. */
function typed(form: AnswerForm, value: number): string {
  if (form === 'bearing') return value.toFixed(2).padStart(6, '0');
  if (form === 'signed') return `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(2)}`;
  return `${Math.abs(value).toFixed(2)}${value < 0 ? 'W' : 'E'}`;
}

const textOf = (question: Question, value: number | string): string =>
  question.is === 'number' ? typed(question.form, Number(value)) : String(value);

const missBetween = (form: AnswerForm, a: number, b: number): number =>
  form === 'signed' ? Math.abs(a - b) : Math.abs(((((a - b) % 360) + 540) % 360) - 180);

function checkKeyAndMistakes(exercise: Exercise): void {
  const key = Object.fromEntries(exercise.asked.map((question) => [question.code, textOf(question, question.answer)]));
  assert.equal(exerciseScore(exercise, key), 1, `${exercise.id}: its own key`);
  for (const question of exercise.asked) {
    for (const { code, value } of question.distractors) {
      const mark = markAnswer(question, textOf(question, value));
      assert.equal(mark.outcome === 'wrong' && mark.mistake, code, `${exercise.id} ${question.code}: ${value} for ${question.answer}`);
    }
    if (question.is === 'choice') {
      assert.equal(question.options.filter((option) => markAnswer(question, option).outcome === 'right').length, 1, exercise.id);
      assert.equal(new Set(question.options).size, question.options.length, exercise.id);
    }
  }
}

/** What the learner is told leads to the key: the exercise can be answered, and in one way only. */
function checkAgainstTold(exercise: Exercise): number {
  const solved = solve(exercise);
  let worst = 0;
  for (const question of exercise.asked) {
    const found = solved[question.code];
    assert.notEqual(found, undefined, `${exercise.id}: ${question.code} is not solved`);
    if (question.is === 'choice') assert.equal(found, question.answer, exercise.id);
    else {
      const miss = missBetween(question.form, Number(found), question.answer);
      worst = Math.max(worst, miss / question.tolerance);
      // Compasses are read to the half degree, and answers given so (common practice).
      const rounded = Math.round(Number(found) * 2) / 2;
      assert.ok(missBetween(question.form, rounded, question.answer) <= question.tolerance + 1e-9, `${exercise.id}: ${question.code} to the half degree, ${rounded}, is no ${question.answer}`);
    }
  }
  return worst;
}

/** Each line of the working is right by itself, and the last one is an answer. */
function checkWorking({ id, steps, asked }: Exercise): void {
  for (const { expression, values, result, code } of steps) {
    if (!expression) continue;
    const numbers = Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));
    const miss = missBetween('error', evaluate(expression, numbers), result.value);
    assert.ok(miss < 1e-6, `${id} ${code}: off by ${miss}`);
  }
  const results = asked.flatMap((question) => (question.is === 'number' && question.part === 'result' ? [question] : []));
  // An answer is rounded to the hundredth, downwards before a five: its tenth is that of the line.
  for (const { answer } of results) {
    const gives = ({ result }: Step): boolean => missBetween('error', result.value, answer) < 0.0101 && missBetween('error', roundTo(result.value, 1), roundTo(answer, 1)) < 1e-6;
    assert.ok(steps.some(gives), `${id}: no line gives ${answer}`);
  }
}

describe('ten thousand exercises', () => {
  const ids = new Set<string>();
  for (const kind of exerciseKinds) {
    for (const level of levels) {
      it(`of ${kind}, level ${level}, are answerable from what is told, have one answer, and name each mistake`, (context) => {
        let worst = 0;
        const tasks = new Set<string>();
        for (let index = 0; index < EACH; index++) {
          const exercise = exerciseFrom({ kind, level, seed: `test-${index}` });
          ids.add(exercise.id);
          tasks.add(exercise.task);
          checkFigures(exercise);
          checkPossible(exercise);
          checkKeyAndMistakes(exercise);
          checkWorking(exercise);
          const off = checkAgainstTold(exercise);
          worst = Math.max(worst, off);
          assert.ok(off < 0.5, `${exercise.id}: from what is told it is ${off} tolerances off`);
        }
        assert.deepEqual([...tasks].sort(), [...tasksOf[kind][level - 1] ?? []].sort());
        context.diagnostic(`worst ${worst.toFixed(3)} of the tolerance`);
      });
    }
  }

  // By straight lines, to the half degree, 13° E was marked wrong where the curve through the card's rows had 13.42°.
  it('read a card by straight lines as well as by its curve', () => {
    const bent = [[2, 'x0'], [2, 'x228'], [3, 'x11'], [3, 'x668'], [3, 'x1951']] as const;
    for (const [level, seed] of bent) assert.ok(checkAgainstTold(exerciseFrom({ kind: 'card', level, seed })) <= 0.5, seed);
  });

  it('are that many', () => assert.ok(ids.size >= 10_000, String(ids.size)));
});
