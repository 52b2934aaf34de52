/** The types of results as TypeScript declares them, with their comments, from what the build has written. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** A result is shown with what it is made of, to this depth. */
const DEPTH = 3;

/** Every interface and type of the given folders by its name: the names in it, and its text. */
export function readDeclarations(folders) {
  const found = new Map();
  for (const folder of folders) {
    for (const path of readdirSync(folder, { recursive: true })) {
      if (!path.endsWith('.d.ts')) continue;
      const file = ts.createSourceFile(path, readFileSync(join(folder, path), 'utf8'), ts.ScriptTarget.Latest, true);
      for (const statement of file.statements) {
        if (!ts.isInterfaceDeclaration(statement) && !ts.isTypeAliasDeclaration(statement)) continue;
        const declared = statement.getFullText().trim().replace(/^export /m, '').replace(/\breadonly /g, '').replace(/^(?: {4})+/gm, (indent) => indent.slice(indent.length / 2));
        found.set(statement.name.text, { declared, names: namesIn(statement) });
      }
    }
  }
  return found;
}

function namesIn(node) {
  const names = [];
  const visit = (each) => {
    if (ts.isTypeReferenceNode(each) || ts.isExpressionWithTypeArguments(each)) names.push((each.typeName ?? each.expression).getText());
    ts.forEachChild(each, visit);
  };
  visit(node);
  return names;
}

/** A type as words a page may write: where it is the name of such words, or of a member of an interface, they are told in its place. */
export function spelledOut(type, declarations) {
  const [, owner, member] = type.match(/^(\w+)\['(\w+)'\]$/) ?? [];
  if (owner) return declarations.get(owner)?.declared.match(new RegExp(`^ +${member}: (.*);$`, 'm'))?.[1] ?? type;
  return type.replace(/\b[A-Z]\w+/g, (name) => declarations.get(name)?.declared.match(/^type \w+ = ('[^']*'(?: \| '[^']*')*);$/m)?.[1] ?? name);
}

/** The declarations a type names, the outer ones first: [name, text]. */
export function declarationsOf(type, declarations) {
  const shown = new Map();
  let names = type.match(/\b[A-Z]\w+/g) ?? [];
  for (let depth = 0; depth < DEPTH; depth += 1) {
    const next = [];
    for (const name of names) {
      const one = declarations.get(name);
      if (!one || shown.has(name)) continue;
      shown.set(name, one.declared);
      next.push(...one.names);
    }
    names = next;
  }
  return [...shown];
}
