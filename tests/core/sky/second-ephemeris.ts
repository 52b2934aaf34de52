import vsopEarth from 'astronomia/data/vsop87Bearth';
import vsopJupiter from 'astronomia/data/vsop87Bjupiter';
import vsopMars from 'astronomia/data/vsop87Bmars';
import vsopSaturn from 'astronomia/data/vsop87Bsaturn';
import vsopVenus from 'astronomia/data/vsop87Bvenus';
import { Ecliptic } from 'astronomia/coord';
import { position as ofPlanet } from 'astronomia/elliptic';
import { position as ofMoon } from 'astronomia/moonposition';
import { meanObliquity, nutation } from 'astronomia/nutation';
import { Planet } from 'astronomia/planetposition';
import { apparent as siderealSeconds } from 'astronomia/sidereal';
import { apparentEquatorialVSOP87 } from 'astronomia/solar';

export type SecondBody = 'Sun' | 'Moon' | 'Venus' | 'Mars' | 'Jupiter' | 'Saturn';

/** TT−UTC since 2017, seconds: the comparison keeps to that time, so that it needs no table of ours. */
const TT_MINUS_UTC = 69.184;
const DEGREES = 180 / Math.PI;

const earth = new Planet(vsopEarth);
const planets = {
  Venus: new Planet(vsopVenus),
  Mars: new Planet(vsopMars),
  Jupiter: new Planet(vsopJupiter),
  Saturn: new Planet(vsopSaturn),
};

function equatorial(body: SecondBody, jde: number): { ra: number; dec: number } {
  if (body === 'Sun') return apparentEquatorialVSOP87(earth, jde);
  if (body !== 'Moon') return ofPlanet(planets[body], earth, jde);
  const { lon, lat } = ofMoon(jde);
  const [inLongitude, inObliquity] = nutation(jde);
  return new Ecliptic(lon + inLongitude, lat).toEquatorial(meanObliquity(jde) + inObliquity);
}

/** Apparent GHA and declination, degrees, by another library: Meeus, Astronomical Algorithms, with the whole of VSOP87. */
export function secondPosition(body: SecondBody, instant: Date): { gha: number; declination: number } {
  const jd = instant.getTime() / 86_400_000 + 2_440_587.5;
  const { ra, dec } = equatorial(body, jd + TT_MINUS_UTC / 86400);
  return { gha: (siderealSeconds(jd) / 240 - ra * DEGREES + 720) % 360, declination: dec * DEGREES };
}
