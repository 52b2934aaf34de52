import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { projectFolder } from '../install.js';

/** Styles that name a side of the page, where one is meant: figures and pictures stand alike in every language. */
const allowed: readonly (readonly [file: string, declaration: string])[] = [
  ['shared/base-styles.ts', 'text-align: right'],
  ['shared/field-styles.ts', 'text-align: right'],
  ['deviation-card/card-styles.ts', 'text-align: right'],
  ['record/record-styles.ts', 'text-align: right'],
  // The canvas of a chart counts its pixels from the left.
  ['shared/chart-styles.ts', 'left: 0'],
];

/** Whether a declaration of a style sheet names the left or the right of the page. */
function namesSide(declaration: string): boolean {
  const [property = '', value = ''] = declaration.split(/:(.*)/s).map((part) => part.trim());
  if (/(^|-)(left|right)($|-)/.test(property)) return true;
  if (/^(text-align|float|clear|caption-side|justify-content|justify-items|justify-self)$/.test(property)) return /\b(left|right)\b/.test(value);
  if (!/^(margin|padding|inset|border-width|border-style|border-color|border-radius)$/.test(property)) return false;
  // Of four values the second is the right and the fourth the left; spaces inside a function part nothing.
  let flat = value;
  for (let before = ''; before !== flat; ) [before, flat] = [flat, flat.replace(/\([^()]*\)/g, '')];
  const sides = value.replace(/\s*\/.*$/, '').split(/\s+(?![^(]*\))/);
  return flat.split(/\s+/).length === 4 && sides[1] !== sides[3];
}

const declarationsOf = (css: string): string[] =>
  css
    .replace(/\/\*.*?\*\//gs, '')
    .split(/[;{}]/)
    .map((each) => each.trim())
    .filter((each) => /^[a-z-]+\s*:/.test(each));

const folder = join(projectFolder, 'components');
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.replaceAll('\\', '/'));

const found = files.flatMap((file) =>
  [...readFileSync(join(folder, file), 'utf8').matchAll(/\bcss`([^`]*)`/g)].flatMap(([, css = '']) =>
    declarationsOf(css)
      .filter(namesSide)
      .map((declaration) => [file, declaration] as const),
  ),
);

describe('styles', () => {
  it('name the side of a page only where the test says so', () => {
    for (const each of ['margin-left: 1px', 'left: 0', 'text-align: left', 'padding: 0 1px 0 0', 'border-top-right-radius: 2px', 'margin: 0 var(--a) 0 calc(1px + 2px)']) assert.ok(namesSide(each), each);
    for (const each of ['margin-inline-start: 1px', 'inset-inline-end: 0', 'text-align: end', 'padding: 0 1px', 'padding: 1px 0 2px 0', 'margin: 0 calc(1px + 2px)']) assert.ok(!namesSide(each), each);
    const told = (list: readonly (readonly [string, string])[]): string[] => [...new Set(list.map((each) => each.join(' ')))].sort();
    assert.deepEqual(told(found), told(allowed));
  });
});
