import { test } from 'node:test';
import fc from 'fast-check';
import { cosDegrees } from '../../../core/angle/trigonometry.js';
import { angleFromTo } from '../../../core/angle/wrap.js';
import { azimuthBearing } from '../../../core/sight/azimuth-bearing.js';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { starNames } from '../../../core/sky/star-catalogue.js';
import { assertClose } from '../../support/assert-close.js';
import { secondStar } from './second-stars.js';

/**
 * Minutes of arc. Ours is good to 0.01′; the other leaves out second-order terms
 * and the parallax, 0.75″ of the nearest star.
 */
const ALLOWED = 0.02;

/** The other's nutation and aberration hold away from the poles only, as its own text says. */
const stars = starNames.filter((name) => name !== 'Polaris');

test('200 random bearings of stars since 2017 agree with a second library (astronomia: Meeus, ch. 21 to 23)', (t) => {
  let [worstPlace, worstBearing] = [0, 0];
  const instants = fc.date({ min: new Date('2017-01-01T00:00:00Z'), max: new Date('2040-01-01T00:00:00Z'), noInvalidDate: true });
  const latitudes = fc.double({ min: -85, max: 85, noNaN: true });
  const longitudes = fc.double({ min: -180, max: 180, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...stars), instants, latitudes, longitudes, (body, instant, latitude, longitude) => {
      const [ours, other] = [geographicalPosition(body, instant), secondStar(body, instant)];
      const byGha = angleFromTo(other.gha, ours.gha) * 60 * cosDegrees(other.declination);
      const byDeclination = (ours.declination - other.declination) * 60;
      worstPlace = Math.max(worstPlace, Math.abs(byGha), Math.abs(byDeclination));
      assertClose(byGha, 0, ALLOWED, `${body} ${instant.toISOString()} GHA × cos d, minutes`);
      assertClose(byDeclination, 0, ALLOWED, `${body} ${instant.toISOString()} declination, minutes`);
      const found = azimuthBearing({ source: { by: 'body', body }, latitude, longitude, instant });
      const { altitude, azimuth } = altitudeAzimuth({ latitude, declination: other.declination, localHourAngle: other.gha + longitude });
      if (!found.determined || azimuth === null) return;
      const turn = Math.abs(angleFromTo(azimuth, found.trueBearing)) * 60 * cosDegrees(altitude);
      worstBearing = Math.max(worstBearing, turn);
      assertClose(turn, 0, 2 * ALLOWED, `${body} ${instant.toISOString()} bearing × cos h, minutes`);
    }),
    { numRuns: 200, seed: 5757 },
  );
  t.diagnostic(`worst difference, minutes: place ${worstPlace.toFixed(4)}, bearing × cos h ${worstBearing.toFixed(4)}`);
});
