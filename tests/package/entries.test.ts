import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';

/** What Node says when it imports an entry of the package by its public name. */
function importInNode(code: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: projectFolder, encoding: 'utf8' }).trim();
}

describe('the package in Node, where there is no page', () => {
  it('core computes', () => {
    const said = importInNode(
      "import { altitudeAzimuth } from 'lubberline/core'; console.log(altitudeAzimuth({ latitude: 0, declination: 0, localHourAngle: 270 }).azimuth)",
    );
    assert.equal(said, '90');
  });

  // A widget's folder holds a class of its name; what else is there serves them all.
  const widgets = readdirSync(join(projectFolder, 'components')).filter((name) => existsSync(join(projectFolder, 'components', name, `${name}.ts`)));

  it('has the thirteen widgets', () => assert.equal(widgets.length, 13));

  it('imports every entry by its public name', () => {
    const entries = ['lubberline', 'lubberline/define.js', ...widgets.flatMap((name) => [`lubberline/components/${name}.js`, `lubberline/components/${name}/define.js`])];
    const said = importInNode(`for (const entry of ${JSON.stringify(entries)}) await import(entry); console.log('imported')`);
    assert.equal(said, 'imported');
  });

  for (const entry of ['lubberline/lms/scorm.js', 'lubberline/lms/cmi5.js', 'lubberline/react', 'lubberline/vue', 'lubberline/svelte']) {
    it(`${entry} imports`, () => {
      assert.equal(importInNode(`await import('${entry}'); console.log('imported')`), 'imported');
    });
  }
});
