import type { Corrector } from '../../core/iron/correctors.js';
import type { BenchElement } from './bench-element.js';

/** The correctors set on the bench, those of no strength left out; `touching`: spheres that would reach the needle. */
export function benchCorrectors(bench: BenchElement): { correctors: Corrector[]; touching: boolean } {
  const value = (name: string): number => bench.value(name) ?? 0;
  const correctors: Corrector[] = [];
  const radius = value('sphereDiameter') / 200;
  const distance = value('sphereDistance') / 100;
  const touching = radius > 0 && distance <= radius;
  if (radius > 0 && !touching) correctors.push({ kind: 'spheres', radius, distance, bearing: value('sphereBearing') });
  const strength = value('flindersStrength');
  if (strength > 0) {
    correctors.push({ kind: 'flinders-bar', strength, bearing: bench.text('flindersPlace') === 'aft' ? 180 : 0 });
  }
  const foreAft = value('foreAftForce') * 1000;
  if (foreAft > 0) {
    const redEnd = bench.text('foreAftRed') as 'forward' | 'aft';
    correctors.push({ kind: 'fore-and-aft-magnet', redEnd, place: 'below', force: foreAft });
  }
  const athwart = value('athwartForce') * 1000;
  if (athwart > 0) {
    const redEnd = bench.text('athwartRed') as 'starboard' | 'port';
    correctors.push({ kind: 'athwartship-magnet', redEnd, place: 'below', force: athwart });
  }
  const heeling = value('heelingForce') * 1000;
  if (heeling > 0) correctors.push({ kind: 'heeling-magnet', redEnd: bench.text('heelingRed') as 'up' | 'down', force: heeling });
  return { correctors, touching };
}
