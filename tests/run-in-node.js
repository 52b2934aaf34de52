/** Runs the given test files in Node and ends with a line that counts them. */
import { relative, resolve } from 'node:path';
import { run } from 'node:test';
import { spec } from 'node:test/reporters';
import { slowestLine } from './support/slowest.js';

const files = process.argv.slice(2);
let passed = 0;
let failed = 0;
/** Milliseconds by file. */
const times = new Map();
/** What each file wrote to its error output: why it could not be read, if it could not. */
const errors = new Map();
/** What came of tests that were over: Node fails their file for it, and tells why beside the report only. */
const late = [];
/** Files that broke outside of their tests, took too long, or hold none. */
const broken = [];

/** Node tells of a file as of a test where there is none in it. */
const isFile = ({ name, file }) => file !== undefined && resolve(name) === file;
const add = (map, file, what, nothing) => map.set(relative('', file), (map.get(relative('', file)) ?? nothing) + what);

/** What hangs is stopped, in milliseconds for a file; a slow or busy machine is given its time. */
const PATIENCE = 1_200_000;
const results = run({ files, concurrency: 2, timeout: PATIENCE });
results.on('test:stderr', ({ file, message }) => file && add(errors, file, message, ''));
results.on('test:diagnostic', ({ message }) => message.includes('after the test ended') && late.push(message));
results.on('test:pass', (test) => {
  const { details, skip, todo } = test;
  if (isFile(test)) {
    failed += 1;
    broken.push(relative('', test.file));
    return;
  }
  // A group is no test, and what is skipped has proved nothing.
  if (details.type !== 'suite' && skip === undefined && todo === undefined) passed += 1;
});
results.on('test:fail', (test) => {
  const { details } = test;
  if (isFile(test)) broken.push(relative('', test.file));
  // A group fails with its tests, which are counted; or by itself, outside all of them.
  if (details.type !== 'suite' || details.error?.failureType !== 'subtestsFailed') failed += 1;
});
for (const event of ['test:pass', 'test:fail']) {
  results.on(event, ({ file, nesting, details }) => nesting === 0 && file && add(times, file, details.duration_ms, 0));
}
const report = new spec();
let text = '';
report.on('data', (chunk) => (text += chunk));
report.on('end', () => {
  // The whole tree of passed tests is noise; what failed is not.
  if (text.includes('failing tests')) process.stdout.write(text.slice(text.lastIndexOf('failing tests')));
  for (const file of broken) console.log(`\n${file} broke outside of its tests, took too long, or holds none.\n${(errors.get(file) ?? '').trim()}`);
  for (const message of late) console.log(message);
  const slowest = slowestLine(times);
  if (slowest) console.log(slowest);
  console.log(`in Node: ${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
});
results.compose(report).resume();
