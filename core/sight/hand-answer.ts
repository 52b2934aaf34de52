import { deviationCurve } from '../deviation/deviation-curve.js';
import { courseMistakes } from '../answer/course-mistakes.js';
import type { Distractor } from '../answer/question.js';
import { markAnswer } from '../answer/mark.js';
import type { Mark } from '../answer/mark.js';
import { numberQuestion } from '../answer/make-question.js';
import { assessorsTolerances } from '../answer/tolerances.js';
import type { Conversion, ConversionInput } from './conversion.js';

/** Mistakes of the card: entered with the bearing, or with a true course as if it were by compass. */
function cardMistakes({ deviation: card, bearing, heading }: ConversionInput, from: number, way: 1 | -1, variation: number, compass: number | null): Distractor<number>[] {
  if (typeof card !== 'object' || card === null) return [];
  const curve = deviationCurve(card);
  const wrong = (code: string, entered: number | null): Distractor<number>[] => {
    const deviation = entered === null ? null : curve.at(entered);
    return deviation === null ? [] : [{ code, value: from + way * (variation + deviation) }];
  };
  return [...(bearing ? wrong('deviation-of-bearing', compass) : []), ...(heading.by === 'true' ? wrong('true-as-compass', heading.value) : [])];
}

/**
 * Holds what the user found by hand against the result and names the mistake that explains
 * the difference; null unless the way is from compass to true or back. `text` is read as a bearing,
 * right within the assessor's tolerance. Throws `RangeError` as `deviationCurve` for a bad card.
 */
export function markByHand(input: ConversionInput, result: Conversion, text: string): Mark | null {
  const { from, to, values, variation, deviation } = result;
  const [start, answer] = [values[from], values[to]];
  const ends = (from === 'compass' && to === 'true') || (from === 'true' && to === 'compass');
  if (!ends || start === null || answer === null || variation === null || deviation === null) return null;
  const way = to === 'true' ? 1 : -1;
  const mistakes = [...cardMistakes(input, start, way, variation, values.compass), ...courseMistakes(start, way, variation, deviation)];
  const question = numberQuestion({ code: 'course', part: 'result', form: 'bearing', tolerance: assessorsTolerances.course, answer, mistakes });
  return markAnswer(question, text);
}
