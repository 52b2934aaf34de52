/** How many files are named. */
const MOST = 10;

/** The files that took longest, in a line to be printed; empty where none took a second. */
export function slowestLine(milliseconds) {
  const slow = [...milliseconds].filter(([, time]) => time >= 1000).sort(([, one], [, other]) => other - one).slice(0, MOST);
  return slow.length === 0 ? '' : `slowest: ${slow.map(([file, time]) => `${file} ${(time / 1000).toFixed(1)} s`).join(', ')}`;
}
