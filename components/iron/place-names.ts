/**
 * The places of the bench: where she is, the slip she was built on, where she is taken to,
 * and the third, for which a card is predicted.
 */
export const placeNames = ['here', 'slip', 'there', 'third'] as const;

export type PlaceName = (typeof placeNames)[number];

export type PlacePart = 'source' | 'latitude' | 'longitude' | 'horizontal' | 'vertical' | 'dip';

/** How a place is given: by position and date, or by its forces. */
export const placeSources = ['position', 'forces', 'dip'] as const;

export type PlaceSource = (typeof placeSources)[number];

/** The name of one of its fields in the state: `latitude` here, `slipLatitude` on the slip. */
export function placeFieldName(place: PlaceName, part: PlacePart): string {
  return place === 'here' ? part : `${place}${part.charAt(0).toUpperCase()}${part.slice(1)}`;
}
