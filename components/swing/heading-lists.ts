import type { Caution } from '../../core/working/caution.js';
import { decimalMark } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** Cautions in which core lists headings as text, `022.5°, 180°`, with the list and the decimals of the page's language; a swing has one line of marks, which needs no number. */
export function inPageFigures({ t }: LubberElement, cautions: readonly Caution[]): readonly Caution[] {
  return cautions.map((caution) => {
    const values = { ...caution.values, line: '' };
    const { headings } = caution.values;
    if (typeof headings !== 'string') return { ...caution, values };
    const listed = headings.split(', ').map((heading) => heading.replace('.', decimalMark()));
    return { ...caution, values: { ...values, headings: listed.join(t('list.comma')) } };
  });
}
