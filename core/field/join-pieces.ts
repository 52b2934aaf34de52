/** A piece of a line between two points, each known by a number that its neighbour shares. */
export interface Piece {
  readonly from: number;
  readonly to: number;
}

/**
 * Joins pieces end to end into lines of point numbers: the open lines first, then the
 * closed, which end where they begin. No point may belong to more than two pieces.
 */
export function joinPieces(pieces: readonly Piece[]): number[][] {
  const touching = new Map<number, Piece[]>();
  const touch = (point: number, piece: Piece): void => {
    const known = touching.get(point);
    if (known) known.push(piece);
    else touching.set(point, [piece]);
  };
  for (const piece of pieces) {
    touch(piece.from, piece);
    touch(piece.to, piece);
  }
  const used = new Set<Piece>();
  const follow = (start: number): number[] => {
    const line = [start];
    let point = start;
    for (;;) {
      const next = touching.get(point)?.find((piece) => !used.has(piece));
      if (!next) return line;
      used.add(next);
      point = next.from === point ? next.to : next.from;
      line.push(point);
    }
  };
  const lines: number[][] = [];
  for (const [point, pieces] of touching) {
    if (pieces.length === 1 && !used.has(pieces[0] as Piece)) lines.push(follow(point));
  }
  for (const piece of pieces) if (!used.has(piece)) lines.push(follow(piece.from));
  return lines;
}
