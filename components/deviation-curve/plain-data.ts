/** An object of unknown origin. */
export type Bag = Readonly<Record<string, unknown>>;

export function isBag(value: unknown): value is Bag {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The number of a name within a range, or null. */
export function numberIn(bag: Bag, name: string, least: number, most: number): number | null {
  const value = bag[name];
  return typeof value === 'number' && value >= least && value <= most ? value : null;
}
