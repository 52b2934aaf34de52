import type { Caution } from '../../core/working/caution.js';
import { decimalMark } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** Cautions in which core lists headings as text, `022.5°, 180°`, with the list and the decimals of the page's language. */
export function inPageFigures({ t }: LubberElement, cautions: readonly Caution[]): readonly Caution[] {
  return cautions.map((caution) => {
    const { headings } = caution.values;
    if (typeof headings !== 'string') return caution;
    const listed = headings.split(', ').map((heading) => heading.replace('.', decimalMark()));
    return { ...caution, values: { ...caution.values, headings: listed.join(t('list.comma')) } };
  });
}
