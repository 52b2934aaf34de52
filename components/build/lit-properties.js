/**
 * Writes the decorated properties of a compiled class as Lit's `static properties`, which are
 * the same to Lit: the decorators and the compiler's helper need then not be loaded.
 */
import ts from 'typescript';

const DECORATORS = 'lit/decorators.js';

/** The local names of Lit's decorators, by what they are: `property` or `state`. */
function decoratorsOf(file) {
  const names = new Map();
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement) || statement.moduleSpecifier.text !== DECORATORS) continue;
    for (const { name, propertyName } of statement.importClause.namedBindings.elements) names.set(name.text, (propertyName ?? name).text);
  }
  return names;
}

/** The options a decorator stands for, as text; undefined where it is none of the two. */
function optionsOf(decorator, decorators, file) {
  if (!ts.isCallExpression(decorator) || !ts.isIdentifier(decorator.expression)) return undefined;
  const options = decorator.arguments[0]?.getText(file) ?? '{}';
  const kind = decorators.get(decorator.expression.text);
  if (kind === 'property') return options;
  return kind === 'state' && options === '{}' ? '{ state: true, attribute: false }' : undefined;
}

/** `__decorate([property()], Widget.prototype, "name", void 0);` taken apart. */
function decorationOf(statement, decorators, file) {
  const call = ts.isExpressionStatement(statement) ? statement.expression : undefined;
  if (!call || !ts.isCallExpression(call) || call.expression.getText(file) !== '__decorate') return undefined;
  const [list, target, name] = call.arguments;
  const options = list.elements.length === 1 ? optionsOf(list.elements[0], decorators, file) : undefined;
  if (options === undefined) throw new Error(`${statement.getText(file)}: only property() and state() are known, one at a time`);
  return { of: target.expression.getText(file), name: name.text, options };
}

export function litProperties(source) {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const decorators = decoratorsOf(file);
  if (decorators.size === 0) return source;
  const edits = [];
  const properties = new Map();
  for (const statement of file.statements) {
    const decoration = decorationOf(statement, decorators, file);
    if (decoration) properties.set(decoration.of, [...(properties.get(decoration.of) ?? []), `${decoration.name}: ${decoration.options}`]);
    const isHelper = ts.isImportDeclaration(statement) && [DECORATORS, 'tslib'].includes(statement.moduleSpecifier.text);
    if (decoration || isHelper) edits.push({ from: statement.getFullStart(), to: statement.end, text: '' });
  }
  for (const statement of file.statements) {
    const own = ts.isClassDeclaration(statement) ? properties.get(statement.name.text) : undefined;
    const at = own && statement.members.pos;
    if (own) edits.push({ from: at, to: at, text: `\n    static properties = { ${own.join(', ')} };` });
  }
  return edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), source);
}
