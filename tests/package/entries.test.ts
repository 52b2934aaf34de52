import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
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

  for (const entry of ['lubberline', 'lubberline/define.js', 'lubberline/components/amplitude.js', 'lubberline/components/amplitude/define.js']) {
    it(`${entry} imports`, () => {
      assert.equal(importInNode(`await import('${entry}'); console.log('imported')`), 'imported');
    });
  }
});
