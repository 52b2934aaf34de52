/** Runs the given test files in Node and ends with a line that counts them. */
import { relative } from 'node:path';
import { run } from 'node:test';
import { spec } from 'node:test/reporters';
import { slowestLine } from './support/slowest.js';

const files = process.argv.slice(2);
let passed = 0;
let failed = 0;
/** Milliseconds by file. */
const times = new Map();
const results = run({ files, concurrency: 2, timeout: 240000 });
for (const event of ['test:pass', 'test:fail']) {
  results.on(event, ({ file, nesting, details }) => {
    if (nesting === 0 && file) times.set(relative('', file), (times.get(relative('', file)) ?? 0) + details.duration_ms);
  });
}
results.on('test:pass', ({ details, skip, todo }) => {
  // A group is no test, and what is skipped has proved nothing.
  if (details.type !== 'suite' && skip === undefined && todo === undefined) passed += 1;
});
results.on('test:fail', ({ details }) => {
  // A group fails with its tests, which are counted; or by itself, outside all of them.
  if (details.type !== 'suite' || details.error?.failureType !== 'subtestsFailed') failed += 1;
});
const report = new spec();
let text = '';
report.on('data', (chunk) => (text += chunk));
report.on('end', () => {
  // The whole tree of passed tests is noise; what failed is not.
  if (failed > 0) process.stdout.write(text.slice(text.lastIndexOf('failing tests')));
  const slowest = slowestLine(times);
  if (slowest) console.log(slowest);
  console.log(`in Node: ${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
});
results.compose(report).resume();
