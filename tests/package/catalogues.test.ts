import assert from 'node:assert/strict';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { basename, join, sep } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { deviationLimits } from '../../core/deviation/deviation-limits.js';
import { adviceSources } from '../../core/record/advice-settings.js';
import { translate } from '../../components/shared/catalogue.js';
import type { Catalogue } from '../../components/shared/catalogue.js';
import { projectFolder } from '../install.js';

const folder = join(projectFolder, 'components');

/** The catalogues a file exports. */
async function cataloguesOf(...path: readonly string[]): Promise<readonly Catalogue[]> {
  return Object.values((await import(pathToFileURL(join(folder, ...path)).href)) as Readonly<Record<string, Catalogue>>);
}

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('-messages.ts') && !file.startsWith(`languages${sep}`))
  .sort();

const modules = await Promise.all(files.map(async (file) => [file, await cataloguesOf(file)] as const));

const english = new Map(modules.flatMap(([, catalogues]) => catalogues.flatMap((catalogue) => Object.entries(catalogue))));

describe('the English catalogues', () => {
  it('are found', () => assert.ok(files.length > 20, files.join()));

  // A translation is one list for all widgets of a page: a key of two meanings would be told wrong in one of them.
  it('give a key one text, in whichever file it stands', () => {
    const odd = modules.flatMap(([file, catalogues]) =>
      catalogues.flatMap((catalogue) => Object.entries(catalogue).flatMap(([key, text]) => (english.get(key) === text ? [] : [`${file} ${key}`]))),
    );
    assert.deepEqual(odd, []);
  });

  it('name every source of a limit and of the book’s advice', () => {
    const sources = [...deviationLimits.map(({ source }) => source), ...Object.values(adviceSources)];
    assert.deepEqual(sources.filter((source) => !english.has(`source.${source}`)), []);
  });
});

/** Texts whose count is never one: where it is, another text is shown. And counts that no noun follows. */
const neverOne = ['caution.too-few-to-find-slips', 'transit.scatter', 'transit.picture.several', 'record.coefficients', 'advice.coefficient-changed'];
const withoutNoun = ['drill.at', 'record.count.memory', 'swing.count', 'advice.card-differs', 'record.page'];

/** Keys whose text would read `1 readings`: a count with a word behind it. Indonesian and Chinese have no plural. */
const pluralsIn = (words: ReadonlyMap<string, string>): string[] =>
  [...words].filter(([key, text]) => /\{(?:count|freedom|rows)\}\s\p{L}/u.test(text) && !neverOne.includes(key) && !withoutNoun.includes(key)).map(([key]) => key);

describe('the poles of iron', () => {
  // A hint of the drill said that the field points down in the northern hemisphere.
  it('are told by the magnetic equator', () => {
    assert.deepEqual(byHemisphere(english), []);
    assert.match(english.get('drill.hint.polarity') ?? '', /magnetic equator/);
  });
});

describe('a count of one, as of none or five', () => {
  it('reads well in English', () => assert.deepEqual(pluralsIn(english), []));
  it('would be found', () => assert.deepEqual(pluralsIn(new Map([['a', '{count} readings'], ['b', 'Readings: {count}.']])), ['a']));
});

/** Texts of which a line could end behind ±. */
const breakable = (words: Catalogue): string[] => Object.keys(words).filter((key) => translate('en', words, key, {}).includes('± '));

// "(± 0.64°)" could stand with its ± at the end of one line and the figure on the next.
describe('± and its figure', () => {
  it('stay on one line in every text of a catalogue', () => {
    assert.ok([...english.values()].some((text) => text.includes('± {')));
    assert.deepEqual(breakable(Object.fromEntries(english)), []);
    assert.equal(translate('en', { a: 'a doubt of ± {doubt}.' }, 'a', { doubt: '0.6°' }), 'a doubt of ±\u00a00.6°.');
  });

  it('and in what views write themselves', () => {
    const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => /\.ts$/.test(file) && !/-messages\.ts$/.test(file));
    assert.deepEqual(sources.filter((file) => /± \$\{/.test(readFileSync(join(folder, file), 'utf8'))), []);
  });
});

