import assert from 'node:assert/strict';
import { test } from 'node:test';
import { inlineNumbers } from '../../components/build/inline-numbers.js';

const cases: readonly (readonly [what: string, from: string, to: string])[] = [
  ['stands where its name stood, and its comment goes', "import { a } from './a.js';\n/** Why. */\nconst MOST = 1_000;\nexport const b = a(MOST) + MOST;", "import { a } from './a.js';\nexport const b = a(1_000) + 1_000;"],
  ['below nought stands in brackets, and so does one that is asked for something', 'const LEAST = -3, OTHER = 1;\nconst LOW = -3;\nconst HIGH = 7;\nf(2 -LOW, HIGH.toFixed(1));', 'const LEAST = -3, OTHER = 1;\nf(2 -(-3), (7).toFixed(1));'],
  ['is a property of its name', 'const WIDE = 520;\nf({ WIDE, WIDE: 1 }, { WIDE: WIDE }, g.WIDE);', 'f({ WIDE: 520, WIDE: 1 }, { WIDE: 520 }, g.WIDE);'],
  ['stays where it is exported', 'export const A = 1;\nconst B = 2;\nexport { B };\nf(A, B);', 'export const A = 1;\nconst B = 2;\nexport { B };\nf(1, B);'],
  ['keeps its name where that is declared again', 'const A = 1;\nconst f = (A) => A + 1;\nf(A);', 'const A = 1;\nconst f = (A) => A + 1;\nf(A);'],
  ['what changes or is no number stays', "let a = 1;\na = 2;\nconst b = 'c', d = [1];\nf(a, b, d);", "let a = 1;\na = 2;\nconst b = 'c', d = [1];\nf(a, b, d);"],
];

const inlined = (source: string): string | undefined => inlineNumbers(new Map([['self.js', source]])).get('self.js');

for (const [what, from, to] of cases) test(`a number: ${what}`, () => assert.equal(inlined(from)?.trimStart(), to));

test('a number: is reckoned with where it is imported, by whatever name', () => {
  const sources = new Map([
    ['core/a.js', "import { DOZEN } from './b.js';\nexport const GROSS = DOZEN * 12;\nconst HALF = GROSS / -2;\nf(HALF, GROSS);"],
    ['core/b.js', 'export const DOZEN = 12;\nexport const list = [DOZEN];'],
    ['components/c/c.js', "import { GROSS as MANY, list } from '../../core/a.js';\nf(MANY, list);"],
  ]);
  assert.deepEqual(
    [...inlineNumbers(sources).values()],
    [
      "import { DOZEN } from './b.js';\nexport const GROSS = 12 * 12;\nf(((12*12)/(-2)), (12*12));",
      'export const DOZEN = 12;\nexport const list = [12];',
      "import { GROSS as MANY, list } from '../../core/a.js';\nf((12*12), list);",
    ],
  );
});
