/** Runs the given test files in Node and ends with a line that counts them. */
import { run } from 'node:test';
import { spec } from 'node:test/reporters';

const files = process.argv.slice(2);
let passed = 0;
let failed = 0;
const results = run({ files, concurrency: 2, timeout: 240000 });
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
  console.log(`in Node: ${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
});
results.compose(report).resume();
