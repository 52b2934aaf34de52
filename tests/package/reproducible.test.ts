import assert from 'node:assert/strict';
import { readFileSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { after, it } from 'node:test';
import { buildInto } from '../../components/build/build-into.js';
import { projectFolder } from '../install.js';

const again = 'node_modules/.lubberline-again';
const filesOf = (folder: string): string[] => readdirSync(folder, { recursive: true, withFileTypes: true }).flatMap((each) => (each.isFile() ? [join(each.parentPath, each.name).slice(folder.length + 1)] : [])).sort();

after(() => rmSync(join(projectFolder, again), { recursive: true, force: true }));

it('a second build, in another folder, makes the same files to the byte', async () => {
  await buildInto(again);
  const [first, second] = [join(projectFolder, 'dist'), join(projectFolder, again)];
  assert.deepEqual(filesOf(second), filesOf(first));
  assert.deepEqual(filesOf(first).filter((file) => !readFileSync(join(first, file)).equals(readFileSync(join(second, file)))), []);
});
