/** Which cut pieces come from the same plank: square ends, slanted ends that nest, ripped strips, and the number of cuts. */

import type { Sliced } from './covered-area.ts';
import type { Plan, Plank, Rules } from './floor.ts';

/** The caller finds a piece again by its index in the list it passed. */
export interface CutPiece {
  readonly length: number;
  readonly part: 'start' | 'end' | 'any';
  readonly index: number;
}

export interface SharedPlanks {
  readonly pieces: CutPiece[];
  /** Length not cut yet, minus the kerfs between pieces; another piece plus its kerf has to fit in it. */
  rest: number;
}

/**
 * The largest number of pairs with end + start + kerf ≤ plank, at most one of each per plank. Whether a pair fits is a
 * threshold, so the neighborhoods are nested and taking the longest end first gives a maximum matching. O(n log n).
 */
export function countPairs(starts: readonly number[], ends: readonly number[], plank: number, kerf: number): number {
  const up = new Float64Array(starts).sort();
  const down = new Float64Array(ends).sort();
  let pairs = 0;
  let fitting = 0;
  for (let i = down.length - 1; i >= 0; i--) {
    const room = plank - kerf - (down[i] as number);
    while (fitting < up.length && (up[fitting] as number) <= room) fitting++;
    if (fitting > pairs) pairs++;
  }
  return pairs;
}

/**
 * Pairs as many start and end pieces as possible, each pair as tightly as possible, so that the leftover sits in few
 * planks.
 */
export function pair(
  starts: readonly CutPiece[],
  ends: readonly CutPiece[],
  plank: number,
  kerf: number,
): SharedPlanks[] {
  const up = [...starts].sort(byLength);
  const down = [...ends].sort(byLength).reverse();
  const planks: SharedPlanks[] = [];
  const fitting: CutPiece[] = [];
  let next = 0;
  for (const end of down) {
    const room = plank - kerf - end.length;
    for (let start = up[next]; start && start.length <= room; start = up[++next]) fitting.push(start);
    const start = fitting.pop();
    if (start) planks.push({ pieces: [end, start], rest: room - start.length });
    else planks.push({ pieces: [end], rest: plank - end.length });
  }
  for (const start of [...fitting, ...up.slice(next)]) planks.push({ pieces: [start], rest: plank - start.length });
  return planks;
}

/**
 * Packs pieces that may come from any part of a plank by best fit, longest first, opening a new plank when none fits.
 * Changes `planks`.
 */
export function pack(shorts: readonly CutPiece[], planks: SharedPlanks[], plank: number, kerf: number): SharedPlanks[] {
  for (const piece of [...shorts].sort(byLength).reverse()) {
    let best: SharedPlanks | undefined;
    for (const candidate of planks) {
      if (candidate.rest >= piece.length + kerf && (!best || candidate.rest < best.rest)) best = candidate;
    }
    if (best) {
      best.pieces.push(piece);
      best.rest -= piece.length + kerf;
    } else {
      planks.push({ pieces: [piece], rest: plank - piece.length });
    }
  }
  return planks;
}

function byLength(a: CutPiece, b: CutPiece): number {
  return a.length - b.length || b.index - a.index;
}

/**
 * `near` and `far` are how far along the plank the piece reaches, from its outer left end, at the edge facing the
 * previous row and at the other edge.
 */
export interface NestPiece extends CutPiece {
  readonly near: readonly [left: number, right: number];
  readonly far: readonly [left: number, right: number];
}

/** Plank size and kerf, in ticks. */
export interface NestPlank {
  readonly length: number;
  readonly width: number;
  readonly kerf: number;
  readonly lock: 'click' | 'none';
}

interface Cut {
  readonly near: number;
  readonly far: number;
}

interface Open {
  readonly pieces: NestPiece[];
  left: Cut | undefined;
  right: Cut | undefined;
}

/** With more starts or ends than this, the first pairs found (longest ends first) are kept without improving them. */
const MATCHED = 700;

/**
 * Planks with the pieces cut from each. A piece counts as the straight-ended board it is cut from, so the result always
 * fits. Ends and starts are paired by maximum matching (Kuhn's augmenting paths), which gives the fewest planks for
 * these shapes; pieces from any part go where they leave the least. A slanted cut takes kerf ÷ cos(slant) along the
 * plank.
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
  // Taking the longest start that fits leaves the short ones for later ends, which are shorter and leave more room.
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

function startCut(start: NestPiece, plank: NestPlank): Cut {
  const at = plank.length - start.length;
  return { near: at + start.near[0], far: at + start.far[0] };
}

function rightCut(piece: NestPiece, at: number): Cut {
  return { near: at + piece.near[1], far: at + piece.far[1] };
}

/**
 * True when a kerf fits between two cuts. Measured perpendicular to the more slanted cut, which is never too little.
 */
