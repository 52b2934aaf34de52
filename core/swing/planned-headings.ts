import { angleFromTo } from '../angle/wrap.js';

/** Headings of a swing spread evenly from north, degrees [0, 360). */
export function plannedHeadings(count: number): readonly number[] {
  return Array.from({ length: count }, (_, place) => (place * 360) / count);
}

/** The planned headings near which, within half the step between them, nothing was taken. */
export function missingHeadings(count: number, taken: readonly number[]): readonly number[] {
  const half = 180 / count;
  return plannedHeadings(count).filter((planned) => !taken.some((heading) => Math.abs(angleFromTo(planned, heading)) < half));
}
