import { formatInstant } from '../../core/time/instant.js';

/** An instant as a sentence names it, UTC to the second: `2026-11-26 08:52:40`. */
export const instantText = (instant: Date): string => formatInstant(instant).replace('T', ' ').replace('Z', '');
