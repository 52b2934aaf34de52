import { readFileSync } from 'node:fs';

/** Reads a file of tests/reference, whose header names the source of its figures. */
export function reference<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(`../reference/${name}`, import.meta.url), 'utf8')) as T;
}
