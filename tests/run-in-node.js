/** Runs the given test files in Node and ends with a line that counts them. */
import { run } from 'node:test';
import { spec } from 'node:test/reporters';

const files = process.argv.slice(2);
let passed = 0;
let failed = 0;
const results = run({ files, concurrency: 2, timeout: 240000 });
const count = (step) => (event) => {
  if (event.details?.type !== 'suite') step();
};
results.on('test:pass', count(() => (passed += 1)));
results.on('test:fail', count(() => (failed += 1)));
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
