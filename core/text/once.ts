/** Makes something when it is first asked for, and gives the same from then on: of the long tables a page wants one or two. */
export function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
