/** The sixteen principal points, 22.5° apart from north. */
export const compassPoints = [
  'N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE',
  'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW',
] as const;

export type CompassPoint = (typeof compassPoints)[number];

/** Direction of a principal point, degrees [0, 360); null for any other text. */
export function bearingOfPoint(point: string): number | null {
  const index = (compassPoints as readonly string[]).indexOf(point);
  return index < 0 ? null : index * 22.5;
}
