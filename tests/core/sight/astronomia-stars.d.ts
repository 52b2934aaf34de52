// The package brings no types; these are of what the test of the stars uses besides.
declare module 'astronomia/apparent' {
  import type { Equatorial } from 'astronomia/coord';
  export function position(from: Equatorial, epochFrom: number, epochTo: number, motionRa: number, motionDec: number): { ra: number; dec: number };
}
declare module 'astronomia/coord' {
  export class Equatorial {
    constructor(ra: number, dec: number);
  }
}
