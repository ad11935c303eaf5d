/** Sharing planks between cut pieces whose ends may be slanted: parallel cuts nest, so outer lengths alone would count too much. */

import type { CutPiece } from './cut-pool.ts';

/** How far along the plank a piece reaches at the edge that faces the row before (near) and at the other (far), from its outer left end. */
export interface NestPiece extends CutPiece {
  readonly near: readonly [left: number, right: number];
  readonly far: readonly [left: number, right: number];
}

/** The board that pieces are cut from, and what a cut takes, in ticks. */
export interface NestPlank {
  readonly length: number;
  readonly width: number;
  readonly kerf: number;
  readonly lock: 'click' | 'none';
}

/** A cut across a plank: where it crosses either edge. */
interface Cut {
  readonly near: number;
  readonly far: number;
}

interface Open {
  readonly pieces: NestPiece[];
  left: Cut | undefined;
  right: Cut | undefined;
}

/** Above this many starts or ends the pairs are the first found, longest ends first, and not improved. */
const MATCHED = 700;

/**
 * Planks with the pieces each yields. Every piece is taken as the straight-ended board it is cut from, so what is given fits;
 * ends and starts are paired by maximum matching (Kuhn's augmenting paths), which is the fewest planks for them at these
 * shapes; pieces of any part go where they leave least. A slanted cut takes kerf ÷ cos of its slant along the plank.
 */
export function nestPlanks(pieces: readonly NestPiece[], plank: NestPlank): readonly (readonly NestPiece[])[] {
  const loose = plank.lock === 'none';
  const starts = loose ? [] : pieces.filter(({ part }) => part === 'start').sort(byLength);
  const ends = loose
    ? []
    : pieces
        .filter(({ part }) => part === 'end')
        .sort(byLength)
        .reverse();
  const anys = loose ? pieces : pieces.filter(({ part }) => part === 'any');
  const partner = pairUp(ends, starts, plank);
  const planks: Open[] = ends.map((end, i) => {
    const start = starts[partner[i] ?? -1];
    return { pieces: start ? [end, start] : [end], left: rightCut(end, 0), right: start && startCut(start, plank) };
  });
  const paired = new Set(partner);
  starts.forEach((start, i) => {
    if (!paired.has(i)) planks.push({ pieces: [start], left: undefined, right: startCut(start, plank) });
  });
  for (const piece of [...anys].sort(byLength).reverse()) put(piece, planks, plank, loose);
  return planks.map((open) => open.pieces);
}

/** How many ends find a start. */
export function pairUp(ends: readonly NestPiece[], starts: readonly NestPiece[], plank: NestPlank): readonly number[] {
  const fits = ends.map((end) => {
    const cut = rightCut(end, 0);
    return starts.flatMap((start, j) => (apart(cut, startCut(start, plank), plank) ? [j] : []));
  });
  const partner: number[] = ends.map(() => -1);
  const taken: number[] = starts.map(() => -1);
  const give = (i: number, j: number): boolean => {
    partner[i] = j;
    taken[j] = i;
    return true;
  };
  // The longest start that fits leaves the short ones to the ends after it, which are shorter and leave more.
  ends.forEach((_, i) => {
    const free = fits[i]?.findLast((j) => taken[j] === -1);
    if (free !== undefined) give(i, free);
  });
  if (Math.max(ends.length, starts.length) > MATCHED) return partner;
  const seek = (i: number, seen: Set<number>): boolean =>
    (fits[i] ?? []).some((j) => {
      if (seen.has(j)) return false;
      seen.add(j);
      const holder = taken[j] ?? -1;
      return (holder === -1 || seek(holder, seen)) && give(i, j);
    });
  ends.forEach((_, i) => {
    if (partner[i] === -1) seek(i, new Set());
  });
  return partner;
}

/** Where the left end of a start piece lies, its right end at the plank's. */
function startCut(start: NestPiece, plank: NestPlank): Cut {
  const at = plank.length - start.length;
  return { near: at + start.near[0], far: at + start.far[0] };
}

function rightCut(piece: NestPiece, at: number): Cut {
  return { near: at + piece.near[1], far: at + piece.far[1] };
}

/** True when a kerf fits between two cuts: measured square to the more slanted of them, which is never too little. */
function apart(left: Cut, right: Cut, plank: NestPlank): boolean {
  return Math.min(right.near - left.near, right.far - left.far) >= kerfAlong(left, right, plank);
}

function kerfAlong(a: Cut, b: Cut, { kerf, width }: NestPlank): number {
  if (kerf === 0) return 0;
  const rise = Math.max(Math.abs(a.near - a.far), Math.abs(b.near - b.far)) / width;
  return Math.ceil(kerf * Math.hypot(1, rise));
}

/** A piece put into the plank where it leaves least, or into a new one; boards without locks may be turned round. */
function put(piece: NestPiece, planks: Open[], plank: NestPlank, loose: boolean): void {
  const ways = loose ? [piece, turnedRound(piece)] : [piece];
  let best: { open: Open; cut: Cut; rest: number } | undefined;
  for (const open of planks) {
    // The first piece of a plank may still be turned, so that its slanted end comes to lie inside.
    const [first] = open.pieces;
    const lefts =
      loose && first && open.pieces.length === 1
        ? [first, turnedRound(first)].map((one) => rightCut(one, 0))
        : [open.left];
    for (const way of ways) {
      for (const left of lefts) {
        const cut = placed(way, { ...open, left }, plank);
        if (!cut) continue;
        const right = open.right ?? { near: plank.length, far: plank.length };
        const rest = right.near - cut.near + right.far - cut.far;
        if (!best || rest < best.rest) best = { open, cut, rest };
      }
    }
  }
  if (best) {
    best.open.pieces.push(piece);
    best.open.left = best.cut;
  } else planks.push({ pieces: [piece], left: rightCut(piece, 0), right: undefined });
}

/** The right end of a piece laid against what a plank already gives from its left; undefined when it does not fit. */
function placed(piece: NestPiece, open: Open, plank: NestPlank): Cut | undefined {
  const own: Cut = { near: piece.near[0], far: piece.far[0] };
  const clear = open.left ? kerfAlong(open.left, own, plank) : 0;
  const at = open.left ? Math.max(open.left.near - own.near, open.left.far - own.far, -clear) + clear : 0;
  const cut = rightCut(piece, at);
  if (!open.right) return at + piece.length <= plank.length ? cut : undefined;
  return apart(cut, open.right, plank) ? cut : undefined;
}

function turnedRound(piece: NestPiece): NestPiece {
  const { length, near, far } = piece;
  return { ...piece, near: [length - far[1], length - far[0]], far: [length - near[1], length - near[0]] };
}

function byLength(a: CutPiece, b: CutPiece): number {
  return a.length - b.length || b.index - a.index;
}
