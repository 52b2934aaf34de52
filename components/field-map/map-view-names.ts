/** The whole world with Greenwich or the 180° meridian in the middle, or the surroundings of a pole. */
export type MapViewName = 'atlantic' | 'pacific' | 'north' | 'south';

export const mapViewNames: readonly MapViewName[] = ['atlantic', 'pacific', 'north', 'south'];

/** A place on the map, degrees. */
export interface MapPlace {
  readonly latitude: number;
  readonly longitude: number;
}
