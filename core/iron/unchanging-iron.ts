import { finiteOrNull } from './finite-or-null.js';
import type { IronObservation, UnchangingName } from './iron-observation.js';

/** What the iron of a ship keeps from place to place, pure numbers; null where no place gave it. */
export interface Unchanging extends Readonly<Record<UnchangingName, number | null>> {
  /** One standard deviation of each mean; null where a place that gave the value gave none. */
  readonly standardErrors: Readonly<Record<UnchangingName, number | null>>;
}

/** The values of one of them that were given at all, each with its doubt if that was. */
function given(observations: readonly IronObservation[], name: UnchangingName): { value: number; sigma: number | null }[] {
  return observations.flatMap(({ exact, lambda, standardErrors }) => {
    const value = name === 'lambda' ? (lambda ?? exact.lambda) : exact[name];
    return typeof value === 'number' ? [{ value, sigma: standardErrors?.[name] ?? null }] : [];
  });
}

export function valuesGiven(observations: readonly IronObservation[], name: UnchangingName): readonly number[] {
  return given(observations, name).map(({ value }) => value);
}

/** Plain means over the places: swings of one ship are alike in worth here, whatever H. */
export function unchangingOf(observations: readonly IronObservation[]): Unchanging {
  const each = (of: (list: { value: number; sigma: number | null }[]) => number) => {
    const at = (name: UnchangingName): number | null => {
      const list = given(observations, name);
      return list.length === 0 ? null : finiteOrNull(of(list));
    };
    return { lambda: at('lambda'), A: at('A'), D: at('D'), E: at('E') };
  };
  return {
    ...each((list) => list.reduce((sum, { value }) => sum + value, 0) / list.length),
    standardErrors: each((list) => {
      // Not a number unless all are known, and so null.
      const sigmas = list.flatMap(({ sigma }) => (sigma === null ? [] : [sigma]));
      return sigmas.length < list.length ? NaN : Math.hypot(...sigmas) / list.length;
    }),
  };
}