/** Spaces at which a line would end before a figure's unit, or before a mark that French sets apart. */
const loose = (words: Catalogue): string[] => Object.keys(words).filter((key) => /(?:\d|\}) (?:m|M|µT|nT|h|s|cm|ft|sm|%)(?![\p{L}’])|N 45|45 E| [:;?!»]|« /u.test(words[key] ?? ''));

// "Caps lus" could stand on one line and ": 9" on the next, "2" on one and "µT" on the next; "Headings understood:" on one and "9" on the next.
describe('a figure and its unit, a count and what it counts', () => {
  it('stay on one line in English', () => assert.deepEqual(loose(Object.fromEntries(english)), []));
  it('would be found', () => assert.deepEqual(loose({ a: 'Caps lus : {count}.', b: 'below 2 µT', c: 'within {metres} m', d: 'below 2\u00a0µT, 3 miles' }), ['a', 'b', 'c']));
  it('a count stands on the line of its colon', () => assert.equal(translate('en', { a: 'Headings: {count}. Still: {what}' }, 'a', { count: 9, what: 'none' }), 'Headings:\u00a09. Still: none'));
});

/** A hemisphere, in the languages there are. */
const hemisphere = /hemisphere|Halbkugel|Hemisphäre|hemisferio|hémisphère|belahan|半球/i;

/** Texts on the poles of iron that speak of a hemisphere: the vertical field is nil on the magnetic equator, by its definition, and up to 12° from the other one. */
const byHemisphere = (words: ReadonlyMap<string, string>): string[] =>
  [...words].filter(([key, text]) => /^(?:drill|iron)\./.test(key) && /polarity|slip|latitude|induced/.test(key) && hemisphere.test(text)).map(([key]) => key);

const placesOf = (text: string): string => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort().join(' ');

const translations = join(folder, 'languages');
/** A language is whole once it has the file that puts its parts together. */
const languages = existsSync(translations) ? readdirSync(translations).filter((language) => existsSync(join(translations, language, `${language}.ts`))) : [];

for (const language of languages) {
  const [whole = {}] = await cataloguesOf('languages', language, `${language}.ts`);

  describe(`the words in ${language}`, () => {
    it('are there for every key, and for no other', () => assert.deepEqual(Object.keys(whole).sort(), [...english.keys()].sort()));

    if (!['id', 'zh'].includes(language)) it('read well with a count of one', () => assert.deepEqual(pluralsIn(new Map(Object.entries(whole))), []));

    it('let no line end where it must not', () => assert.deepEqual([...breakable(whole), ...loose(whole)], []));

    // A translator compares file with file: words moved to another file in English had stayed behind in every language.
    it('stand in a file of the same name as in English, in the same order', async () => {
      const keysOf = (catalogues: readonly Catalogue[]): string[] => catalogues.flatMap((catalogue) => Object.keys(catalogue));
      const odd: string[] = [];
      for (const file of readdirSync(join(translations, language)).filter((name) => name.endsWith('-messages.ts'))) {
        const [, catalogues = []] = modules.find(([path]) => basename(path) === file) ?? [];
        const order = keysOf(catalogues);
        const places = keysOf(await cataloguesOf('languages', language, file)).map((key) => order.indexOf(key));
        if (places.some((place, index) => place <= (places[index - 1] ?? -1))) odd.push(file);
      }
      assert.deepEqual(odd, []);
    });

    it('tell the poles of iron by the magnetic equator', () => {
      assert.deepEqual(byHemisphere(new Map(Object.entries(whole))), []);
      assert.ok((whole['drill.hint.polarity'] ?? '').includes({ de: 'magnetischen Äquator', es: 'ecuador magnético', fr: 'équateur magnétique', id: 'katulistiwa magnet', zh: '磁赤道' }[language] ?? ''));
    });

    // Between two sentences Chinese has no space.
    it('are never empty', () => assert.deepEqual(Object.keys(whole).filter((key) => !whole[key] && english.get(key) && key !== 'list.gap'), []));

    it('leave every place where a value goes', () => {
      assert.deepEqual(Object.keys(whole).filter((key) => placesOf(whole[key] ?? '') !== placesOf(english.get(key) ?? '')), []);
    });
  });
}
