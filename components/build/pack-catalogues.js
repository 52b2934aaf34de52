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

/** The parts of a catalogue in their order: each run of plain texts as one, the other properties as they are. */
function partsOf(properties, file) {
  const parts = [];
  for (const property of properties) {
    const entry = entryOf(property);
    const last = parts.at(-1);
    if (entry && last?.entries) last.entries.push(entry);
    else parts.push(entry ? { entries: [entry] } : { spread: property.expression?.getText(file), code: property.getText(file) });
  }
  return parts.map(({ entries, spread, code }) => ({ text: entries && JSON.stringify(textOf(entries)), spread, code }));
}

/** An English catalogue, of which a page needs some: a list of parts, which costs nothing until a text is asked for. */
function listCode(parts) {
  return `[${parts.map(({ text, spread, code }) => text ?? spread ?? raise(code)).join(', ')}]`;
}

function raise(code) {
  throw new Error(`cannot be packed, a text holds ${MARK} or is none: ${code}`);
}

/** A translation, added to those of the page as a whole and open to whoever imports it: an object. */
function objectCode(parts) {
  const calls = parts.map(({ text, code }) => ({ code, call: `/* @__PURE__ */ catalogueOf(${text})` }));
  return calls.length === 1 ? calls[0].call : `{ ${calls.map(({ code, call }) => code ?? `...${call}`).join(', ')} }`;
}

/** `path` is that of the module within the folder of components. */
export function packCatalogues(source, path) {
  if (!/-messages\.js$/.test(path)) return source;
  const translation = path.startsWith('languages/');
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const edits = [];
  for (const statement of file.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    for (const { initializer } of statement.declarationList.declarations) {
      if (!initializer || !ts.isObjectLiteralExpression(initializer) || (translation && !initializer.properties.some(entryOf))) continue;
      const parts = partsOf(initializer.properties, file);
      edits.push({ from: initializer.getStart(file), to: initializer.end, text: translation ? objectCode(parts) : listCode(parts) });
    }
  }
  if (edits.length === 0) return source;
  const packed = edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), source);
  return translation ? `import { catalogueOf } from '${posix.relative(posix.dirname(path), 'shared/catalogue-text.js').replace(/^(?!\.)/, './')}';\n${packed}` : packed;
}
