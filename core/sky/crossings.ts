/** A quantity that changes with time, both in the caller's units. */
export type Course = (time: number) => number;

/** A stretch on which a course only rises or only falls. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
}

/** Share of a span at which the golden section cuts it. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The time of the highest value of a course with one summit in a span, by golden section. */
function summit(course: Course, from: number, to: number, precision: number): number {
  let [low, high] = [from, to];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [course(left), course(right)];
  while (high - low > precision) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = course(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = course(right);
    }
  }
  return (low + high) / 2;
}

/**
 * The stretches between a course's turning points. The step must be so short that no two
 * turning points lie within two steps.
 */
export function stretches(course: Course, from: number, to: number, step: number, precision: number): Stretch[] {
  const count = Math.ceil((to - from) / step);
  const times = Array.from({ length: count + 1 }, (_, index) => (index === count ? to : from + index * step));
  const values = times.map(course);
  const turns = [from];
  for (let index = 1; index < count; index += 1) {
    const [before = 0, here = 0, after = 0] = values.slice(index - 1, index + 2);
    const [start = from, end = to] = [times[index - 1], times[index + 1]];
    if (here > before && here >= after) turns.push(summit(course, start, end, precision));
    if (here < before && here <= after) turns.push(summit((time) => -course(time), start, end, precision));
  }
  turns.push(to);
  return turns.slice(1).map((end, index) => {
    const start = turns[index] ?? from;
    return { from: start, to: end, first: course(start), last: course(end) };
  });
}

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
