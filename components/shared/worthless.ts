import type { Caution } from '../../core/working/caution.js';

/** Under these no error was found at all, whatever the figures say: the body cannot have been seen so, its bearing tells nothing, a line was read backwards, or a mark is too far to be seen. */
const grave: ReadonlySet<string> = new Set(['below-horizon', 'near-zenith', 'other-side', 'reciprocal', 'marks-exchanged', 'mark-beyond-sight', 'marks-far-apart']);

/** Whether a caution makes an error worth nothing. */
export const isWorthless = (cautions: readonly Caution[]): boolean => cautions.some(({ code }) => grave.has(code));
