/** Laying a floor: slice regions into rows, choose start pieces, cut from the fewest planks, number the planks. */

import { boundOf, brokenRules, type Layout } from './bounds.ts';
import { type CoveredArea, isSlanted, type Sliced, sliceArea } from './covered-area.ts';
import { type CutPiece, type RipPair, ripPairs, sharePlanks } from './cutting.ts';
import type { Bound, Frame, LaidRegion, Part, Piece, Plan, Plank, Region, Row, Rules } from './floor.ts';
import { isJointed, pieceLengths } from './runs.ts';
import { scatterFirst } from './scatter.ts';
import { laySlanted } from './slanted.ts';
import { chooseStarts, type Starts } from './starts.ts';

/**
 * Plans a floor: planks are counted by exact matching and numbered from 1 in laying order. If any wall or row is
 * slanted, every region goes through `laySlanted`. A region in which the gap leaves nothing gets no rows.
 */
export function layFloor(areas: readonly CoveredArea[], plank: Plank, rules: Rules): Plan {
  if (areas.some(({ region, angle }) => isSlanted(region, angle))) return laySlanted(areas, plank, rules);
  const sliced = areas.map((area) => sliceArea(area, plank, rules));
  const bound = boundOf(
    sliced.map(({ slabs }) => slabs),
    plank,
    rules,
  );
  if (rules.pattern.name === 'scattered') {
    const found = scatterFirst(sliced, plank, rules, bound);
    return planOf(found.sliced, found.starts, plank, rules, bound);
  }
  const starts = chooseStarts(
    sliced.map(({ runs }) => runs),
    plank,
    rules,
  );
  return planOf(sliced, starts, plank, rules, bound);
}

export function planOf(
  sliced: readonly Sliced[],
  starts: readonly Starts[],
  plank: Plank,
  rules: Rules,
  bound: Omit<Bound, 'proven'>,
): Plan {
  const layouts = sliced.map((part, i) => ({
    ...part,
    name: part.region.name,
    starts: starts[i]?.starts ?? [],
    patterned: starts[i]?.patterned,
  }));
  const { regions, planks, reused } = cutAndNumber(layouts, plank, rules);
  return {
    plank,
    rules,
    regions,
    planks,
    reused,
    bound: { ...bound, proven: planks === bound.best },
    broken: layouts.flatMap((layout) => brokenRules(layout, plank, rules)),
  };
}

// Laying order of the regions: as few offcuts as possible waiting for a later region.

/**
 * Up to this many regions all orders are tried; beyond that, the next region is always the one after which the fewest
 * offcuts wait.
 */
const TRIED = 6;

/**
 * An order as indices into the plan's regions; `waiting` is the most offcuts waiting for a later region at one time.
 */
interface LayingOrder {
  readonly order: readonly number[];
  readonly waiting: number;
}

export function layingOrder(plan: Plan): LayingOrder {
  const shared = sharedPlanks(plan);
  const own = plan.regions.map((_, i) => i);
  const best: LayingOrder = { order: own, waiting: mostWaiting(own, shared) };
  if (best.waiting === 0) return best;
  const others = own.length <= TRIED ? orders(own) : [greedy(own, shared)];
  return others.reduce<LayingOrder>((least, order) => {
    const waiting = mostWaiting(order, shared);
    return waiting < least.waiting ? { order, waiting } : least;
  }, best);
}

/** The plan with its regions in the given order, planks renumbered as they come up. */
export function inOrder(plan: Plan, order: readonly number[]): Plan {
  if (order.every((index, i) => index === i)) return plan;
  const numbers = new Map<number, number>();
  const renumbered = (plank: number): number => {
    const known = numbers.get(plank) ?? numbers.size + 1;
    numbers.set(plank, known);
    return known;
  };
  const regions = order.flatMap((index) => {
    const region = plan.regions[index];
    if (!region) return [];
    const rows = region.rows.map((row) => ({
      ...row,
      pieces: row.pieces.map((piece) => ({ ...piece, plank: renumbered(piece.plank) })),
    }));
    return [{ ...region, rows }];
  });
  return { ...plan, regions };
}

function sharedPlanks(plan: Plan): readonly (readonly number[])[] {
  const regions = new Map<number, Set<number>>();
  plan.regions.forEach(({ rows }, i) => {
    for (const { pieces } of rows) {
      for (const { plank } of pieces) regions.set(plank, (regions.get(plank) ?? new Set()).add(i));
    }
  });
  return [...regions.values()].filter(({ size }) => size > 1).map((set) => [...set]);
}

function mostWaiting(order: readonly number[], shared: readonly (readonly number[])[]): number {
  let most = 0;
  const done = new Set<number>();
  for (const region of order) {
    done.add(region);
    most = Math.max(most, waitingAfter(done, shared));
  }
  return most;
}

function waitingAfter(done: ReadonlySet<number>, shared: readonly (readonly number[])[]): number {
  return shared.filter((regions) => regions.some((r) => done.has(r)) && regions.some((r) => !done.has(r))).length;
}

