/**
 * Writes a number that has a name at the top of a module, `const DEGREE = 12;`, wherever the name stands.
 * A minifier does the same, and reckons on with it, but not in a module that imports anything: it cannot
 * tell what is evaluated first. What is exported keeps its name, and so does one that is declared again
 * further in.
 */
import ts from 'typescript';

const isNumber = (node) => ts.isNumericLiteral(node) || (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken && ts.isNumericLiteral(node.operand));

/** The constant a statement declares, where it is a number and the module's own. */
function constantOf(statement) {
  if (!ts.isVariableStatement(statement) || statement.modifiers || !(statement.declarationList.flags & ts.NodeFlags.Const)) return undefined;
  const [{ name, initializer }, ...more] = statement.declarationList.declarations;
  return more.length === 0 && ts.isIdentifier(name) && initializer && isNumber(initializer) ? { statement, name, initializer } : undefined;
}

/** Whether an identifier names a property, not a variable. */
const isProperty = (node) => (ts.isPropertyAccessExpression(node.parent) || ts.isPropertyAssignment(node.parent)) && node.parent.name === node;

/** Whether a variable is declared or exported there. */
const isDeclared = (node) => !ts.isShorthandPropertyAssignment(node.parent) && [node.parent.name, node.parent.propertyName].includes(node);

/** The places a name stands in, without the one it is declared in; undefined where it is more than that constant. */
function placesOf(constant, file) {
  const places = [];
  let declared = 0;
  const visit = (node) => {
    if (ts.isIdentifier(node) && node.text === constant.name.text && !isProperty(node)) {
      if (isDeclared(node)) declared += 1;
      else places.push(node);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return declared === 1 ? places : undefined;
}

/** The number as it is written in the place of an identifier. */
function textAt(place, number) {
  if (ts.isShorthandPropertyAssignment(place.parent)) return `${place.text}: ${number}`;
  return number.startsWith('-') || ts.isPropertyAccessExpression(place.parent) ? `(${number})` : number;
}

export function inlineNumbers(source) {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const edits = file.statements.map(constantOf).filter(Boolean).flatMap((constant) => {
    const places = placesOf(constant, file);
    if (!places) return [];
    const number = constant.initializer.getText(file);
    const { statement } = constant;
    // Its comment goes with it.
    return [{ from: statement.getFullStart(), to: statement.end, text: '' }, ...places.map((place) => ({ from: place.getStart(file), to: place.end, text: textAt(place, number) }))];
  });
  return edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), source);
}
