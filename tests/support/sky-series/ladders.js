/** Waves set in ladders: each wave of a ladder is faster than the one before by the body's mean motion. */

/** Radians a century: nearer speeds are one; the theories' combinations agree to the last digit, other speeds lie far off. */
const SAME = 1e-3;

/** The same wave counted backwards. */
const turned = (wave) => ({ ...wave, phase: -wave.phase, speed: -wave.speed });

/** The ladder up from a wave; null where a rung is missing, but no two of them running. */
function ladderFrom(start, waves, step) {
  const ladder = [start];
  const rest = new Set(waves.filter(({ speed }) => Math.abs(speed) !== Math.abs(start.speed)));
  let missing = 0;
  for (let rung = 1; missing < 2; rung += 1) {
    const speed = start.speed + rung * step;
    const found = [...rest].find((wave) => Math.abs(Math.abs(wave.speed) - Math.abs(speed)) < SAME);
    rest.delete(found);
    missing = found ? 0 : missing + 1;
    ladder.push(found ? (found.speed * speed > 0 ? found : turned(found)) : null);
  }
  return ladder.slice(0, ladder.findLastIndex((wave) => wave !== null) + 1);
}

/** The ladders of some waves, the longest first; in one of them each wave stands once. */
export function ladders(waves, step) {
  if (waves.length === 0) return [];
  // A rung that is missing costs half a wave.
  const worth = (ladder) => ladder.reduce((sum, wave) => sum + (wave ? 1 : -0.5), 0);
  const best = waves
    .flatMap((wave) => [wave, turned(wave)])
    .map((wave) => ladderFrom(wave, waves, step))
    .reduce((longest, ladder) => (worth(ladder) > worth(longest) ? ladder : longest));
  const used = best.filter(Boolean).map(({ speed }) => Math.abs(speed));
  return [best, ...ladders(waves.filter(({ speed }) => !used.includes(Math.abs(speed))), step)];
}