function orders(rest: readonly number[]): readonly (readonly number[])[] {
  if (rest.length <= 1) return [rest];
  return rest.flatMap((first) => orders(rest.filter((one) => one !== first)).map((order) => [first, ...order]));
}

function greedy(own: readonly number[], shared: readonly (readonly number[])[]): readonly number[] {
  const order: number[] = [];
  const done = new Set<number>();
  while (order.length < own.length) {
    const rest = own.filter((region) => !done.has(region));
    const after = (region: number): number => waitingAfter(new Set([...done, region]), shared);
    const next = rest.reduce((best, region) => (after(region) < after(best) ? region : best));
    order.push(next);
    done.add(next);
  }
  return order;
}

// Assigning every piece a numbered plank by exact matching, and the offcuts kept or left over.

interface Placed {
  readonly u: number;
  readonly length: number;
  readonly part: Part;
}

interface Indexed extends Placed {
  readonly index: number;
}

/** Every region's rows of numbered pieces, the number of planks, and how many of them are used more than once. */
export function cutAndNumber(
  layouts: readonly (Layout & { region: Region; frame: Frame })[],
  plank: Plank,
  rules: Rules,
): { regions: readonly LaidRegion[]; planks: number; reused: number } {
  const byRun = piecesByRun(layouts, plank);
  const flat = byRun.flat();
  const pairs = ripPairs(layouts, plank, rules);
  const beside = besideBy(pairs, byRun, false);
  const more = besideBy(pairs, byRun, true);
  // A piece from any part that also has to be a start or an end is sometimes worth more when it may be cut from
  // anywhere.
  const found = (more.size > beside.size ? [beside, more] : [beside])
    .map((some) => ({ beside: some, shared: sharePlanks(cutsOf(flat, some), plank.length, rules.kerf, plank.lock) }))
    .reduce((best, one) => (one.shared.length < best.shared.length ? one : best));
  const sources = new Map<number, number>();
  found.shared.forEach(({ pieces }, source) => {
    for (const piece of pieces) sources.set(piece.index, source);
  });
  // A whole plank is its own source, and a ripped piece uses the plank of the piece it is cut beside.
  const sourceOf = (index: number): number => sources.get(index) ?? -1 - index;
  const numbers = new Map<number, number>();
  const uses: number[] = [];
  const numbered = new Map<number, number>();
  for (const { index } of flat) {
    const source = sourceOf(found.beside.get(index) ?? index);
    const number = numbers.get(source) ?? numbers.size + 1;
    numbers.set(source, number);
    numbered.set(index, number);
    uses[number] = (uses[number] ?? 0) + 1;
  }
  let next = 0;
  const regions = layouts.map(({ region, frame, rows: slices, runs }) => {
    const rows: Piece[][] = slices.map(() => []);
    for (const run of runs) {
      const height = slices[run.row]?.height;
      const edge = height === plank.width ? 'full' : run.row === 0 ? 'near' : 'far';
      for (const { u, length, part, index } of byRun[next] ?? [])
        rows[run.row]?.push({ u, length, part, plank: numbered.get(index) ?? 0, edge });
      next++;
    }
    return {
      ...region,
      frame,
      rows: slices.map(({ v, height }, r): Row => ({ v, height, pieces: rows[r] ?? [] })),
    };
  });
  return { regions, planks: numbers.size, reused: uses.filter((count) => count > 1).length };
}

/**
 * Maps each piece of a far run to the near-run piece it is ripped beside; with `mixed` also when either may be any part
 * of a plank.
 */
function besideBy(
  pairs: readonly RipPair[],
  byRun: readonly (readonly Indexed[])[],
  mixed: boolean,
): ReadonlyMap<number, number> {
  return new Map(pairs.flatMap(({ near, far }) => hosted(byRun[near] ?? [], byRun[far] ?? [], mixed)));
}

/** What has to be cut: a piece from any part with a start or an end beside it is cut from that same part. */
function cutsOf(flat: readonly Indexed[], beside: ReadonlyMap<number, number>): readonly CutPiece[] {
  const guests = new Map([...beside].map(([piece, host]) => [host, flat[piece]?.part]));
  return flat.flatMap(({ length, part: own, index }) => {
    if (own === 'whole' || beside.has(index)) return [];
    const guest = guests.get(index);
    const part = own === 'any' && guest !== undefined && guest !== 'whole' ? guest : own;
    return [{ length, part, index }];
  });
}

/**
 * Pieces of a far run that fit beside one of a near run: no longer, and the same part of a plank, except that with
 * `mixed` both just need to be a definite part.
 */
function hosted(
  near: readonly Indexed[],
  far: readonly Indexed[],
  mixed: boolean,
): readonly (readonly [piece: number, host: number])[] {
  const free = [...near];
  return far.flatMap(({ part, length, index }) => {
    const long = (host: Indexed): boolean => host.length >= length;
    const same = free.findIndex((host) => host.part === part && long(host));
    const at =
      same < 0 && mixed && part !== 'whole'
        ? free.findIndex((host) => (host.part === 'any' || (part === 'any' && host.part !== 'whole')) && long(host))
        : same;
    const [host] = at < 0 ? [] : free.splice(at, 1);
    return host ? [[index, host.index] as const] : [];
  });
}

