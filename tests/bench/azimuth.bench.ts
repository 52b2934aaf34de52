/**
 * What one keystroke in the azimuth costs: the whole sight with doubt, working and cautions; a
 * series; the ranking of all bodies. Run: node --import tsx tests/bench/azimuth.bench.ts; the
 * limits (2 ms for a sight, 16 ms for the ranking) are for Chromium slowed down four times:
 * there bundle this file with esbuild and read the console.
 */
import { azimuthBearing } from '../../core/sight/azimuth-bearing.js';
import { azimuthSight } from '../../core/sight/azimuth-sight.js';
import { bearingSeries } from '../../core/sight/bearing-series.js';
import { bodiesForBearing } from '../../core/sight/bodies-for-bearing.js';

const START = Date.UTC(2026, 10, 25);
const instant = (turn: number): Date => new Date(START + turn * 10_000_000);
const place = { latitude: 33.4, longitude: -38.5 };
const reading = { compassBearing: 96.5, compass: 'magnetic' } as const;

function measure(what: string, rounds: number, work: (turn: number) => unknown): void {
  const times = Array.from({ length: rounds }, (_, turn) => {
    const begin = performance.now();
    work(turn);
    return performance.now() - begin;
  });
  const cold = times[0] ?? NaN;
  times.sort((a, b) => a - b);
  const at = (share: number): string => `${(times[Math.floor(share * (rounds - 1))] ?? NaN).toFixed(3)} ms`;
  console.log(`${what.padEnd(44)} first ${cold.toFixed(2)} ms  median ${at(0.5)}  95th ${at(0.95)}`);
}

for (const body of ['Sun', 'Moon', 'Saturn', 'Vega'] as const) {
  const look = (turn: number): Parameters<typeof azimuthBearing>[0] => ({ source: { by: 'body', body }, ...place, instant: instant(turn) });
  const right = Array.from({ length: 500 }, (_, turn) => azimuthBearing(look(turn))).map((found) => (found.determined ? found.trueBearing : 0));
  measure(`one azimuth of small error, ${body}`, 500, (turn) =>
    azimuthSight({ ...look(turn), compass: 'gyro', compassBearing: right[turn] ?? 0 }),
  );
  // A bearing far off: slips and other bodies are searched for.
  measure(`one azimuth far off, ${body}`, 500, (turn) => azimuthSight({ ...look(turn), ...reading }));
}
measure('one azimuth by figures', 500, (turn) =>
  azimuthSight({ source: { by: 'hour-angle', gha: turn % 360, declination: 20.23 }, ...place, ...reading, instant: instant(turn) }),
);
measure('a series of eight', 200, (turn) => {
  const shots = Array.from({ length: 8 }, (_, shot) => ({ instant: new Date(instant(turn).getTime() + shot * 60_000), compassBearing: 96.5 }));
  bearingSeries({ source: { by: 'body', body: 'Sun' }, ...place, compass: 'magnetic', shots });
});
measure('which body now, all 64', 200, (turn) => bodiesForBearing(place.latitude, place.longitude, instant(turn)));
