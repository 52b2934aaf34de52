/** The licences of the packages that the scripts hold, gathered from what was bundled. */
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './run.js';

function packageOf(path) {
  const inside = /.*node_modules\/((?:@[^/]+\/)?[^./][^/]*)\//.exec(path);
  return inside?.[1];
}

export function writeNotices(out, metafiles) {
  const names = new Set(metafiles.flatMap(({ inputs }) => Object.keys(inputs).map(packageOf)).filter(Boolean));
  const notices = [...names].sort().map((name) => {
    const folder = join(projectFolder, 'node_modules', name);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((each) => /^licen[cs]e(\.\w+)?$/i.test(each));
    if (!file) throw new Error(`${name} brings no licence text`);
    return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`;
  });
  const head = 'The scripts of Lubberline hold these packages, whole or in part. Their licences:\n';
  writeFileSync(join(out, 'third-party-notices.txt'), [head, ...notices].join(`\n${'-'.repeat(72)}\n\n`));
}
