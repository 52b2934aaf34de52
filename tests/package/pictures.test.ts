import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';
import { pictures } from '../support/pictures.js';

const folder = join(projectFolder, 'demo', 'pictures');

describe('the pictures of README', () => {
  it('are those that the script takes, and small', () => {
    assert.deepEqual(readdirSync(folder).sort(), pictures.map(({ name }) => name).sort());
    for (const { name } of pictures) assert.ok(statSync(join(folder, name)).size <= 60_000, name);
  });

  it('are shown there, each with words for who does not see it', () => {
    const shown = [...readFileSync(join(projectFolder, 'README.md'), 'utf8').matchAll(/!\[([^\]]{20,})\]\(demo\/pictures\/([^)]+)\)/g)].map((found) => found[2]);
    assert.deepEqual(shown.sort(), pictures.map(({ name }) => name).sort());
  });
});
