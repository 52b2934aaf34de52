/**
 * `npm test`: installs what is missing, then checks types and style, builds, and runs every
 * test. `npm test -- core` runs one part: types, lint, build,
 * core, package, components or pages. `LUBBERLINE_BROWSERS=chromium` leaves Firefox out.
 */
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBrowsers, ensurePackages, projectFolder } from './install.js';

const bin = (name) => join('node_modules', '.bin', name);

/** Runs a command, shows what it says, and resolves to its exit code and the counts it printed. */
function command(program, args) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: projectFolder, stdio: ['ignore', 'pipe', 'inherit'] });
    let text = '';
    child.stdout.on('data', (chunk) => {
      text += chunk;
      process.stdout.write(chunk);
    });
    child.on('close', (code) => {
      const counts = /(\d+) passed, (\d+) failed\s*$/.exec(text.trim());
      resolve({ code: code ?? 1, passed: Number(counts?.[1] ?? 0), failed: Number(counts?.[2] ?? 0) });
    });
  });
}

/** A check that passes or fails as a whole counts as one. */
async function check(program, args) {
  const { code } = await command(program, args);
  return { code, passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 };
}

/** A run of tests that counts none has failed. */
async function tests(program, args) {
  const result = await command(program, args);
  if (result.passed + result.failed === 0) console.error('No test ran.');
  return result.failed === 0 && (result.code !== 0 || result.passed === 0) ? { ...result, failed: 1 } : result;
}

function testFiles(folder) {
  return readdirSync(join(projectFolder, folder), { recursive: true })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => join(folder, name))
    .sort();
}

/** The longest test, if one is named, begins first: all others have time beside it. */
function inNode(folder, longest) {
  const isLongest = (name) => name === join(folder, longest ?? '');
  const files = testFiles(folder).sort((one, other) => isLongest(other) - isLongest(one));
  return tests(process.execPath, ['--import', 'tsx', '--import', './tests/support/seed.js', 'tests/run-in-node.js', ...files]);
}

const parts = {
  // Each of them keeps one core busy.
  types: () => Promise.all(['core', 'components', 'tests'].map((project) => check(bin('tsc'), ['-p', `${project}/tsconfig.json`, '--noEmit']))),
  lint: async () => [await check(bin('eslint'), ['--config', 'tests/eslint.config.js', '--max-warnings', '0', '.'])],
  build: async () => [await check(process.execPath, ['components/build.js']), await check(process.execPath, ['demo/reference/build.js'])],
  core: async () => [await inNode('tests/core')],
  package: async () => [await inNode('tests/package', 'reproducible.test.ts')],
  components: async () => [await tests(bin('wtr'), ['--config', 'tests/web-test-runner.config.js'])],
  pages: async () => [await inNode('tests/pages')],
};

const asked = process.argv.slice(2);
const unknown = asked.filter((part) => !(part in parts));
if (unknown.length > 0) {
  console.error(`No such part: ${unknown.join(', ')}. There are: ${Object.keys(parts).join(', ')}.`);
  process.exit(2);
}

const isAsked = (part) => asked.length === 0 || asked.includes(part);

ensurePackages();

/** What browsers are missing, in words. */
function missingBrowsers() {
  if (!isAsked('components') && !isAsked('pages')) return [];
  try {
    return ensureBrowsers();
  } catch (error) {
    console.error(error.message);
    process.exit(2);
  }
}

const missing = missingBrowsers();

let passed = 0;
// What could not be tried has not passed.
let failed = missing.length;
const summary = [];
for (const [name, part] of Object.entries(parts)) {
  if (!isAsked(name)) continue;
  console.log(`— ${name}`);
  const began = performance.now();
  const results = await part();
  const sum = (count) => results.reduce((all, result) => all + result[count], 0);
  passed += sum('passed');
  failed += sum('failed');
  summary.push(`${sum('failed') > 0 ? 'FAILED' : 'passed'}: ${name}, ${Math.round((performance.now() - began) / 1000)} s`);
}
for (const line of summary) console.log(line);
for (const lack of missing) console.error(`FAILED: ${lack} Nothing was tried in it.`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
console.log(`${passed} passed, ${failed} failed`);
