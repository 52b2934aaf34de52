import { test } from 'node:test';
import elp from 'astronomia/data/elpMppDe';
import vsopEarth from 'astronomia/data/vsop87Bearth';
import vsopJupiter from 'astronomia/data/vsop87Bjupiter';
import vsopMars from 'astronomia/data/vsop87Bmars';
import vsopSaturn from 'astronomia/data/vsop87Bsaturn';
import vsopVenus from 'astronomia/data/vsop87Bvenus';
import { Moon } from 'astronomia/elp';
import { Planet } from 'astronomia/planetposition';
import { degreesOfArc } from '../../../core/angle/trigonometry.js';
import { earthSeries } from '../../../core/sky/earth-series.js';
import { jupiterSeries } from '../../../core/sky/jupiter-series.js';
import { marsSeries } from '../../../core/sky/mars-series.js';
import { moonPlace } from '../../../core/sky/moon-place.js';
import { orbitPlace, pointAt } from '../../../core/sky/orbit-place.js';
import { saturnSeries } from '../../../core/sky/saturn-series.js';
import { length, subtract, unit } from '../../../core/sky/vector.js';
import type { Vector } from '../../../core/sky/vector.js';
import { venusSeries } from '../../../core/sky/venus-series.js';
import { assertClose } from '../../support/assert-close.js';

// The whole of VSOP87B and ELP/MPP02, worked out by another library; our tables are abridged from the same theories.
interface Place { lon: number; lat: number; range: number }

function directionOf({ lon, lat, range }: Place): Vector {
  return pointAt(degreesOfArc(lon), degreesOfArc(lat), range);
}

function minutesBetween(a: Vector, b: Vector): number {
  return degreesOfArc(length(subtract(unit(a), unit(b)))) * 60;
}

const earth = new Planet(vsopEarth);
const moon = new Moon(elp);
const planets = [
  { name: 'Venus', whole: new Planet(vsopVenus), ours: venusSeries, within: 0.06 },
  { name: 'Mars', whole: new Planet(vsopMars), ours: marsSeries, within: 0.09 },
  { name: 'Jupiter', whole: new Planet(vsopJupiter), ours: jupiterSeries, within: 0.07 },
  { name: 'Saturn', whole: new Planet(vsopSaturn), ours: saturnSeries, within: 0.06 },
];

test('the abridged series keep to the whole theories from 1900 to 2100: 0.016′ Sun, 0.045′ Moon, 0.06′ to 0.09′ planets', (t) => {
  const worst: Record<string, number> = {};
  const note = (name: string, miss: number, within: number, century: number): void => {
    worst[name] = Math.max(worst[name] ?? 0, miss);
    assertClose(miss, 0, within, `${name} at ${String(century)} centuries, minutes`);
  };
  for (let index = 0; index <= 1500; index += 1) {
    // Steps of 48.7 days, in step with no period of the sky.
    const century = -1 + (2 * index) / 1500;
    const jde = 2451545 + century * 36525;
    const here = directionOf(earth.position2000(jde));
    const ours = orbitPlace(earthSeries, century);
    note('Sun', minutesBetween(ours, here), 0.016, century);
    note('Moon', minutesBetween(moonPlace(century), directionOf(moon.position(jde))), 0.045, century);
    for (const { name, whole, ours: series, within } of planets) {
      note(name, minutesBetween(subtract(orbitPlace(series, century), ours), subtract(directionOf(whole.position2000(jde)), here)), within, century);
    }
  }
  // 3 March 2068, the worst of a search every six hours: small waves left out fall together.
  const century = 0.68169746748802;
  note('Moon', minutesBetween(moonPlace(century), directionOf(moon.position(2451545 + century * 36525))), 0.045, century);
  t.diagnostic(`worst, minutes: ${Object.entries(worst).map(([name, miss]) => `${name} ${miss.toFixed(4)}`).join(', ')}`);
});
