import { expect } from '@open-wc/testing';
import { drillMessages } from '../../../components/drill/drill-messages.js';
import { sharedMessages } from '../../../components/shared/shared-messages.js';
import { exerciseKinds, levels } from '../../../core/drill/exercise.js';
import type { Exercise } from '../../../core/drill/exercise.js';
import { exerciseFrom } from '../../../core/drill/generate.js';

/** Every catalogue key an exercise can lead to. */
function keysOf({ kind, task, givens, asked, steps }: Exercise): string[] {
  const words = givens.flatMap(({ value }) => (value.is === 'word' && !value.word.startsWith('body.') ? [`drill.word.${value.word}`] : []));
  const columns = givens.flatMap(({ value }) => (value.is === 'table' ? value.columns.map(({ code }) => `drill.column.${code}`) : []));
  const options = asked.flatMap((question) => (question.is === 'choice' ? question.options.map((option) => `drill.option.${option}`) : []));
  return [
    `drill.kind.${kind}`,
    `drill.task.${task}`,
    `drill.hint.${kind}`,
    ...(steps.length === 0 ? [`drill.rule.${task}`] : []),
    ...givens.map(({ code }) => `drill.given.${code}`),
    ...words,
    ...columns,
    ...options,
    ...asked.map(({ code }) => `drill.asked.${code}`),
    ...asked.flatMap(({ distractors }) => distractors.map(({ code }) => `drill.mistake.${code}`)),
    ...steps.map(({ code }) => `step.${code}`),
  ];
}

describe('the words of the drill', () => {
  it('say all that two thousand exercises lead to', () => {
    const keys = new Set<string>();
    for (const kind of exerciseKinds) {
      for (const level of levels) {
        for (let index = 0; index < 80; index++) for (const key of keysOf(exerciseFrom({ kind, level, seed: `words-${index}` }))) keys.add(key);
      }
    }
    const unsaid = [...keys].filter((key) => drillMessages[key] === undefined && sharedMessages[key] === undefined);
    expect(unsaid).to.deep.equal([]);
    expect(keys.size).to.be.greaterThan(200);
  });
});
