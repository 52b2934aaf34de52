/** How one of several curves is drawn: told apart by its dashes where colours are not seen. */
export interface CurveTone {
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

const tones: readonly CurveTone[] = [
  { colour: 'var(--accent)', width: 2, dash: [] },
  { colour: 'var(--soft)', width: 1.6, dash: [7, 4] },
  { colour: 'var(--body)', width: 1.6, dash: [2, 3] },
  { colour: 'var(--ink)', width: 1.4, dash: [9, 3, 2, 3] },
];

/** The tone of a curve by its place; the first is the one in use. */
export function curveTone(place: number): CurveTone {
  return tones[place % tones.length] as CurveTone;
}
