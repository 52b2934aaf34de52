// The package brings no types; these are of what the tests use.
declare module 'astronomia/data/*' {
  const series: object;
  export default series;
}
declare module 'astronomia/planetposition' {
  export class Planet {
    constructor(series: object);
    position2000(jde: number): { lon: number; lat: number; range: number };
  }
}
declare module 'astronomia/elp' {
  export class Moon {
    constructor(series: object);
    position(jde: number): { lon: number; lat: number; range: number };
  }
}
declare module 'astronomia/elliptic' {
  import type { Planet } from 'astronomia/planetposition';
  export function position(planet: Planet, earth: Planet, jde: number): { ra: number; dec: number };
}
declare module 'astronomia/solar' {
  import type { Planet } from 'astronomia/planetposition';
  export function apparentEquatorialVSOP87(earth: Planet, jde: number): { ra: number; dec: number };
}
declare module 'astronomia/moonposition' {
  export function position(jde: number): { lon: number; lat: number; range: number };
}
declare module 'astronomia/nutation' {
  export function nutation(jde: number): [number, number];
  export function meanObliquity(jde: number): number;
}
declare module 'astronomia/sidereal' {
  export function apparent(jd: number): number;
}
declare module 'astronomia/coord' {
  export class Ecliptic {
    constructor(lon: number, lat: number);
    toEquatorial(obliquity: number): { ra: number; dec: number };
  }
}
declare module 'astronomia/semidiameter' {
  export const VenusCloud: number;
  export const Mars: number;
  export const JupiterEquatorial: number;
  export const SaturnEquatorial: number;
}
