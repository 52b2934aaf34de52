/**
 * A language that is none: the English of the widgets with its words in letters that run from
 * right to left. It is for laying out only; nobody speaks it, and `qaa` is a subtag kept for
 * private use (BCP 47).
 */
import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Catalogue } from '../../components/shared/catalogue.js';
import { projectFolder } from '../install.js';

const letters = 'אבגדהוזחטיכלמנסעפצקרשת';

const mirrored = (word: string): string => [...word.toLowerCase()].map((letter) => letters[(letter.charCodeAt(0) - 97) % letters.length]).join('');

/** Words in other letters; places stay, and figures are set apart as a translator sets them apart, and letters with what they stand for. */
function mirroredText(text: string): string {
  return text
    .split(/([A-Z] \{\w+\}|\{\w+\}|[−+±]?\d[^\s,;)]*\d[°′″]*(?: ?[NSEW]\b)?|[−+±]?\d[°′″]*(?: ?[NSEW]\b)?)/)
    .map((part, index) => (index % 2 === 0 ? part.replace(/[A-Za-z]{2,}/g, mirrored) : part.startsWith('{') ? part : `\u2066${part}\u2069`))
    .join('');
}

async function englishMessages(): Promise<Catalogue> {
  const folder = join(projectFolder, 'components');
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('-messages.ts') && !file.startsWith(`languages${sep}`));
  const modules = await Promise.all(files.map(async (file) => (await import(pathToFileURL(join(folder, file)).href)) as Readonly<Record<string, Catalogue>>));
  return Object.fromEntries(modules.flatMap((module) => Object.values(module).flatMap((catalogue) => Object.entries(catalogue))));
}

/** The script by which a page adds the language, as a page adds one of its own. */
export async function mirroredScript(): Promise<string> {
  const texts = Object.fromEntries(Object.entries(await englishMessages()).map(([key, text]) => [key, mirroredText(text)]));
  const { outputFiles } = await build({
    stdin: { contents: `import { addTranslation } from './components/shared/catalogue.js'; addTranslation('qaa', ${JSON.stringify({ ...texts, direction: 'rtl' })});`, resolveDir: projectFolder },
    bundle: true,
    format: 'iife',
    charset: 'utf8',
    write: false,
    logLevel: 'error',
  });
  return outputFiles[0]?.text ?? '';
}
