/**
 * A plugin of the manifest's analyzer: leaves what a page may rely on, with paths of the
 * package, and says of events and attributes what the analyzer cannot know.
 */

/** Public for the views of a widget and the browser, of no use to a page. */
const inside = new Set([
  ...['styles', 'lubberlineRelease', 'page', 'width', 'closed', 't', 'settle', 'unsettle', 'isSettled', 'say', 'change', 'isLocked', 'isDisabled'],
  ...['formAssociated', 'formAssociatedCallback', 'formDisabledCallback', 'formResetCallback', 'formStateRestoreCallback'],
  ...['shownCoefficient', 'text', 'value', 'slide', 'take', 'slipUnknown', 'build', 'sail', 'takePreset'],
]);

/** Named, and said in words. */
const isPublic = ({ name, privacy, description }) => name !== undefined && !name.startsWith('#') && privacy === undefined && description !== undefined && !inside.has(name);

/** `lubber-record-request` is a `LubberRecordRequestEvent`. */
const typeOfEvent = (name) => `${name.replace(/(?:^|-)(\w)/g, (_, letter) => letter.toUpperCase())}Event`;

const partsOf = (type) => type.split('|').map((part) => part.trim()).filter(Boolean);

/** The words of a list that a file holds as a constant, `['day', 'night'] as const`; none where it has no such list. */
function wordsOfConstant(ts, file, name) {
  const declared = file.statements.filter(ts.isVariableStatement).flatMap(({ declarationList }) => [...declarationList.declarations]);
  const value = declared.find((each) => each.name.getText() === name)?.initializer;
  const list = value && ts.isAsExpression(value) ? value.expression : undefined;
  return list && ts.isArrayLiteralExpression(list) ? list.elements.map((element) => element.getText()) : [];
}

/** The named types that may be lists of words: an alias, an alias of a constant's, a property of an interface. */
function namedLists(ts, node) {
  if (ts.isInterfaceDeclaration(node)) {
    return node.members.filter((member) => ts.isPropertySignature(member) && member.type).map(({ name, type }) => [`${node.name.text}['${name.getText()}']`, partsOf(type.getText())]);
  }
  if (!ts.isTypeAliasDeclaration(node)) return [];
  const [, constant] = /^\(typeof (\w+)\)\[number\]$/.exec(node.type.getText()) ?? [];
  return [[node.name.text, constant ? wordsOfConstant(ts, node.getSourceFile(), constant) : partsOf(node.type.getText())]];
}

const isWord = (part) => /^'[^']*'$/.test(part);

/** A number among words, as `8 | 16`, is a word where it is written as text. */
const asText = (part) => (/^\d+$/.test(part) ? `'${part}'` : part);

/** An attribute is text: of the types its property may have, what can be written as such; named lists of words written out. */
function typeOfAttribute({ type }, lists) {
  const parts = partsOf(type?.text ?? 'string').flatMap((part) => lists.get(part) ?? [asText(part)]).filter((part) => part !== "''" && part !== 'undefined');
  if (parts.includes('boolean')) return 'boolean';
  return parts.every(isWord) ? [...new Set(parts)].join(' | ') : 'string';
}

/** The same text whatever file the disk hands out first: what a class takes over is marked at the end. */
const inOrder = ({ inheritedFrom, ...own }) => (inheritedFrom ? { ...own, inheritedFrom } : own);

function publish(declaration, lists) {
  declaration.members = (declaration.members ?? []).filter(isPublic).map(inOrder);
  declaration.events = (declaration.events ?? []).filter(isPublic).map((event) => ({ ...event, type: { text: typeOfEvent(event.name) } }));
  declaration.attributes = (declaration.attributes ?? []).map((attribute) => inOrder({ ...attribute, type: { text: typeOfAttribute(attribute, lists) } }));
  // The colours are those of the theme in force.
  declaration.cssProperties = (declaration.cssProperties ?? []).map((token) => ({ default: 'by theme', ...token }));
}

/** The widgets' classes and what they are made from, as far back as this package goes, by name. */
function chainOf(modules) {
  const classes = new Map(modules.flatMap(({ declarations }) => (declarations ?? []).filter(({ kind }) => kind === 'class').map((each) => [each.name, each])));
  const chain = new Set();
  for (let names = [...classes.values()].filter(({ customElement }) => customElement).map(({ name }) => name); names.length > 0; ) {
    names.forEach((name) => chain.add(name));
    names = names.map((name) => classes.get(name)?.superclass?.name).filter((name) => classes.has(name) && !chain.has(name));
  }
  return chain;
}

export function publicManifest() {
  const lists = new Map();
  return {
    name: 'public-manifest',
    collectPhase({ ts, node }) {
      for (const [name, words] of namedLists(ts, node)) if (words.length > 0 && words.every(isWord)) lists.set(name, words);
    },
    packageLinkPhase({ customElementsManifest }) {
      const chain = chainOf(customElementsManifest.modules);
      for (const module of customElementsManifest.modules) {
        module.path = module.path.replace(/\.ts$/, '.js');
        module.declarations = (module.declarations ?? []).filter(({ kind, name }) => kind === 'class' && chain.has(name));
        module.declarations.forEach((declaration) => publish(declaration, lists));
        const names = new Set(module.declarations.map(({ name }) => name));
        module.exports = (module.exports ?? []).filter(({ kind, name }) => kind === 'custom-element-definition' || names.has(name));
      }
      // The analyzer takes files as the disk hands them out.
      customElementsManifest.modules = customElementsManifest.modules.filter(({ exports }) => exports.length > 0).sort((one, other) => (one.path < other.path ? -1 : 1));
    },
  };
}
