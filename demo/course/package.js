/** `node demo/course/package.js FOLDER`: writes the course as a SCORM 1.2, a SCORM 2004 and a cmi5 package. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { cmi5Structure, scorm12Manifest, scorm2004Manifest } from './manifests.js';
import { packageFiles } from './package-files.js';

const folder = process.argv[2];
if (!folder || process.argv.length > 3) {
  console.error('Usage: node demo/course/package.js FOLDER');
  process.exit(2);
}

/** The same files make the same package, to the byte. */
const MADE = new Date(2026, 0, 1);

/** [package, its table of contents, what writes that]; platforms look for it at the root. */
const packages = [
  ['compass-course-scorm-1.2.zip', 'imsmanifest.xml', scorm12Manifest],
  ['compass-course-scorm-2004.zip', 'imsmanifest.xml', scorm2004Manifest],
  ['compass-course-cmi5.zip', 'cmi5.xml', cmi5Structure],
];

try {
  const files = packageFiles();
  mkdirSync(folder, { recursive: true });
  for (const [name, contents, write] of packages) {
    const zip = zipSync({ [contents]: strToU8(write()), ...files }, { level: 9, mtime: MADE });
    writeFileSync(join(folder, name), zip);
    console.log(`${join(folder, name)}  ${Math.ceil(zip.length / 1024)} kB`);
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
