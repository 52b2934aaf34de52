/**
 * Writes a number that has a name at the top of a module, `const DEGREE = 12;`, wherever the name stands,
 * here and where it is imported; so too what is reckoned from numbers alone, `34 / 60`. A minifier does the
 * same, and reckons on with it, but not in a module that imports anything: it cannot tell what is evaluated
 * first. A name that is declared again further in is left alone.
 */
import { posix } from 'node:path';
import ts from 'typescript';

const parse = (source) => ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);

/** The constants at the top of a module that may be numbers, by their names: one to a statement. */
function constantsOf(file) {
  const constants = new Map();
  for (const statement of file.statements) {
    if (!ts.isVariableStatement(statement) || !(statement.declarationList.flags & ts.NodeFlags.Const)) continue;
    const [{ name, initializer }, ...more] = statement.declarationList.declarations;
    if (more.length === 0 && ts.isIdentifier(name) && initializer) constants.set(name.text, { statement, initializer });
  }
  return constants;
}

/** What a module imports by name from others of ours: the module and the name it has there, by the name it has here. */
function importsOf(file, path) {
  const imports = new Map();
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement) || !statement.moduleSpecifier.text.startsWith('.')) continue;
    const from = posix.join(posix.dirname(path), statement.moduleSpecifier.text);
    for (const { name, propertyName } of statement.importClause?.namedBindings?.elements ?? []) imports.set(name.text, { from, name: (propertyName ?? name).text });
  }
  return imports;
}

const signs = new Set([ts.SyntaxKind.PlusToken, ts.SyntaxKind.MinusToken, ts.SyntaxKind.AsteriskToken, ts.SyntaxKind.SlashToken]);

/** How a number is written that other numbers are reckoned with; undefined for what is none. `named` tells it of a name. */
function numberText(node, named) {
  if (ts.isNumericLiteral(node)) return node.getText();
  if (ts.isIdentifier(node)) return named(node.text);
  const parts = ts.isParenthesizedExpression(node) ? [node.expression] : ts.isPrefixUnaryExpression(node) ? [node.operand] : ts.isBinaryExpression(node) ? [node.left, node.right] : [];
  const sign = ts.isBinaryExpression(node) ? node.operatorToken.kind : ts.isPrefixUnaryExpression(node) ? node.operator : ts.SyntaxKind.PlusToken;
  const texts = parts.map((part) => numberText(part, named));
  if (parts.length === 0 || texts.includes(undefined) || !signs.has(sign)) return undefined;
  return texts.length === 2 ? `(${texts.join(ts.tokenToString(sign))})` : ts.isPrefixUnaryExpression(node) ? `(${ts.tokenToString(sign)}${texts[0]})` : texts[0];
}

/** Whether an identifier names a property, or a thing in another module, and no variable. */
const isForeign = (node, { parent } = node) =>
  ts.isImportSpecifier(parent) || ((ts.isPropertyAccessExpression(parent) || ts.isPropertyAssignment(parent)) && parent.name === node);

/** Whether a variable is declared or exported there. */
const isDeclared = (node, { parent } = node) => !ts.isShorthandPropertyAssignment(parent) && [parent.name, parent.propertyName].includes(node);

/** The places each of some names stands in as a variable, and how often it is declared. */
function usesOf(file, names) {
  const uses = new Map([...names].map((name) => [name, { places: [], declared: 0 }]));
  const visit = (node) => {
    const use = ts.isIdentifier(node) && !isForeign(node) ? uses.get(node.text) : undefined;
    if (use && isDeclared(node)) use.declared += 1;
    else use?.places.push(node);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return uses;
}

/** The number as it is written in the place of an identifier. */
function textAt(place, number) {
  if (ts.isShorthandPropertyAssignment(place.parent)) return `${place.text}: ${number}`;
  return ts.isPropertyAccessExpression(place.parent) && !number.startsWith('(') ? `(${number})` : number;
}

/** Modules, by their paths, with their numbers written in. */
export function inlineNumbers(sources) {
  const modules = new Map([...sources].map(([path, source]) => [path, parse(source)]).map(([path, file]) => [path, { file, constants: constantsOf(file), imports: importsOf(file, path) }]));
  const numberOf = (path, name) => {
    const module = modules.get(path);
    const imported = module?.imports.get(name);
    if (imported) return numberOf(imported.from, imported.name);
    const constant = module?.constants.get(name);
    return constant && numberText(constant.initializer, (inner) => numberOf(path, inner));
  };
  const written = ([path, { file, constants, imports }]) => {
    const edits = [];
    for (const [name, { places, declared }] of usesOf(file, [...constants.keys(), ...imports.keys()])) {
      const number = declared === (constants.has(name) ? 1 : 0) ? numberOf(path, name) : undefined;
      if (number === undefined) continue;
      for (const place of places) edits.push({ from: place.getStart(), to: place.end, text: textAt(place, number) });
      const statement = constants.get(name)?.statement;
      // Its comment goes with it.
      if (statement && !statement.modifiers) edits.push({ from: statement.getFullStart(), to: statement.end, text: '' });
    }
    // A number within one that goes has gone with it.
    const outer = edits.filter((edit) => !edits.some((other) => other !== edit && other.from <= edit.from && edit.to <= other.to));
    return [path, outer.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), sources.get(path))];
  };
  return new Map([...modules].map(written));
}
