/** Pieces cut from what is really there: offcuts first, then whole planks, whose rests serve again. */

import { type CutPiece, pack, pair, type Shared } from './cut-pool.ts';
import { sharePlanks } from './cut-share.ts';
import type { Plank } from './floor.ts';

/** An offcut at hand: the left end of a plank makes an end piece, the right end a start piece; `any` only what lies between two walls. */
export interface Offcut {
  readonly length: number;
  readonly end: 'left' | 'right' | 'any';
}

/** Where each piece comes from, by its index: the offcut of that index, or the whole plank of that number from 0. */
export interface Sourced {
  readonly sources: ReadonlyMap<number, { readonly offcut: number } | { readonly plank: number }>;
  /** Whole planks cut up. */
  readonly planks: number;
}

interface Opened extends Shared {
  readonly offcut: number;
}

/**
 * Every piece given a source that really yields it. A longer piece fits fewer offcuts, so the longest first, each into the
 * shortest offcut that holds it, serves as many and as long pieces from offcuts as can be; what remains is paired in whole planks.
 */
export function sourced(pieces: readonly CutPiece[], offcuts: readonly Offcut[], plank: Plank, kerf: number): Sourced {
  const loose = plank.lock === 'none' ? pieces.map((piece) => ({ ...piece, part: 'any' as const })) : pieces;
  const opened: Opened[] = offcuts.map(({ length }, offcut) => ({ offcut, pieces: [], rest: length + kerf }));
  const unserved: CutPiece[] = [];
  const free = new Set(opened);
  for (const piece of loose.filter(({ part }) => part !== 'any').sort(longestFirst)) {
    const wanted = piece.part === 'start' ? 'right' : 'left';
    const fit = shortest(
      [...free].filter(({ offcut, rest }) => offcuts[offcut]?.end === wanted && rest >= piece.length + kerf),
    );
    if (fit) {
      free.delete(fit);
      fit.pieces.push(piece);
      fit.rest -= piece.length + kerf;
    } else unserved.push(piece);
  }
  const starts = unserved.filter(({ part }) => part === 'start');
  const ends = unserved.filter(({ part }) => part === 'end');
  const paired = pair(starts, ends, plank.length, kerf);
  const shorts = loose.filter(({ part }) => part === 'any').sort(longestFirst);
  // Shorts go either wherever they fit best, or into offcuts first and are then shared with the rest; whichever takes fewer planks.
  const filled = opened.map((one) => ({ ...one, pieces: [...one.pieces] }));
  const left = shorts.filter((piece) => !putInto(filled, piece, kerf));
  const shared = sharePlanks([...unserved, ...left], plank.length, kerf, plank.lock);
  const packed = pack(shorts, [...opened, ...paired], plank.length, kerf).slice(opened.length);
  const isShared = shared.length < packed.length;
  const planks = isShared ? shared : packed;
  const sources = new Map<number, { offcut: number } | { plank: number }>();
  for (const { offcut, pieces: own } of isShared ? filled : opened)
    for (const { index } of own) sources.set(index, { offcut });
  planks.forEach(({ pieces: own }, number) => {
    for (const { index } of own) sources.set(index, { plank: number });
  });
  return { sources, planks: planks.length };
}

/** Puts a piece of any part into the shortest rest that holds it; false when none does. */
function putInto(opened: readonly Opened[], piece: CutPiece, kerf: number): boolean {
  const fit = shortest(opened.filter(({ rest }) => rest >= piece.length + kerf));
  if (!fit) return false;
  fit.pieces.push(piece);
  fit.rest -= piece.length + kerf;
  return true;
}

function shortest(opened: readonly Opened[]): Opened | undefined {
  return opened.reduce<Opened | undefined>((best, one) => (!best || one.rest < best.rest ? one : best), undefined);
}

function longestFirst(a: CutPiece, b: CutPiece): number {
  return b.length - a.length || a.index - b.index;
}
