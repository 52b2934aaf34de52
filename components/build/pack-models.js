/**
 * Writes the coefficients of the magnetic models as texts, each model by how far it is from the next
 * newer one, which takes half the room: `core/field/unpack-model.ts` reads them and says how. In the
 * sources they stand as published.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** From the newest on. */
const models = ['wmm2025', 'wmm2020', 'wmm2015v2', 'wmm2015'];

function signsOf(number, { SIGNS, FIGURES }) {
  let left = number < 0 ? -2 * number - 1 : 2 * number;
  let signs = SIGNS[left % FIGURES];
  const more = SIGNS.length - FIGURES;
  for (left = Math.floor(left / FIGURES); left > 0; left = Math.floor(left / more)) signs = SIGNS[FIGURES + (left % more)] + signs;
  return signs;
}

/** What `unpackModel` reads back. */
export function packedModel({ epoch, main, change }, newer, signs) {
  const run = (at) => (newer ? newer.main[at] + (epoch - newer.epoch) * newer.change[at] : 0);
  const numbers = [...main.map((number, at) => number - run(at)), ...change.map((number, at) => number - (newer?.change[at] ?? 0))];
  return numbers.map((number) => signsOf(number, signs)).join('');
}

export async function packModels(out) {
  const folder = join(out, 'core/field');
  const modules = await Promise.all([...models.map((name) => `${name}-coefficients`), 'unpack-model'].map((name) => import(pathToFileURL(join(folder, `${name}.js`)).href)));
  const signs = modules.pop();
  let newer;
  models.forEach((name, index) => {
    const model = modules[index][`${name}Coefficients`];
    const lines = [
      "import { unpackModel } from './unpack-model.js';",
      ...(newer ? [`import { ${newer.name}Coefficients } from './${newer.name}-coefficients.js';`] : []),
      `export const ${name}Coefficients = /* @__PURE__ */ unpackModel(${model.epoch}, '${packedModel(model, newer?.model, signs)}'${newer ? `, ${newer.name}Coefficients` : ''});`,
    ];
    writeFileSync(join(folder, `${name}-coefficients.js`), `${lines.join('\n')}\n`);
    newer = { name, model };
  });
}
