import { test } from 'node:test';
import fc from 'fast-check';
import { cosDegrees } from '../../../core/angle/trigonometry.js';
import { angleFromTo } from '../../../core/angle/wrap.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { assertClose } from '../../support/assert-close.js';
import { Worst } from './places.js';
import { secondPosition } from './second-ephemeris.js';
import type { SecondBody } from './second-ephemeris.js';

/** Ours and the other's together, minutes of arc: its Moon is good to 10″, its planets to about 1″ (Meeus, ch. 32, 33, 47). */
const allowed: Record<SecondBody, number> = { Sun: 0.015 + 0.02, Moon: 0.05 + 0.17, Venus: 0.1, Mars: 0.1, Jupiter: 0.1, Saturn: 0.1 };

test('200 random places since 2017 agree with a second ephemeris (astronomia: the whole of VSOP87, the Moon of Meeus)', (t) => {
  const worst = new Worst();
  const instants = fc.date({ min: new Date('2017-01-01T00:00:00Z'), max: new Date('2040-01-01T00:00:00Z'), noInvalidDate: true });
  const bodies = fc.constantFrom(...(Object.keys(allowed) as SecondBody[]));
  fc.assert(
    fc.property(bodies, instants, (body, instant) => {
      const [ours, other] = [geographicalPosition(body, instant), secondPosition(body, instant)];
      const byGha = angleFromTo(other.gha, ours.gha) * 60 * cosDegrees(other.declination);
      const byDeclination = (ours.declination - other.declination) * 60;
      worst.note(body, Math.max(Math.abs(byGha), Math.abs(byDeclination)));
      assertClose(byGha, 0, allowed[body], `${body} ${instant.toISOString()} GHA × cos d, minutes`);
      assertClose(byDeclination, 0, allowed[body], `${body} ${instant.toISOString()} declination, minutes`);
    }),
    { numRuns: 200, seed: 1762 },
  );
  t.diagnostic(`worst difference, minutes: ${worst}`);
});
