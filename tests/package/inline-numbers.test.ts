import assert from 'node:assert/strict';
import { test } from 'node:test';
import { inlineNumbers } from '../../components/build/inline-numbers.js';

const cases: readonly (readonly [what: string, from: string, to: string])[] = [
  ['stands where its name stood, and its comment goes', "import { a } from './a.js';\n/** Why. */\nconst MOST = 1_000;\nexport const b = a(MOST) + MOST;", "import { a } from './a.js';\nexport const b = a(1_000) + 1_000;"],
  ['below nought stands in brackets, and so does one that is asked for something', 'const LEAST = -3, OTHER = 1;\nconst LOW = -3;\nconst HIGH = 7;\nf(2 -LOW, HIGH.toFixed(1));', 'const LEAST = -3, OTHER = 1;\nf(2 -(-3), (7).toFixed(1));'],
  ['is a property of its name', 'const WIDE = 520;\nf({ WIDE, WIDE: 1 }, { WIDE: WIDE }, g.WIDE);', 'f({ WIDE: 520, WIDE: 1 }, { WIDE: 520 }, g.WIDE);'],
  ['keeps its name where it is exported', 'export const A = 1;\nconst B = 2;\nexport { B };\nf(A, B);', 'export const A = 1;\nconst B = 2;\nexport { B };\nf(A, B);'],
  ['keeps its name where that is declared again', 'const A = 1;\nconst f = (A) => A + 1;\nf(A);', 'const A = 1;\nconst f = (A) => A + 1;\nf(A);'],
  ['what changes or is no number stays', "let a = 1;\na = 2;\nconst b = 'c', d = [1];\nf(a, b, d);", "let a = 1;\na = 2;\nconst b = 'c', d = [1];\nf(a, b, d);"],
];

for (const [what, from, to] of cases) test(`a number: ${what}`, () => assert.equal(inlineNumbers(from).trimStart(), to));
