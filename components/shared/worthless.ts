import type { Quantity } from '../../core/working/quantity.js';
import type { IsGrave } from './reason.js';

/** Under these no error was found at all, whatever the figures say: the body cannot have been seen so, its bearing tells nothing, a line was read backwards, or a mark is too far to be seen. */
const grave: ReadonlySet<string> = new Set(['below-horizon', 'lost-beside-sun', 'near-zenith', 'other-side', 'reciprocal', 'marks-exchanged', 'mark-beyond-sight', 'marks-far-apart']);

/** A bright planet found in the dawn may be held over the compass until the Sun stands so high, degrees; beyond it no star or planet but Venus is. Common practice, no source. */
const HELD = 5;

/** Whether a caution makes an error worth nothing. */
export const isGrave: IsGrave = ({ code, values }) => grave.has(code) || (code === 'lost-in-daylight' && (values['sun'] as Quantity).value > HELD);
