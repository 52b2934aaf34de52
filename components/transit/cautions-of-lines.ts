import type { Caution } from '../../core/working/caution.js';
import type { LubberElement } from '../shared/lubber-element.js';

/**
 * The cautions of marks ashore as they are told: core counts the lines it was given, here a line has the number of its fields,
 * which may skip one that is not complete. Without other `lines` none is named. What there is to check is not what a body asks for.
 */
export function cautionsOfLines(host: LubberElement, cautions: readonly Caution[], numbers: readonly number[], lines: number): Caution[] {
  return cautions.map((caution) => {
    const counted = caution.values['number'];
    const number = typeof counted === 'string' ? String(numbers[Number(counted) - 1] ?? counted) : '';
    const line = number && lines > 1 ? host.t('transit.line.lead', { number }) : '';
    return { ...caution, values: { ...caution.values, number, line, check: host.t('transit.check') } };
  });
}