function apart(left: Cut, right: Cut, plank: NestPlank): boolean {
  return Math.min(right.near - left.near, right.far - left.far) >= kerfAlong(left, right, plank);
}

function kerfAlong(a: Cut, b: Cut, { kerf, width }: NestPlank): number {
  if (kerf === 0) return 0;
  const rise = Math.max(Math.abs(a.near - a.far), Math.abs(b.near - b.far)) / width;
  return Math.ceil(kerf * Math.hypot(1, rise));
}

/**
 * Puts a piece into the plank where it leaves the least, or into a new one. Boards without locks may be turned around.
 */
function put(piece: NestPiece, planks: Open[], plank: NestPlank, loose: boolean): void {
  const ways = loose ? [piece, turnedRound(piece)] : [piece];
  let best: { open: Open; cut: Cut; rest: number } | undefined;
  for (const open of planks) {
    // The first piece of a plank may still be turned so that its slanted end faces inward.
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

/** The right end of a piece placed after what the plank already yields from its left; undefined if it doesn't fit. */
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

// Short pieces: cut from the left or the right part of a plank, whichever saves planks.

/** Passes over all lengths; each pass chooses the sides of one length at a time. */
const PASSES = 3;

/**
 * Planks for start, end and short pieces. Shorts longer than `over` count as starts or as ends so that they take part
 * in the matching; the rest are packed into what is left. How many of each length go on either side is improved length
 * by length.
 */
export function pairSided(
  starts: readonly CutPiece[],
  ends: readonly CutPiece[],
  shorts: readonly CutPiece[],
  plank: number,
  kerf: number,
  over: number,
): readonly SharedPlanks[] {
  const groups = new Map<number, CutPiece[]>();
  for (const piece of shorts) {
    if (piece.length <= over) continue;
    const group = groups.get(piece.length) ?? [];
    groups.set(piece.length, [...group, piece]);
  }
  const large = [...groups.values()];
  /** By length, how many count as starts. */
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

// Fewest planks for a set of pieces: pair, pack the shorts, then search small cases exhaustively.

/** With more pieces than this, or after this many steps, the packing found so far stands. */
const SEARCH_PIECES = 24;
const SEARCH_STEPS = 20_000;
/** With more short pieces than this, their sides aren't optimized. */
const SIDED_SHORTS = 40;

/**
 * Planks with the pieces cut from each. A locking board yields at most one start and one end; other boards yield any
 * pieces that fit.
 */
export function sharePlanks(
  pieces: readonly CutPiece[],
  plank: number,
  kerf: number,
  lock: 'click' | 'none',
): readonly SharedPlanks[] {
  const loose = lock === 'none' ? pieces.map((piece) => ({ ...piece, part: 'any' as const })) : pieces;
  const starts = loose.filter((piece) => piece.part === 'start');
  const ends = loose.filter((piece) => piece.part === 'end');
  const shorts = loose.filter((piece) => piece.part === 'any');
  const found = pack(shorts, pair(starts, ends, plank, kerf), plank, kerf);
  if (shorts.length === 0) return found;
  const needed = leastByLength(loose, plank, kerf);
  let best: readonly SharedPlanks[] = found;
  for (const part of lock === 'click' && shorts.length <= SIDED_SHORTS ? [2, 3, plank] : []) {
    if (best.length <= needed) break;
    const sided = pairSided(starts, ends, shorts, plank, kerf, Math.floor(plank / part));
    if (sided.length < best.length) best = sided;
  }
  if (best.length <= needed || loose.length > SEARCH_PIECES) return best;
  return searchFewer(loose, plank, kerf, best, needed);
}

/** ⌈Σ(length + kerf) / (plank + kerf)⌉: every piece of a plank except one costs a kerf. */
function leastByLength(pieces: readonly CutPiece[], plank: number, kerf: number): number {
  return Math.ceil(pieces.reduce((sum, piece) => sum + piece.length + kerf, 0) / (plank + kerf));
}

/** Depth-first search for a packing into fewer planks, longest pieces first, pruned by the length still to place. */
function searchFewer(
  pieces: readonly CutPiece[],
  plank: number,
  kerf: number,
  found: readonly SharedPlanks[],
  needed: number,
): readonly SharedPlanks[] {
  const order = [...pieces].sort((a, b) => b.length - a.length);
  const remaining = order.map((_, i) => order.slice(i).reduce((sum, piece) => sum + piece.length + kerf, 0));
  let best = found;
  let steps = 0;
  const open: SharedPlanks[] = [];

  const place = (depth: number): void => {
    if (open.length >= best.length || best.length <= needed || steps++ > SEARCH_STEPS) return;
    const piece = order[depth];
    if (!piece) {
      best = open.map((shared) => ({ pieces: [...shared.pieces], rest: shared.rest }));
      return;
    }
    // Each rest has already lost a kerf per piece in its plank, so a piece plus its kerf has to fit.
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

function hasPart(shared: SharedPlanks, piece: CutPiece): boolean {
  return piece.part !== 'any' && shared.pieces.some((other) => other.part === piece.part);
}

function partsOf(shared: SharedPlanks): string {
  return `${shared.pieces.some((p) => p.part === 'start')}${shared.pieces.some((p) => p.part === 'end')}`;
}

/**
 * Cuts across planks (one per cut piece, except the last piece of a plank that is used up) and rips along them (one per
 * ripped piece).
 */
export function countCuts(plan: Plan): number {
  const used = new Map<number, { pieces: number; length: number }>();
  let rips = 0;
  for (const { rows } of plan.regions) {
    for (const { pieces } of rows) {
      for (const { plank, length, edge } of pieces) {
        const before = used.get(plank) ?? { pieces: 0, length: 0 };
        used.set(plank, { pieces: before.pieces + 1, length: before.length + length });
        if (edge !== 'full') rips++;
      }
    }
  }
  let across = 0;
  for (const { pieces, length } of used.values()) {
    const usedUp = length + plan.rules.kerf * (pieces - 1) === plan.plank.length;
    across += usedUp ? pieces - 1 : pieces;
  }
  return across + rips;
}

// Ripped rows that share planks: one keeps the near edge, the other the far edge, with a kerf between them.

/**
 * Runs of two ripped rows, by index among all runs of all regions: each piece of `far` may be ripped from the same
 * plank as one of `near`.
 */
export interface RipPair {
  readonly near: number;
  readonly far: number;
}

interface RippedRun {
  readonly index: number;
  readonly length: number;
  readonly height: number;
  readonly edge: 'near' | 'far';
  /** True in a region with a single row, where no other row locks to it. */
  readonly alone: boolean;
}

type Cutting = Pick<Sliced, 'rows' | 'runs'>;

/** Pairs of runs that fit side by side in a plank's width, longest first, each run in at most one pair. */
export function ripPairs(regions: readonly Cutting[], plank: Plank, rules: Pick<Rules, 'kerf'>): readonly RipPair[] {
  const ripped = [...rippedRuns(regions, plank)].sort((a, b) => b.length - a.length);
  const left = ripped.filter(({ edge }) => edge === 'far');
  const pairs: RipPair[] = [];
  for (const near of ripped) {
    if (near.edge !== 'near') continue;
    const at = left.findIndex((far) => fits(near, far, plank, rules));
    const [far] = at < 0 ? [] : left.splice(at, 1);
    if (far) pairs.push({ near: near.index, far: far.index });
  }
  return pairs;
}

/**
 * How much of a run's planks a lower bound counts: the whole width, the strip along one edge, or nothing if it may lie
 * beside any other.
 */
export type Lane = 'full' | 'near' | 'far' | 'none';

/**
 * Lanes of all runs: near or far only if some run from the opposite edge fits beside it, none if neither edge has to be
 * kept.
 */
export function lanesOf(regions: readonly Cutting[], plank: Plank, rules: Pick<Rules, 'kerf'>): readonly Lane[] {
  const lanes = regions.flatMap(({ runs }) => runs.map((): Lane => 'full'));
  const ripped = rippedRuns(regions, plank);
  for (const run of ripped) {
    const beside = ripped.filter((other) => other !== run && fits(other, run, plank, rules));
    if (run.alone) lanes[run.index] = beside.length > 0 ? 'none' : 'full';
    else if (beside.some((other) => !other.alone && other.edge !== run.edge)) lanes[run.index] = run.edge;
  }
  return lanes;
}

function fits(one: RippedRun, other: RippedRun, plank: Plank, { kerf }: Pick<Rules, 'kerf'>): boolean {
  return one.height + other.height + kerf <= plank.width;
}

function rippedRuns(regions: readonly Cutting[], plank: Plank): readonly RippedRun[] {
  const ripped: RippedRun[] = [];
  let first = 0;
  for (const { rows, runs } of regions) {
    runs.forEach(({ row, length }, i) => {
      const height = rows[row]?.height ?? plank.width;
      if (height < plank.width)
        ripped.push({ index: first + i, length, height, edge: row === 0 ? 'near' : 'far', alone: rows.length === 1 });
    });
    first += runs.length;
  }
  return ripped;
}
