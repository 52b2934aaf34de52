/** A language of which every word can be told: the English text in brackets no widget writes by itself. */
import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Catalogue } from '../../components/shared/catalogue.js';
import { projectFolder } from '../install.js';

const folder = join(projectFolder, 'components');

/** Keys that hold a list of words shown one by one; and what is no text: a mark within figures, words that are read. */
const lists = ['day.weekdays', 'day.months'];
const marks = ['figures.decimal', 'entry.words'];

const marked = (text: string): string => (text === '' ? '' : `⟦${text}⟧`);

/** The text in brackets, the places of values left outside them: what a value says must be marked itself. */
function markedText(key: string, text: string): string {
  if (marks.includes(key)) return text;
  if (lists.includes(key)) return text.split(' ').map(marked).join(' ');
  return text.split(/(\{\w+\})/).map((piece) => (piece.startsWith('{') ? piece : marked(piece))).join('');
}

/** All that the widgets say, marked. */
export async function markedCatalogue(): Promise<Catalogue> {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('-messages.ts') && !file.startsWith(`languages${sep}`));
  const all: Record<string, string> = {};
  for (const file of files) {
    for (const catalogue of Object.values((await import(pathToFileURL(join(folder, file)).href)) as Readonly<Record<string, Catalogue>>)) {
      for (const [key, text] of Object.entries(catalogue)) all[key] = markedText(key, text);
    }
  }
  return all;
}

/** Texts of a shadow tree a person meets: shown, spoken, in pictures, and in the attributes that are read out. */
export function textsOfStage(): string[] {
  const spokenAttributes = ['aria-label', 'aria-description', 'aria-valuetext', 'aria-roledescription', 'title', 'placeholder', 'alt', 'label'];
  const found = new Set<string>();
  const walk = (root: Node): void => {
    for (const node of root.childNodes) {
      if (node.nodeType === Node.TEXT_NODE) found.add((node.textContent ?? '').replace(/\s+/g, ' ').trim());
      if (!(node instanceof Element) || ['style', 'script', 'textarea', 'mi', 'mo'].includes(node.localName)) continue;
      for (const name of spokenAttributes) if (node.hasAttribute(name)) found.add((node.getAttribute(name) ?? '').replace(/\s+/g, ' ').trim());
      if (node.shadowRoot) walk(node.shadowRoot);
      walk(node);
    }
  };
  walk(document.getElementById('stage') as HTMLElement);
  found.delete('');
  return [...found];
}
