/** Pieces cut from what is really there: offcuts first, then whole planks, whose rests serve again. */

import { type CutPiece, pack, pair, type Shared } from './cut-pool.ts';
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
  const shorts = loose.filter(({ part }) => part === 'any');
  const all: Shared[] = pack(shorts, [...opened, ...paired], plank.length, kerf);
  const sources = new Map<number, { offcut: number } | { plank: number }>();
  for (const { offcut, pieces: own } of opened) for (const { index } of own) sources.set(index, { offcut });
  const planks = all.filter((shared) => !opened.some((one) => one === shared));
  planks.forEach(({ pieces: own }, number) => {
    for (const { index } of own) sources.set(index, { plank: number });
  });
  return { sources, planks: planks.length };
}

function shortest(opened: readonly Opened[]): Opened | undefined {
  return opened.reduce<Opened | undefined>((best, one) => (!best || one.rest < best.rest ? one : best), undefined);
}

function longestFirst(a: CutPiece, b: CutPiece): number {
  return b.length - a.length || a.index - b.index;
}
