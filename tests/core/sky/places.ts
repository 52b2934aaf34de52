import { bodyNamed, kindOf } from '../../../core/sky/body.js';
import type { BodyName } from '../../../core/sky/body.js';
import { reference } from '../../support/reference.js';

export interface Place {
  id: string;
  body: string;
  utc: string;
  lat: number;
  lon: number;
  gha_aries_deg: number;
  gha_deg: number;
  dec_deg: number;
  hc_deg: number;
  zn_deg: number;
  hp_arcmin?: number;
  sd_arcmin?: number;
}

/** JPL DE405 with ERFA (IAU 2006/2000A): the method and its own errors stand in the header of the file. */
export const places = reference<{ cases: Place[] }>('sky-places.json').cases;

export function bodyOf({ body }: { body: string }): BodyName {
  const named = bodyNamed(body);
  if (!named) throw new Error(`${body} is no body`);
  return named;
}

/** What the bodies are asked to reach, minutes of arc; Rigil Kentaurus is a binary, its reference good to 8″ only. */
export function allowed(body: BodyName): number {
  if (body === 'Rigil Kentaurus') return 0.15;
  return { Sun: 0.015, Moon: 0.05, planet: 0.08, star: 0.01 }[kindOf(body)];
}

/** Keeps the worst value of each kind, to be told after the test. */
export class Worst {
  readonly #values = new Map<string, number>();

  note(kind: string, value: number): void {
    this.#values.set(kind, Math.max(this.#values.get(kind) ?? 0, Math.abs(value)));
  }

  toString(): string {
    return [...this.#values].map(([kind, value]) => `${kind} ${value.toFixed(4)}`).join(', ');
  }
}

/** Planets by name, stars together: the rows of the table of errors. */
export function rowOf(body: BodyName): string {
  return kindOf(body) === 'star' && body !== 'Rigil Kentaurus' && body !== 'Polaris' ? 'stars' : body;
}
