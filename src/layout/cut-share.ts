/** The fewest planks found for a set of cut pieces: pairs first, short pieces packed, small cases searched to the end. */

import { type CutPiece, pack, pair, type Shared } from './cut-pool.ts';
import { pairSided } from './cut-side.ts';

/** Above this many pieces, or steps, the packing found so far stands. */
const SEARCH_PIECES = 24;
const SEARCH_STEPS = 20_000;
/** Above this many short pieces their sides are not looked for. */
const SIDED_SHORTS = 40;

/** Planks with the pieces each yields. Locking boards give at most one start and one end each; others any pieces that fit. */
export function sharePlanks(
  pieces: readonly CutPiece[],
  plank: number,
  kerf: number,
  lock: 'click' | 'none',
): readonly Shared[] {
  const loose = lock === 'none' ? pieces.map((piece) => ({ ...piece, part: 'any' as const })) : pieces;
  const starts = loose.filter((piece) => piece.part === 'start');
  const ends = loose.filter((piece) => piece.part === 'end');
  const shorts = loose.filter((piece) => piece.part === 'any');
  const found = pack(shorts, pair(starts, ends, plank, kerf), plank, kerf);
  if (shorts.length === 0) return found;
  const needed = leastByLength(loose, plank, kerf);
  let best: readonly Shared[] = found;
  for (const part of lock === 'click' && shorts.length <= SIDED_SHORTS ? [2, 3, plank] : []) {
    if (best.length <= needed) break;
    const sided = pairSided(starts, ends, shorts, plank, kerf, Math.floor(plank / part));
    if (sided.length < best.length) best = sided;
  }
  if (best.length <= needed || loose.length > SEARCH_PIECES) return best;
  return searchFewer(loose, plank, kerf, best, needed);
}

/** ⌈Σ(length + kerf) / (plank + kerf)⌉: all pieces of a plank but one cost a kerf. */
export function leastByLength(pieces: readonly CutPiece[], plank: number, kerf: number): number {
  return Math.ceil(pieces.reduce((sum, piece) => sum + piece.length + kerf, 0) / (plank + kerf));
}

/** Depth-first search for a packing into fewer planks, longest pieces first, cut off by the length still to place. */
function searchFewer(
  pieces: readonly CutPiece[],
  plank: number,
  kerf: number,
  found: readonly Shared[],
  needed: number,
): readonly Shared[] {
  const order = [...pieces].sort((a, b) => b.length - a.length);
  const remaining = order.map((_, i) => order.slice(i).reduce((sum, piece) => sum + piece.length + kerf, 0));
  let best = found;
  let steps = 0;
  const open: Shared[] = [];

  const place = (depth: number): void => {
    if (open.length >= best.length || best.length <= needed || steps++ > SEARCH_STEPS) return;
    const piece = order[depth];
    if (!piece) {
      best = open.map((shared) => ({ pieces: [...shared.pieces], rest: shared.rest }));
      return;
    }
    // A rest already lost a kerf for each piece in its plank, so a piece and its kerf must fit within it.
    const room = open.reduce((sum, shared) => sum + shared.rest, 0);
    const more = Math.ceil(((remaining[depth] ?? 0) - room) / (plank + kerf));
    if (open.length + Math.max(0, more) >= best.length) return;
    const tried = new Set<string>();
    for (const shared of open) {
      if (shared.rest < piece.length + kerf || hasPart(shared, piece)) continue;
      const state = `${shared.rest} ${partsOf(shared)}`;
      if (tried.has(state)) continue;
      tried.add(state);
      shared.pieces.push(piece);
      shared.rest -= piece.length + kerf;
      place(depth + 1);
      shared.pieces.pop();
      shared.rest += piece.length + kerf;
    }
    open.push({ pieces: [piece], rest: plank - piece.length });
    place(depth + 1);
    open.pop();
  };
  place(0);
  return best;
}

function hasPart(shared: Shared, piece: CutPiece): boolean {
  return piece.part !== 'any' && shared.pieces.some((other) => other.part === piece.part);
}

function partsOf(shared: Shared): string {
  return `${shared.pieces.some((p) => p.part === 'start')}${shared.pieces.some((p) => p.part === 'end')}`;
}
