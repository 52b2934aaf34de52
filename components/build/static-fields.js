/**
 * Writes the static blocks in which the compiler fills static fields as fields again:
 * browsers know those longer, and a bundler that has to lower a block lowers the private
 * members of its class with it.
 */
import ts from 'typescript';

/** `static { this.name = value; }`, or undefined where the block holds anything else. */
function assignmentOf(block) {
  const [statement, ...more] = block.body.statements;
  if (!statement || more.length > 0 || !ts.isExpressionStatement(statement)) return undefined;
  const { expression } = statement;
  const assigns = ts.isBinaryExpression(expression) && expression.operatorToken.kind === ts.SyntaxKind.EqualsToken;
  return assigns && ts.isPropertyAccessExpression(expression.left) && expression.left.expression.kind === ts.SyntaxKind.ThisKeyword ? expression : undefined;
}

export function staticFields(source) {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const edits = [];
  const visit = (node) => {
    const assignment = ts.isClassStaticBlockDeclaration(node) ? assignmentOf(node) : undefined;
    if (assignment) edits.push({ from: node.getStart(file), to: node.end, text: `static ${assignment.left.name.text} = ${assignment.right.getText(file)};` });
    ts.forEachChild(node, visit);
  };
  visit(file);
  return edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: field }) => text.slice(0, from) + field + text.slice(to), source);
}
