/** Short pieces paired too: those that take much of a plank are cut from its right part or its left one, whichever saves planks. */

import { type CutPiece, countPairs, pack, pair, type Shared } from './cut-pool.ts';

/** Passes over all lengths, each choosing the sides of one length anew. */
const PASSES = 3;

/**
 * Planks for start, end and short pieces: shorts longer than `over` stand as starts or as ends, so that they are matched with the
 * rest; the others are packed into what is left. How many of a length stand on either side is improved length by length.
 */
export function pairSided(
  starts: readonly CutPiece[],
  ends: readonly CutPiece[],
  shorts: readonly CutPiece[],
  plank: number,
  kerf: number,
  over: number,
): readonly Shared[] {
  const groups = new Map<number, CutPiece[]>();
  for (const piece of shorts) {
    if (piece.length <= over) continue;
    const group = groups.get(piece.length) ?? [];
    groups.set(piece.length, [...group, piece]);
  }
  const large = [...groups.values()];
  /** By length, how many stand as starts. */
  const asStart = large.map(({ length }) => length >> 1);
  const sides = (): readonly [readonly CutPiece[], readonly CutPiece[]] => [
    [...starts, ...large.flatMap((group, g) => group.slice(0, asStart[g]))],
    [...ends, ...large.flatMap((group, g) => group.slice(asStart[g]))],
  ];
  const pairs = (): number => {
    const [up, down] = sides().map((pieces) => pieces.map(({ length }) => length));
    return countPairs(up ?? [], down ?? [], plank, kerf);
  };
  let most = pairs();
  for (let pass = 0; pass < PASSES; pass++) {
    const before = most;
    large.forEach((group, g) => {
      let kept = asStart[g] ?? 0;
      for (let count = 0; count <= group.length; count++) {
        asStart[g] = count;
        const found = pairs();
        if (found > most) [most, kept] = [found, count];
      }
      asStart[g] = kept;
    });
    if (most === before) break;
  }
  const small = shorts.filter(({ length }) => length <= over);
  const [up, down] = sides();
  return pack(small, pair(up, down, plank, kerf), plank, kerf);
}
