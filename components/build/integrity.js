/** Sums of the scripts: for `integrity` attributes, and to check a copy with `sha256sum -c`. */
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const scriptsIn = (folder) => readdirSync(folder).filter((name) => name.endsWith('.js'));

export function writeIntegrity(out) {
  const languages = join(out, 'languages');
  const files = [...scriptsIn(out), ...(readdirSync(out).includes('languages') ? scriptsIn(languages).map((name) => `languages/${name}`) : [])].sort();
  const sum = (algorithm, file, encoding) => createHash(algorithm).update(readFileSync(join(out, file))).digest(encoding);
  writeFileSync(join(out, 'integrity.json'), `${JSON.stringify(Object.fromEntries(files.map((file) => [file, `sha384-${sum('sha384', file, 'base64')}`])), null, 2)}\n`);
  writeFileSync(join(out, 'SHA256SUMS'), files.map((file) => `${sum('sha256', file, 'hex')}  ${file}\n`).join(''));
}
