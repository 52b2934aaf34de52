/**
 * Writes the css literals of a module as texts handed to Lit's `unsafeCSS`, which is what its `css` does
 * once it has looked at what stands in the places: ours hold other styles alone, so the looking, with all
 * it has to say, need not be loaded.
 */
import ts from 'typescript';

/** The import of Lit's `css` with what stands in its stead. */
function importOf(statement, file) {
  const names = statement.importClause.namedBindings.elements.map((element) => element.getText(file));
  const kept = names.filter((name) => name !== 'css' && name !== 'unsafeCSS');
  return `import { ${[...kept, 'unsafeCSS'].join(', ')} } from 'lit';`;
}

const importsCss = (statement) =>
  ts.isImportDeclaration(statement) && statement.moduleSpecifier.text === 'lit' && (statement.importClause?.namedBindings?.elements ?? []).some(({ name, propertyName }) => name.text === 'css' && !propertyName);

export function plainStyles(source) {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const imported = file.statements.find(importsCss);
  if (!imported) return source;
  const edits = [{ from: imported.getStart(file), to: imported.end, text: importOf(imported, file) }];
  const visit = (node) => {
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText(file) === 'css') {
      edits.push({ from: node.getStart(file), to: node.template.getStart(file), text: 'unsafeCSS(' }, { from: node.end, to: node.end, text: ')' });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return edits.sort((a, b) => b.from - a.from).reduce((text, { from, to, text: put }) => text.slice(0, from) + put + text.slice(to), source);
}
