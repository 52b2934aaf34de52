/**
 * Takes the white space out of the html, svg and css literals of a module. A run of it
 * becomes one space, so that what is seen stays as it is: between words and inline
 * elements a space counts.
 */
import ts from 'typescript';

const shorterRules = (text) =>
  text
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,>~]) ?/g, '$1')
    .replace(/(^|[{;(])([\w-]+): /g, '$1$2:')
    .replace(/(^|[^\w.])0\.(?=\d)/g, '$1.')
    .replace(/;\}/g, '}');

/** Comments go, strings stay as they are. */
function shorterCss(text, first) {
  const pieces = (first ? text.trimStart() : text).replace(/\/\*[\s\S]*?\*\//g, '').split(/('[^']*'|"[^"]*")/);
  return pieces.map((piece, index) => (index % 2 === 0 ? shorterRules(piece) : piece)).join('');
}

const shorterMarkup = (text) => text.replace(/\s+/g, ' ');

const shorter = { html: shorterMarkup, svg: shorterMarkup, css: shorterCss };

function literalsOf(template) {
  return ts.isNoSubstitutionTemplateLiteral(template) ? [template] : [template.head, ...template.templateSpans.map(({ literal }) => literal)];
}

/** Whether white space is shown as it stands: then the literal is left alone. */
const keepsSpace = (literals) => literals.some((literal) => /<(pre|textarea)\b/.test(literal.text));

export function minifyTemplates(source) {
  const file = ts.createSourceFile('module.js', source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const edits = [];
  const visit = (node) => {
    const shorten = ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) ? shorter[node.tag.text] : undefined;
    if (shorten) {
      const literals = literalsOf(node.template);
      if (node.tag.text === 'css' || !keepsSpace(literals)) {
        for (const literal of literals) {
          const text = literal.getText(file);
          const end = text.endsWith('${') ? 2 : 1;
          const start = literal.getStart(file);
          edits.push({ from: start + 1, to: start + text.length - end, text: shorten(text.slice(1, -end), literal === literals[0]) });
        }
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return edits.sort((a, b) => b.from - a.from).reduce((text, edit) => text.slice(0, edit.from) + edit.text + text.slice(edit.to), source);
}
