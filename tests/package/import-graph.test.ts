import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { describe, it } from 'node:test';
import ts from 'typescript';
import { projectFolder } from '../install.js';

interface Import {
  readonly from: string;
  /** A file of the project, or the name of a package. */
  readonly to: string;
  /** Gone when compiled: it asks for nothing at run time. */
  readonly typeOnly: boolean;
}

/** The layers of core as DEVELOPERS.md has them; those of one line do not know each other's place. */
const layers: readonly (readonly string[])[] = [
  ['text'],
  ['angle'],
  ['time'],
  ['working'],
  ['answer'],
  ['sky', 'field', 'deviation'],
  ['sight'],
  ['iron'],
  ['swing'],
  ['record'],
  ['drill'],
];

/** Folders of components that are no widgets, and the one widget each is made for. */
const adapters: Readonly<Record<string, string>> = { lms: 'drill' };

const barrels = ['core/index.ts', 'components/index.ts', 'components/define.ts'];

const files = ['core', 'components'].flatMap((folder) =>
  readdirSync(join(projectFolder, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => posix.join(folder, name.replaceAll('\\', '/'))),
);

/** Whether nothing of an import or export is left when it is compiled. */
function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  return node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
}

/** What a file imports, re-exports or fetches late. */
function importsOf(from: string): Import[] {
  const source = ts.createSourceFile(from, readFileSync(join(projectFolder, from), 'utf8'), ts.ScriptTarget.ES2022);
  const found: Import[] = [];
  const add = (specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (!specifier || !ts.isStringLiteral(specifier)) return;
    const { text } = specifier;
    found.push({ from, to: text.startsWith('.') ? posix.join(dirname(from), text).replace(/\.js$/, '.ts') : text, typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) add(node.moduleSpecifier, isTypeOnly(node));
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) add(node.arguments[0], false);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const imports = files.flatMap(importsOf);

/** `core/sky/dip.ts` lies in `sky`; a file of core itself in none. */
const folderOf = (file: string): string => (file.split('/').length > 2 ? (file.split('/')[1] ?? '') : '');
const layerOf = (file: string): number => layers.findIndex((names) => names.includes(folderOf(file)));
const told = (found: readonly Import[]): string[] => found.map(({ from, to }) => `${from} imports ${to}`);

/** Every closed chain of imports that following the edges depth first comes upon. */
function cyclesIn(edges: readonly Pick<Import, 'from' | 'to'>[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const cycles: string[] = [];
  const follow = (file: string, path: readonly string[]): void => {
    if (path.includes(file)) cycles.push([...path.slice(path.indexOf(file)), file].join(' → '));
    if (path.includes(file) || done.has(file)) return;
    for (const to of next.get(file) ?? []) follow(to, [...path, file]);
    done.add(file);
  };
  for (const file of next.keys()) follow(file, []);
  return cycles;
}

describe('the import graph', () => {
  it('is read whole: static, re-exported, for types and late', () => {
    assert.ok(files.length > 200, `${files.length} files`);
    const among = (wanted: Import): boolean => imports.some((one) => JSON.stringify(one) === JSON.stringify(wanted));
    assert.ok(among({ from: 'core/angle/wrap.ts', to: 'core/angle/check-number.ts', typeOnly: false }));
    assert.ok(among({ from: 'core/working/step.ts', to: 'core/working/expression.ts', typeOnly: true }));
    assert.ok(among({ from: 'components/index.ts', to: 'components/amplitude/amplitude.ts', typeOnly: false }));
    assert.ok(among({ from: 'components/shared/chart-controller.ts', to: 'uplot', typeOnly: false }));
  });

  it('would show a cycle', () => {
    const edges = [['a', 'b'], ['b', 'c'], ['c', 'b']].map(([from = '', to = '']) => ({ from, to }));
    assert.deepEqual(cyclesIn(edges), ['b → c → b']);
  });

  it('has no cycle, for types neither', () => {
    assert.deepEqual(cyclesIn(imports), []);
  });

  it('leads only to files that are there', () => {
    const lost = imports.filter(({ to }) => /^(core|components)\//.test(to) && !files.includes(to));
    assert.deepEqual(told(lost), []);
  });

  it('knows every folder of core as a layer', () => {
    const unknown = new Set(files.filter((file) => file.startsWith('core/') && folderOf(file) !== '' && layerOf(file) < 0).map(folderOf));
    assert.deepEqual([...unknown], []);
    const told = [...readFileSync(join(projectFolder, 'DEVELOPERS.md'), 'utf8').matchAll(/^\| `(\w+)` \|/gm)].map(([, layer]) => layer);
    assert.deepEqual(told, layers.flat(), 'DEVELOPERS.md');
  });

  it('lists core in its barrel layer by layer, in their order', () => {
    const listed = imports.filter(({ from }) => from === 'core/index.ts').map(({ to }) => folderOf(to));
    const inOrder = layers.flat().flatMap((layer) => listed.filter((each) => each === layer));
    assert.deepEqual(listed, inOrder);
  });

  it('goes downwards through the layers of core, for types too', () => {
    const upwards = imports.filter(
      ({ from, to }) =>
        layerOf(from) >= 0 && from.startsWith('core/') && to.startsWith('core/') && folderOf(from) !== folderOf(to) && layerOf(to) >= layerOf(from),
    );
    assert.deepEqual(told(upwards), []);
  });

  it('never leads from core into components', () => {
    assert.deepEqual(told(imports.filter(({ from, to }) => from.startsWith('core/') && to.startsWith('components/'))), []);
  });

  it('never leads from one widget into another, nor from what they share into a widget, but from an adapter into its own', () => {
    const astray = imports.filter(({ from, to }) => {
      if (!from.startsWith('components/') || barrels.includes(from) || !to.startsWith('components/')) return false;
      return ![folderOf(from), 'shared', adapters[folderOf(from)]].includes(folderOf(to));
    });
    assert.deepEqual(told(astray), []);
  });

  it('never leads to a barrel', () => {
    assert.deepEqual(told(imports.filter(({ to }) => barrels.includes(to) || /\/index\.ts$/.test(to))), []);
  });

  it('asks at run time for none but the packages users get, in core for noble-hashes alone: no library of the sky or of geodesics', () => {
    const users = Object.keys((JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as { dependencies: object }).dependencies);
    const asking = imports.filter(({ to, typeOnly }) => !typeOnly && !/^(core|components)\//.test(to));
    const packageOf = (name: string): string => name.split('/').slice(0, name.startsWith('@') ? 2 : 1).join('/');
    assert.deepEqual(told(asking.filter(({ to }) => !users.includes(packageOf(to)))), []);
    assert.deepEqual([...new Set(asking.filter(({ from }) => from.startsWith('core/')).map(({ to }) => packageOf(to)))], ['@noble/hashes']);
  });

  it('reaches uplot through components/shared/chart-controller.ts alone', () => {
    const asking = imports.filter(({ to, typeOnly }) => !typeOnly && (to === 'uplot' || to.startsWith('uplot/'))).map(({ from }) => from);
    assert.deepEqual([...new Set(asking)], ['components/shared/chart-controller.ts']);
  });
});