function piecesByRun(layouts: readonly Layout[], plank: Plank): readonly (readonly Indexed[])[] {
  let index = 0;
  return layouts.flatMap(({ runs, starts }) =>
    runs.map((run, i) => {
      const lengths = pieceLengths(run, starts[i] ?? 0, plank.length);
      let u = run.from;
      return lengths.map((length, k) => {
        const part = partOf(length, k, lengths.length, isJointed(run, plank.length), plank);
        const piece = { u, length, part, index: index++ };
        u += length;
        return piece;
      });
    }),
  );
}

function partOf(length: number, index: number, count: number, jointed: boolean, plank: Plank): Part {
  if (length === plank.length) return 'whole';
  if (!jointed || plank.lock === 'none') return 'any';
  return index === 0 ? 'start' : index === count - 1 ? 'end' : 'whole';
}

/** `length` is what is left of the plank, in ticks; `end` is which end of the plank it is. Rows count from 0. */
export interface KeptOffcut {
  readonly plank: number;
  readonly length: number;
  readonly end: 'left' | 'right' | 'any';
  readonly from: { readonly region: string; readonly row: number };
  readonly to: { readonly region: string; readonly row: number };
}

interface Use {
  readonly piece: Piece;
  readonly region: string;
  readonly row: number;
}

/** Asked for several times of each plan, which never changes. */
const keptIn = new WeakMap<Plan, readonly KeptOffcut[]>();

/** Every offcut kept for a later region, in the order they come up; listed once for each region it is used in. */
export function keptOffcuts(plan: Plan): readonly KeptOffcut[] {
  const known = keptIn.get(plan) ?? foundOffcuts(plan);
  keptIn.set(plan, known);
  return known;
}

function foundOffcuts(plan: Plan): readonly KeptOffcut[] {
  const begun = new Map<number, string>();
  const shared = new Set<number>();
  for (const { name, rows } of plan.regions)
    for (const { pieces } of rows)
      for (const { plank } of pieces) {
        const first = begun.get(plank);
        if (first === undefined) begun.set(plank, name);
        else if (first !== name) shared.add(plank);
      }
  const uses = new Map<number, Use[]>();
  for (const { name, rows } of plan.regions) {
    rows.forEach(({ pieces }, row) => {
      for (const piece of pieces) {
        if (!shared.has(piece.plank)) continue;
        const known = uses.get(piece.plank) ?? [];
        known.push({ piece, region: name, row });
        uses.set(piece.plank, known);
      }
    });
  }
  return [...uses].flatMap(([plank, all]) => keptOf(plank, all, plan));
}

function keptOf(plank: number, uses: readonly Use[], plan: Plan): readonly KeptOffcut[] {
  const kept: KeptOffcut[] = [];
  let rest: number = plan.plank.length;
  uses.forEach(({ piece, region, row }, i) => {
    const before = uses[i - 1];
    if (before && before.region !== region) {
      const end = piece.part === 'start' ? 'right' : piece.part === 'end' ? 'left' : 'any';
      kept.push({
        plank,
        // Strips from one plank's width lie side by side, so the whole length is kept.
        length: rest >= piece.length ? rest : plan.plank.length,
        end,
        from: { region: before.region, row: before.row },
        to: { region, row },
      });
    }
    rest -= piece.length + plan.rules.kerf;
  });
  return kept;
}

/** Ticks. `offcuts` are full width, longest first; `strips` are as ripped, each with its width and length. */
export interface Leftover {
  readonly offcuts: readonly number[];
  readonly strips: readonly { readonly width: number; readonly length: number }[];
}

/** Offcuts at least `least` long and strips at least a quarter of a plank wide. Every cut takes a kerf. */
export function leftoverOf(plan: Plan, least: number): Leftover {
  const planks = new Map<number, { piece: Piece; row: Row }[]>();
  for (const { rows } of plan.regions) {
    for (const row of rows) {
      for (const piece of row.pieces) {
        const known = planks.get(piece.plank);
        if (known) known.push({ piece, row });
        else planks.set(piece.plank, [{ piece, row }]);
      }
    }
  }
  const { width, length } = plan.plank;
  const { kerf } = plan.rules;
  const offcuts: number[] = [];
  const strips: { width: number; length: number }[] = [];
  for (const cuts of planks.values()) {
    const rest = cuts.reduce((sum, { piece }) => sum - piece.length - kerf, length as number);
    const ripped = cuts.filter(({ piece }) => piece.edge !== 'full');
    // Pieces that add up to more than the plank share its width, so no full-width rest is left.
    if (rest < -kerf) continue;
    if (rest >= least) offcuts.push(rest);
    for (const { piece, row } of ripped) {
      const wide = width - row.height - kerf;
      if (wide * 4 >= width) strips.push({ width: wide, length: piece.length });
    }
  }
  return { offcuts: offcuts.sort((a, b) => b - a), strips };
}
