import { checkRange } from '../angle/check-number.js';

/** A place on the Earth, geodetic. */
export interface FieldPlace {
  /** Degrees, [-90, 90], north positive. */
  readonly latitude: number;
  /** Degrees, [-180, 360), east positive. */
  readonly longitude: number;
  /** Height above the ellipsoid of WGS 84, km, -1 to 850; 0 unless given. */
  readonly heightKm?: number;
}

/** Throws `RangeError` for a longitude outside [-180, 360): both ways of counting it are taken. */
export function checkLongitude(longitude: number): void {
  checkRange('longitude', longitude, -180, 360);
  if (longitude === 360) throw new RangeError('longitude: 360 is 0');
}

/** Throws `RangeError` naming the part of a place the models do not cover (WMM2025 technical report: -1 to 850 km). */
export function checkPlace(latitude: number, longitude: number, heightKm: number): void {
  checkRange('latitude', latitude, -90, 90);
  checkLongitude(longitude);
  checkRange('heightKm', heightKm, -1, 850);
}
