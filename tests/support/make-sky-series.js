/**
 * Makes the tables core/sky/*-series.ts: `node --import tsx tests/support/make-sky-series.js`.
 *
 * The whole theories come from a package. Each coordinate keeps the terms above a size; their
 * sizes and phases and a cubic are then fitted to the whole theory over 1900 to 2100, which
 * takes up what slow terms were left out; and every figure is rounded to what the size of its
 * term needs.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { indented } from './sky-series/abridge.js';
import { moonModule } from './sky-series/moon.js';
import { planetModules } from './sky-series/planets.js';

for (const { name, text } of [...planetModules(), moonModule()]) {
  writeFileSync(fileURLToPath(new URL(`../../core/sky/${name}-series.ts`, import.meta.url)), indented(text));
  console.log(`${name}-series.ts: ${text.length} characters`);
}
