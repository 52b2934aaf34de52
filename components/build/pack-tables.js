/**
 * Writes the long tables of core as texts, which take half the room: the magnetic models, the waves of
 * the Sun, Moon and planets, the stars, the swing of the Earth's axis. In the sources they stand as published; what reads them back is
 * `unpack-*.ts` beside them, and `tests/package/packed-tables.test.ts` compares figure for figure.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { signsOf, unsigned } from './pack-numbers.js';

/** From the newest on. */
const models = ['wmm2025', 'wmm2020', 'wmm2015v2', 'wmm2015'];
const series = ['earth', 'moon', 'venus', 'mars', 'jupiter', 'saturn'];

const list = (numbers, signs) => numbers.map((number) => signsOf(unsigned(number), signs)).join('');

/** A model by how far it is from the next newer one, run back to its epoch. */
function modelText({ epoch, main, change }, newer, signs) {
  const run = (at) => (newer ? newer.main[at] + (epoch - newer.epoch) * newer.change[at] : 0);
  return list([...main.map((number, at) => number - run(at)), ...change.map((number, at) => number - (newer?.change[at] ?? 0))], signs);
}

function modelModule(name, model, newerName, newer, signs) {
  const written = `/* @__PURE__ */ unpackModel(${model.epoch}, '${modelText(model, newer, signs)}'${newer ? `, ${newerName}Coefficients` : ''})`;
  const imported = newer ? `import { ${newerName}Coefficients } from './${newerName}-coefficients.js';\n` : '';
  return `import { unpackModel } from './unpack-model.js';\n${imported}export const ${name}Coefficients = ${written};\n`;
}

/** The row without its decimal points, which the sizes tell again. */
function waveRow([speed, ...waves], { signs, decimalsFor }) {
  const whole = (number, size) => Math.round(number * 10 ** decimalsFor(size));
  const largest = Math.max(...waves.filter((_, at) => at % 2 === 0));
  const numbers = [unsigned(whole(speed, largest)), ...waves.map((number, at) => (at % 2 === 0 ? number : whole(number, waves[at - 1])))];
  return numbers.map((number) => signsOf(number, signs)).join('');
}

/** The shortest way to write a number that `Number` reads back. */
function shortest(number) {
  const plain = String(number).replace(/^(-?)0\./, '$1.');
  const scaled = number.toExponential().replace('+', '');
  return scaled.length < plain.length ? scaled : plain;
}

/** A coordinate as one text: the comma is none of the signs, and more of them part what is greater. */
function seriesText({ unit, powers }, tools) {
  return [shortest(unit), ...powers.map(([constant, ...rows]) => [shortest(constant), ...rows.map((row) => waveRow(row, tools))].join(','))].join(',,');
}

function orbitCode({ meanMotion, coordinates }, tools) {
  return `/* @__PURE__ */ unpackOrbit(${meanMotion}, '${coordinates.map((series) => seriesText(series, tools)).join(',,,')}')`;
}

const rowsText = (rows, signs) => rows.map((row) => list(row, signs)).join(',');

const rowsCode = (rows, signs) => `unpackRows('${rowsText(rows, signs)}')`;

function moonCode({ meanMotion, longitude, latitude, distance }, tools) {
  const texts = [longitude, latitude, distance].flatMap(({ series, sun }) => [seriesText(series, tools), rowsText(sun, tools.signs)]);
  return `/* @__PURE__ */ unpackMoon(${[meanMotion, ...texts.map((text) => `'${text}'`)].join(', ')})`;
}

function starsCode(catalogue, signs) {
  const places = Object.values(catalogue).map((place, star, all) => [place[0] - (star > 0 ? all[star - 1][0] : 0), ...place.slice(1)]);
  return `/* @__PURE__ */ unpackStars(${JSON.stringify(Object.keys(catalogue).join(','))}, '${list(places.flat(), signs)}')`;
}

export async function packTables(out) {
  const file = (path) => join(out, 'core', `${path}.js`);
  const load = (path) => import(pathToFileURL(file(path)).href);
  const signs = await load('text/packed-numbers');
  const { decimalsFor } = await load('sky/unpack-series');

  const loaded = await Promise.all(models.map(async (name) => (await load(`field/${name}-coefficients`))[`${name}Coefficients`]));
  models.forEach((name, at) => writeFileSync(file(`field/${name}-coefficients`), modelModule(name, loaded[at], models[at - 1], loaded[at - 1], signs)));

  for (const name of series) {
    const { [`${name}Series`]: table } = await load(`sky/${name}-series`);
    const [code, used] = name === 'moon' ? [moonCode, 'unpackMoon'] : [orbitCode, 'unpackOrbit'];
    writeFileSync(file(`sky/${name}-series`), `import { ${used} } from './unpack-series.js';\nexport const ${name}Series = ${code(table, { signs, decimalsFor })};\n`);
  }

  const { starCatalogue } = await load('sky/star-catalogue');
  const source = readFileSync(file('sky/star-catalogue'), 'utf8');
  const packed = source.replace(/(export const starCatalogue = )\{.*?\n\};/s, (_, start) => `${start}${starsCode(starCatalogue, signs)};`);
  writeFileSync(file('sky/star-catalogue'), `import { unpackStars } from './unpack-stars.js';\n${packed}`);

  for (const [path, name, codeOf] of [
    ['sky/star-magnitudes', 'starMagnitudes', (magnitudes) => `unpackRow('${list(magnitudes, signs)}')`],
    ['sky/nutation-terms', 'nutationTerms', (terms) => rowsCode(terms, signs)],
  ]) {
    const code = codeOf((await load(path))[name]);
    writeFileSync(file(path), `import { ${code.slice(0, code.indexOf('('))} } from './unpack-series.js';\nexport const ${name} = /* @__PURE__ */ ${code};\n`);
  }
}
