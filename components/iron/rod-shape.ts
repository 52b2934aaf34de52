import type { IronParameterName } from '../../core/iron/iron-parameters.js';

export type RodView = 'plan' | 'side' | 'astern';
/** Which way an end points, or the pole it has for ever. */
export type RodEnd = 'bow' | 'stern' | 'port' | 'starboard' | 'top' | 'foot' | 'red' | 'blue';

/** A rod in one view of the ship: where it lies and what its two ends are. */
export interface RodShape {
  readonly view: RodView;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly ends: readonly [RodEnd, RodEnd];
}

/** Where the compass stands in each view, of 84 by 52 units. */
export const compassIn: Readonly<Record<RodView, readonly [number, number]>> = {
  plan: [38, 26],
  side: [38, 15],
  astern: [42, 15],
};

function shape(view: RodView, from: [number, number], to: [number, number], ends: [RodEnd, RodEnd]): RodShape {
  return { view, from, to, ends };
}

/**
 * One rod that does what each parameter says, for a value above 0 and one below. Derived from the
 * definitions: the near end of a rod above 0 lies on the side to which the force goes and is the
 * end that turns blue when the field runs its way, for blue draws the north-seeking end; a rod
 * of its own axis below 0 runs past the compass. P, Q and R are magnets, above 0 with blue near.
 * Plan and side have the bow to the right; the third view is from astern.
 */
export const rodShapes: Readonly<Record<IronParameterName, readonly [above: RodShape, below: RodShape]>> = {
  a: [shape('plan', [47, 26], [72, 26], ['stern', 'bow']), shape('plan', [12, 26], [66, 26], ['stern', 'bow'])],
  b: [shape('plan', [50, 26], [50, 46], ['port', 'starboard']), shape('plan', [50, 26], [50, 6], ['starboard', 'port'])],
  c: [shape('side', [52, 15], [52, 42], ['top', 'foot']), shape('side', [24, 15], [24, 42], ['top', 'foot'])],
  d: [shape('plan', [38, 38], [64, 38], ['stern', 'bow']), shape('plan', [38, 15], [64, 15], ['stern', 'bow'])],
  e: [shape('plan', [38, 32], [38, 48], ['port', 'starboard']), shape('plan', [38, 5], [38, 47], ['port', 'starboard'])],
  f: [shape('astern', [56, 15], [56, 42], ['top', 'foot']), shape('astern', [28, 15], [28, 42], ['top', 'foot'])],
  g: [shape('side', [38, 30], [68, 30], ['stern', 'bow']), shape('side', [38, 30], [10, 30], ['bow', 'stern'])],
  h: [shape('astern', [42, 30], [64, 30], ['port', 'starboard']), shape('astern', [42, 30], [20, 30], ['starboard', 'port'])],
  k: [shape('side', [38, 24], [38, 44], ['top', 'foot']), shape('side', [38, 4], [38, 26], ['top', 'foot'])],
  P: [shape('plan', [48, 26], [70, 26], ['blue', 'red']), shape('plan', [48, 26], [70, 26], ['red', 'blue'])],
  Q: [shape('plan', [38, 32], [38, 48], ['blue', 'red']), shape('plan', [38, 32], [38, 48], ['red', 'blue'])],
  R: [shape('side', [38, 25], [38, 44], ['blue', 'red']), shape('side', [38, 25], [38, 44], ['red', 'blue'])],
};
