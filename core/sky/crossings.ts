/** A quantity that changes with time, both in the caller's units. */
export type Course = (time: number) => number;

/** A stretch on which a course only rises or only falls. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
}

/** How far apart two looks at a course are that tell whether it rises or falls, ms: a second loses none of a day's course to rounding. */
const APART = 1000;
/** How well a turning point is found, ms: next to it a course is level. */
const TURN_PRECISION = 50;

/** The time at which a course passes 0 on a stretch whose ends have different signs, by halving. */
export function crossing(course: Course, stretch: Stretch, precision: number): number {
  let [low, high] = [stretch.from, stretch.to];
  const rising = stretch.first < 0;
  while (high - low > precision) {
    const middle = (low + high) / 2;
    if (course(middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The stretches between a course's turning points. The step must be so short that no two
 * turning points lie within two steps.
 */
export function stretches(course: Course, from: number, to: number, step: number): Stretch[] {
  const stretch = (start: number, end: number, of: Course): Stretch => ({ from: start, to: end, first: of(start), last: of(end) });
  const slope: Course = (time) => course(time + APART / 2) - course(time - APART / 2);
  const count = Math.ceil((to - from) / step);
  const times = Array.from({ length: count + 1 }, (_, index) => (index === count ? to : from + index * step));
  const values = times.map(course);
  const turns = [from];
  for (let index = 1; index < count; index += 1) {
    const [before = 0, here = 0, after = 0] = values.slice(index - 1, index + 2);
    const [start = from, end = to] = [times[index - 1], times[index + 1]];
    if ((here > before && here >= after) || (here < before && here <= after)) turns.push(crossing(slope, stretch(start, end, slope), TURN_PRECISION));
  }
  turns.push(to);
  return turns.slice(1).map((end, index) => stretch(turns[index] ?? from, end, course));
}
