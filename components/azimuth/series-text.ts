import { parseBearing } from '../../core/angle/parse-bearing.js';
import type { Shot } from '../../core/sight/bearing-series.js';
import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../core/time/parse-time-of-day.js';

/** What is wrong with a line of a series: which line, which part, and the refusal's code. */
export interface LineProblem {
  readonly line: number;
  readonly part: 'parts' | 'time' | 'bearing' | 'head';
  readonly refusal: string;
}

export interface SeriesText {
  readonly shots: readonly Shot[];
  readonly problems: readonly LineProblem[];
}

/** Half a day: a later shot whose time of day is that much earlier was taken after midnight. */
const HALF_DAY = 43_200_000;
const DAY = 86_400_000;

const columns = (line: string): string[] => line.trim().split(/\t+|\s*;\s*| {2,}|\s+/);

/**
 * Reads a series: a line a bearing, with time, bearing and at will the head, parted by tabs,
 * semicolons or spaces. The day is that of the date; times after midnight belong to the next.
 */
export function readSeries(text: string, date: CivilDate): SeriesText {
  const shots: Shot[] = [];
  const problems: LineProblem[] = [];
  text.split(/\r?\n/).forEach((line, index) => {
    if (line.trim() === '') return;
    const [timeText = '', bearingText = '', headText, ...rest] = columns(line);
    const problem = (part: LineProblem['part'], refusal: string): void => void problems.push({ line: index + 1, part, refusal });
    if (bearingText === '' || rest.length > 0) return problem('parts', 'not-understood');
    const [time, bearing, head] = [parseTimeOfDay(timeText), parseBearing(bearingText), headText === undefined ? null : parseBearing(headText)];
    if (!time.ok) return problem('time', time.refusal);
    if (!bearing.ok) return problem('bearing', bearing.refusal);
    if (head && !head.ok) return problem('head', head.refusal);
    const onDay = instantOf(date, time.value);
    const first = shots[0]?.instant.getTime() ?? onDay.getTime();
    const instant = first - onDay.getTime() > HALF_DAY ? new Date(onDay.getTime() + DAY) : onDay;
    shots.push({ instant, compassBearing: bearing.value, ...(head?.ok ? { heading: head.value } : {}) });
  });
  return { shots, problems };
}
