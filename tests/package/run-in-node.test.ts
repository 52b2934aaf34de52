import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { projectFolder } from '../install.js';

describe('the count of tests run in Node', () => {
  let folder: string;
  before(() => (folder = mkdtempSync(join(tmpdir(), 'lubberline-'))));
  after(() => rmSync(folder, { recursive: true }));

  /** What a run of one file says, and its exit code. */
  function sayingOf(name: string, body: string): { said: string; status: number | null } {
    const file = join(folder, `${name}.test.mjs`);
    writeFileSync(file, `import { after, describe, it } from 'node:test';\n${body}`);
    // Node refuses to run tests from within a test unless this is taken away.
    const env = { ...process.env };
    delete env.NODE_TEST_CONTEXT;
    const { stdout, status } = spawnSync(process.execPath, ['tests/run-in-node.js', file], { cwd: projectFolder, encoding: 'utf8', env });
    return { said: stdout.trim(), status };
  }

  const runs: readonly [what: string, body: string, said: string][] = [
    ['tests in groups, not the groups', "describe('group', () => { it('one', () => {}); it('two', () => {}); });", 'in Node: 2 passed, 0 failed, exit 0'],
    ['a failed test once', "describe('group', () => { it('one', () => { throw new Error('no'); }); });", 'in Node: 0 passed, 1 failed, exit 1'],
    ['a group that breaks before its tests', "describe('group', () => { throw new Error('no'); }); it('one', () => {});", 'in Node: 1 passed, 1 failed, exit 1'],
    ['a group that breaks after its tests', "describe('group', () => { after(() => { throw new Error('no'); }); it('one', () => {}); });", 'in Node: 1 passed, 1 failed, exit 1'],
    ['a file without a test as a failure', '', 'in Node: 0 passed, 1 failed, exit 1'],
    ['a file that breaks after its tests', "it('one', () => {}); setTimeout(() => { throw new Error('late'); });", 'in Node: 1 passed, 1 failed, exit 1'],
    ['nothing for a skipped test', "it.skip('one', () => {}); it('two', () => {});", 'in Node: 1 passed, 0 failed, exit 0'],
  ];
  for (const [what, body, counted] of runs) {
    it(`counts ${what}`, () => {
      const { said, status } = sayingOf(what.replace(/\W/g, '-'), body);
      assert.equal(`${said.split('\n').pop()}, exit ${status}`, counted);
    });
  }

  it('says why a file cannot be read, and which', () => {
    const { said } = sayingOf('slip', 'const a = ;');
    assert.match(said, /slip\.test\.mjs broke/);
    assert.match(said, /SyntaxError/);
  });

  // Node writes it into its report beside the tests, not to the failure.
  it('says what broke after a test that had passed', () => {
    const { said } = sayingOf('too-late', "it('one', () => { setTimeout(() => { throw new Error('nobody waited'); }); });");
    assert.match(said, /"one".*after the test ended.*nobody waited/);
    assert.match(said, /1 passed, 1 failed/);
  });
});
