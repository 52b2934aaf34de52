/**
 * Writes the texts of a catalogue as one text, which packs closer than a property for each:
 * `components/shared/catalogue-text.ts` reads it.
 */
import { posix } from 'node:path';
import ts from 'typescript';

/** What parts keys and texts; a text that holds it stays a property. */
const MARK = '=';

function textOf(entries) {
  let last = '';
  return entries
    .map(([key, text]) => {
      const head = key.split('.')[0];
      const shown = head === last && key !== head ? key.slice(head.length + 1) : `.${key}`;
      last = head;
      return `${shown}${MARK}${text}`;
    })
    .join(MARK);
}

/** Key and text of a property that is no more than that. */
function entryOf(property) {
  if (!ts.isPropertyAssignment(property) || !ts.isStringLiteralLike(property.name) || !ts.isStringLiteralLike(property.initializer)) return undefined;
  const entry = [property.name.text, property.initializer.text];
  return entry.join('').includes(MARK) ? undefined : entry;
}

/** The properties of a catalogue with each run of plain texts as one; the same where there is none. */
function packedProperties(properties, file) {
  const parts = [];
  for (const property of properties) {
    const entry = entryOf(property);
    const last = parts.at(-1);
    if (entry && Array.isArray(last)) last.push(entry);
    else parts.push(entry ? [entry] : property.getText(file));
  }
  return parts.map((part) => (Array.isArray(part) ? { call: `/* @__PURE__ */ catalogueOf(${JSON.stringify(textOf(part))})` } : { code: part }));
}

/** `path` is that of the module within the folder of components. */
export function packCatalogues(source, path) {
  if (!/-messages\.js$/.test(path)) return source;
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const edits = [];
  for (const statement of file.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    for (const { initializer } of statement.declarationList.declarations) {
      if (!initializer || !ts.isObjectLiteralExpression(initializer) || !initializer.properties.some(entryOf)) continue;
      const parts = packedProperties(initializer.properties, file);
      const text = parts.length === 1 ? parts[0].call : `{ ${parts.map(({ call, code }) => code ?? `...${call}`).join(', ')} }`;
      edits.push({ from: initializer.getStart(file), to: initializer.end, text });
    }
  }
  if (edits.length === 0) return source;
  const packed = edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), source);
  return `import { catalogueOf } from '${posix.relative(posix.dirname(path), 'shared/catalogue-text.js').replace(/^(?!\.)/, './')}';\n${packed}`;
}
