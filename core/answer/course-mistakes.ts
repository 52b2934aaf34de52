import type { Distractor } from './question.js';

/** What each sign taken wrongly, or a part left out, makes of a direction; `way` is +1 towards true. */
export function courseMistakes(from: number, way: 1 | -1, variation: number, deviation: number): Distractor<number>[] {
  const to = (v: number, d: number): number => from + way * (v + d);
  return [
    { code: 'both-signs', value: to(-variation, -deviation) },
    { code: 'variation-sign', value: to(-variation, deviation) },
    { code: 'deviation-sign', value: to(variation, -deviation) },
    { code: 'variation-omitted', value: to(0, deviation) },
    { code: 'deviation-omitted', value: to(variation, 0) },
  ];
}
