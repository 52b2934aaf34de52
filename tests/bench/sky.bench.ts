/**
 * How long the sums of the sky take, and beside them another library's way to the same
 * places. Run: node --import tsx tests/bench/sky.bench.ts
 */
import { Body, Equator, MakeTime, Observer, SiderealTime } from 'astronomy-engine';
import { bodyNames } from '../../core/sky/body.js';
import { geographicalPosition } from '../../core/sky/geographical-position.js';
import { horizonEvent } from '../../core/sky/horizon-event.js';
import { magnitudeIn } from '../../core/sky/magnitude.js';
import { skyAt } from '../../core/sky/sky-at.js';

const START = Date.UTC(2026, 10, 25);
const instant = (turn: number): Date => new Date(START + turn * 10_000_000);

/** Prints the median and the 95th of a hundred; returns the median, milliseconds. */
function measure(what: string, rounds: number, work: (turn: number) => void): number {
  for (let turn = 0; turn < rounds; turn += 1) work(turn);
  const times = Array.from({ length: rounds }, (_, turn) => {
    const begin = performance.now();
    work(turn);
    return performance.now() - begin;
  }).sort((a, b) => a - b);
  const at = (share: number): string => `${(times[Math.floor(share * (rounds - 1))] ?? NaN).toFixed(3)} ms`;
  console.log(`${what.padEnd(44)} median ${at(0.5)}  95th ${at(0.95)}`);
  return times[Math.floor(0.5 * (rounds - 1))] ?? NaN;
}

/** Ours and theirs in turn at the same instants, so that what else the machine does hits both. */
function compare(what: string, rounds: number, ours: (turn: number) => void, theirs: (turn: number) => void): void {
  const ratio = measure(`${what}, ours`, rounds, ours) / measure(`${what}, astronomy-engine`, rounds, theirs);
  console.log(`  ours take ${ratio.toFixed(2)} of its time`);
}

// The equator of date for an observer at the centre of the Earth would be ours exactly; on the ground costs it next to nothing more.
const observer = new Observer(0, 0, 0);
function theirPlace(body: Body, at: Date): number {
  const time = MakeTime(at);
  return SiderealTime(time) - Equator(body, time, observer, true, true).ra;
}

for (const body of ['Sun', 'Moon', 'Venus', 'Mars', 'Jupiter', 'Saturn'] as const) {
  compare(body, 500, (turn) => geographicalPosition(body, instant(turn)), (turn) => theirPlace(Body[body], instant(turn)));
}
measure('all 64 bodies, place and brightness', 200, (turn) => {
  const sky = skyAt(instant(turn));
  bodyNames.map((body) => ({ place: sky.position(body), magnitude: magnitudeIn(sky, body) }));
});
for (const body of ['Sun', 'Moon', 'Saturn', 'Vega'] as const) {
  measure(`next rising, ${body}`, 200, (turn) =>
    horizonEvent({ body, latitude: 50, longitude: 0, after: instant(turn), event: 'rising', moment: 'upper-limb', heightOfEye: 15 }),
  );
}
measure('no rising: polar night', 200, (turn) =>
  horizonEvent({ body: 'Sun', latitude: 80, longitude: 0, after: instant(turn % 40), event: 'rising', moment: 'centre', heightOfEye: 15 }),
);
