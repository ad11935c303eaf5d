/** A lower bound on planks from a network flow of offcuts, tightened by what the joint rules forbid neighboring rows. */

import type { Lane } from './cutting.ts';
import { isJointed, type Run } from './runs.ts';
import { endsKept, type ScatterFloor } from './starts.ts';

// How many stacked rows can keep the rules if all their joints fall near certain positions.

/** The rules for stacked rows with equal runs, in whole grid units; see `orderRules`. */
interface OrderRules {
  readonly plank: number;
  readonly stagger: number;
  readonly inLine: number;
  readonly stair: number;
  /** Whether joints also conflict across the end of a plank and stair steps are certain to show. */
  readonly long: boolean;
}

/**
 * The rules on the grid. Any set of joints that keeps them can be moved to the grid together, in one direction. A
 * difference of two joints then keeps its whole units, while twice the middle joint minus the outer two, which measures
 * how alike two steps are, may come up to 2 units closer to zero. In runs of two planks or more, joints that span less
 * than a plank and break a rule are found within the runs, because the first of them can be assumed in the first plank.
 */
export function orderRules(
  { plank, stagger, inLine }: Pick<ScatterFloor, 'plank' | 'stagger' | 'inLine'>,
  length: number,
  unit: number,
): OrderRules {
  return {
    plank: plank / unit,
    stagger: Math.floor(stagger / unit),
    inLine: Math.floor(inLine / unit),
    stair: Math.floor(inLine / unit) - 1,
    long: length >= 2 * plank,
  };
}

/**
 * The most consecutive rows that can start with some of `starts` (whole units) and keep the rules; undefined if more
 * than `most`.
 */
export function rowsInTurn(starts: readonly number[], rules: OrderRules, most: number): number | undefined {
  const { stagger, inLine, long } = rules;
  const count = starts.length;
  if (count === 0) return 0;
  const apart = starts.map((a) => starts.map((b) => (long ? circle(a - b, rules.plank) : Math.abs(a - b))));
  const at = (a: number, b: number): number => apart[a]?.[b] ?? 0;
  const after = starts.map((_, a) => starts.flatMap((_, b) => (at(a, b) >= stagger ? [b] : [])));
  /** Pairs that end a layout of this many rows. */
  let ends = new Set(after.flatMap((others, a) => others.map((b) => a * count + b)));
  if (ends.size === 0) return 1;
  for (let rows = 2; rows <= most; rows++) {
    const next = new Set<number>();
    for (const pair of ends) {
      const [a, b] = [Math.floor(pair / count), pair % count];
      for (const c of after[b] ?? []) {
        if (at(a, c) < inLine) continue;
        if (stepsAlike(starts[a] ?? 0, starts[b] ?? 0, starts[c] ?? 0, rules)) continue;
        next.add(b * count + c);
      }
    }
    if (next.size === 0) return rows;
    ends = next;
  }
  return undefined;
}

/** True for two similar steps, each at most half a plank wherever the joints were before moving to the grid. */
function stepsAlike(below: number, middle: number, above: number, { plank, stair, long }: OrderRules): boolean {
  if (!long) return false;
  const [first, second] = [signed(middle - below, plank), signed(above - middle, plank)];
  return Math.abs(second - first) < stair && 2 * (Math.max(Math.abs(first), Math.abs(second)) + 1) <= plank;
}

/** The difference modulo the plank that is closest to zero. */
function signed(difference: number, plank: number): number {
  const rest = ((difference % plank) + plank) % plank;
  return 2 * rest > plank ? rest - plank : rest;
}

function circle(difference: number, plank: number): number {
  const rest = ((difference % plank) + plank) % plank;
  return Math.min(rest, plank - rest);
}

/**
 * One option for a start piece. `need` and `give` are lengths in units, rounded so that no possibility is lost; −1
 * means none.
 */
interface FlowOption {
  readonly start: number;
  readonly need: number;
  readonly give: number;
  /** Planks opened: the whole ones, plus the one an end piece is cut from. */
  readonly cost: number;
}

/** Stacked rows with equal runs in one lane. Rows of a stack have the same options whatever their lanes. */
interface FlowBlock {
  readonly runs: readonly number[];
  readonly lane: Lane;
  readonly stack: number;
  readonly options: readonly FlowOption[];
}

/** Pieces with walls at both ends: each takes `size` units, kerf included, from a rest of at least `least`. */
interface FlowShort {
  readonly lane: Lane;
  readonly count: number;
  readonly least: number;
  readonly size: number;
}

export interface FlowTable {
  /** A plank's length in units; an offcut of r units is node r. */
  readonly nodes: number;
  readonly unit: number;
  /** True when one unit divides every length, so that rounding lost nothing. */
  readonly exact: boolean;
  readonly blocks: readonly FlowBlock[];
  readonly shorts: readonly FlowShort[];
  /** Runs exactly one plank long, by lane. */
  readonly wholes: readonly { readonly lane: Lane; readonly count: number }[];
}

/** Maximum nodes per plank; lengths are rounded if only a finer unit divides them all. */
const MOST_NODES = 1000;

export function flowTable(floor: ScatterFloor, lanes: readonly Lane[] = floor.runs.map(() => 'full')): FlowTable {
  const { runs, plank, kerf, minEnd } = floor;
  const taken = runs.map((_, i) => i).filter((i) => lanes[i] !== 'none');
  const common = [plank, kerf, minEnd, ...taken.map((i) => runs[i]?.length ?? 0)].reduce(divisor, 0);
  const exact = plank / common <= MOST_NODES;
  // With one unit for all lengths, some optimal layout has every start piece on the grid, because the constraints are
  // differences of lengths.
  const unit = exact ? common : Math.ceil(plank / MOST_NODES);
  const known = new Map<number, readonly FlowOption[]>();
  const options = (length: number): readonly FlowOption[] => {
    const found = known.get(length) ?? optionsOf(length, floor, unit, exact);
    known.set(length, found);
    return found;
  };
  const sizes = LANES.flatMap((lane) => {
    const counts = new Map<number, number>();
    for (const i of taken) {
      const length = runs[i]?.length ?? 0;
      if (lanes[i] === lane && length <= plank) counts.set(length, (counts.get(length) ?? 0) + 1);
    }
    return [...counts].map(([length, count]) => ({ lane, length, count }));
  });
  return {
    nodes: Math.ceil(plank / unit),
    unit,
    exact,
    blocks: stacksOf(floor, taken).flatMap((stacked, stack) =>
      LANES.flatMap((lane): readonly FlowBlock[] => {
        const own = stacked.filter((i) => lanes[i] === lane);
        return own.length > 0 ? [{ runs: own, lane, stack, options: options(runs[own[0] ?? 0]?.length ?? 0) }] : [];
      }),
    ),
    shorts: sizes.flatMap(({ lane, length, count }) =>
      length < plank
        ? [{ lane, count, least: Math.ceil(length / unit), size: Math.floor((length + kerf) / unit) }]
        : [],
    ),
    wholes: sizes.filter(({ length }) => length === plank).map(({ lane, count }) => ({ lane, count })),
  };
}

const LANES = ['full', 'near', 'far'] as const;

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** Jointed runs, grouped with the equal runs they lie on. */
function stacksOf({ runs, plank }: ScatterFloor, taken: readonly number[]): readonly (readonly number[])[] {
  const blocks: number[][] = [];
  const blockOf = new Map<number, number[]>();
  const alike = (a: Run, b: Run | undefined): boolean => a.from === b?.from && a.length === b.length;
  for (const i of taken) {
    const run = runs[i];
    if (!run || !isJointed(run, plank)) continue;
    const under = run.touching.find((j) => alike(run, runs[j]) && blockOf.has(j));
    const block = under === undefined ? [] : (blockOf.get(under) ?? []);
    if (block.length === 0) blocks.push(block);
    block.push(i);
    blockOf.set(i, block);
  }
  return blocks;
}

function optionsOf(length: number, floor: ScatterFloor, unit: number, exact: boolean): readonly FlowOption[] {
  const { plank, kerf, minEnd } = floor;
  const kept = (start: number): boolean => endsKept(length, start, plank, minEnd);
  const anyKept = floor.places.some((places, i) => floor.runs[i]?.length === length && places.some(kept));
  // A whole start piece is separate: it costs a plank, while a start piece of the same length would need an offcut.
  const stretches: (readonly [low: number, high: number])[] = [];
  for (let low = exact ? unit : 1; low <= Math.min(plank, length - 1); low += unit) {
    const high = exact ? low : Math.min(low + unit - 1, plank - 1, length - 1);
    const turn = length % plank;
    for (const [from, to] of low < turn && turn <= high
      ? ([
          [low, turn - 1],
          [turn, turn],
          [turn + 1, high],
        ] as const)
      : ([[low, high]] as const))
      if (from <= to) stretches.push([from, to]);
  }
  if (!exact && plank < length) stretches.push([plank, plank]);
  return stretches.flatMap(([low, high]): FlowOption[] => {
    // Within a stretch the end piece shrinks as the start grows, so the smallest start is at one side and the smallest
    // end at the other.
    const end = (((length - high) % plank) + plank) % plank || plank;
    const longest = end + (high - low);
    if (anyKept && (high < minEnd || longest < minEnd)) return [];
    const whole = Math.floor((length - high - (end === plank ? 0 : end)) / plank);
    const isWhole = low === plank;
    return [
      {
        start: low,
        need: isWhole ? -1 : Math.floor(low / unit),
        give: end === plank ? -1 : Math.max(-1, Math.ceil((plank - kerf - end) / unit)),
        cost: whole + (isWhole ? 1 : 0) + (end === plank ? 0 : 1),
      },
    ];
  });
}

/** At most `most` rows of certain stacked blocks may start with one of the options. */
export interface FlowArc {
  readonly blocks: readonly number[];
  readonly options: readonly number[];
  readonly most: number;
}

const TOLERANCE = 1e-6;
/** Longer sequences than this add little to the bound. */
const MOST_IN_TURN = 8;

/** Stacked rows with equal runs and how often they use each option; `length` is a run's. */
interface Stack {
  readonly over: readonly number[];
  readonly starts: readonly number[];
  readonly used: readonly number[];
  readonly count: number;
  readonly length: number;
}

/**
 * Arcs violated by `used` (rows by block and option). Distances are rounded down to whole units; joints that keep them
 * can all be moved to the grid and still do.
 */
export function brokenArcs(
  { blocks, unit }: FlowTable,
  floor: Pick<ScatterFloor, 'runs' | 'plank' | 'stagger' | 'inLine'>,
  used: readonly (readonly number[])[],
): readonly FlowArc[] {
  return [...new Set(blocks.map((block) => block.stack))].flatMap((number) => {
    const over = blocks.flatMap(({ stack }, b) => (stack === number ? [b] : []));
    const [first] = over.map((b) => blocks[b]);
    const starts = (first?.options ?? []).map(({ start }) => start);
    const stack: Stack = {
      over,
      starts,
      used: starts.map((_, i) => over.reduce((sum, b) => sum + (used[b]?.[i] ?? 0), 0)),
      count: over.reduce((sum, b) => sum + (blocks[b]?.runs.length ?? 0), 0),
      length: floor.runs[first?.runs[0] ?? 0]?.length ?? 0,
    };
    const arcs = narrow(stack, floor, unit);
    return arcs.length > 0 ? arcs : unordered(stack, orderRules(floor, stack.length, unit), unit);
  });
}

/**
 * Of stacked rows only every other one can start within less than a stagger; if joints must not line up either, only
 * every third within less than both. Less than a unit forbids nothing, because two joints of one option may be that far
 * apart. Arcs across the end of a plank are left out, since there the rule binds only long runs.
 */
function narrow(stack: Stack, { stagger, inLine }: Pick<ScatterFloor, 'stagger' | 'inLine'>, unit: number): FlowArc[] {
  const { starts, used, count } = stack;
  return [[stagger, 2] as const, [Math.min(inLine, stagger), 3] as const].flatMap(([apart, every]) => {
    const width = apart - (apart % unit);
    if (width === 0) return [];
    return starts.flatMap((start, first): FlowArc[] => {
      if ((used[first] ?? 0) < TOLERANCE) return [];
      let last = first;
      while (last + 1 < starts.length && (starts[last + 1] ?? 0) - start < width) last++;
      const options = Array.from({ length: last - first + 1 }, (_, i) => first + i);
      return tooMany(stack, options, Math.ceil(count / every));
    });
  });
}

/**
 * Sets of options with which only a few consecutive rows can start, so that in every few plus one a row starts
 * elsewhere. Includes the options in use and as many neighbors as possible without weakening the arc.
 */
function unordered(stack: Stack, rules: OrderRules, unit: number): FlowArc[] {
  const { starts, used, count } = stack;
  const places = starts.map((start) => start / unit);
  const chosen = used.flatMap((rows, i) => (rows > TOLERANCE ? [i] : []));
  const turns = (options: readonly number[], most: number): number | undefined =>
    rowsInTurn(
      options.map((i) => places[i] ?? 0),
      rules,
      most,
    );
  const most = turns(chosen, Math.min(MOST_IN_TURN, count - 1));
  if (most === undefined) return [];
  const found = [...chosen];
  for (let off = 1; off <= rules.inLine; off++) {
    for (const i of chosen.flatMap((at) => [at - off, at + off])) {
      if (i >= 0 && i < starts.length && !found.includes(i) && turns([...found, i], most) !== undefined) found.push(i);
    }
  }
  return tooMany(
    stack,
    found.sort((a, b) => a - b),
    count - Math.floor(count / (most + 1)),
  );
}

function tooMany({ over, used }: Stack, options: readonly number[], most: number): FlowArc[] {
  const sum = options.reduce((rows, i) => rows + (used[i] ?? 0), 0);
  return sum > most + TOLERANCE ? [{ blocks: over, options, most }] : [];
}

// The bound itself, computed from offcut prices in integers, so that it holds however the prices were found.

/** Prices are rounded down to this fraction of a plank, which can only weaken the bound. */
const SCALE = 1_000_000;

/** What an offcut of r units is worth, by r: the half along its near edge and the half along its far edge. */
export interface Worth {
  readonly near: readonly number[];
  readonly far: readonly number[];
}

/**
 * No layout takes fewer planks than ⌈whole + Σ rows · min over options (cost + price of what it needs − price of what
 * it gives) + the same for short pieces⌉, for any prices from 0 to one plank that never fall as offcuts grow (weak
 * duality of linear programs). An offcut's price has two parts, one per long edge, together at most one plank: a ripped
 * row that keeps one edge pays and earns only that part, because a row that keeps the other edge may lie beside it.
 * `worth` is a near-optimal set of prices, by units of length. An arc may have a price too: every row in it pays, and
 * what the allowed number of rows would pay is subtracted.
 */
export function flowBound(
  { nodes, blocks, shorts, wholes }: FlowTable,
  worth: Worth,
  arcs: readonly (FlowArc & { readonly price: number })[] = [],
): number {
  const near = rising(worth.near, nodes, SCALE);
  const far = rising(worth.far, nodes, SCALE - (near[nodes] ?? 0));
  const both = near.map((price, node) => price + (far[node] ?? 0));
  const none = near.map(() => 0);
  const priceIn: Record<Lane, readonly number[]> = { full: both, near, far, none };
  // A whole plank costs one; a strip as long as a plank costs its part of one.
  const plankIn = (lane: Lane): number => (lane === 'full' ? SCALE : (priceIn[lane][nodes] ?? 0));
  const at = (lane: Lane, node: number): number => (node < 0 ? 0 : (priceIn[lane][Math.min(node, nodes)] ?? 0));
  let total = wholes.reduce((sum, { lane, count }) => sum + count * plankIn(lane), 0);
  const tolls = blocks.map(({ options }) => options.map(() => 0));
  for (const { blocks: over, options, most, price: toll } of arcs) {
    const paid = Math.max(0, Math.floor(toll * SCALE));
    for (const block of over) {
      const own = tolls[block] ?? [];
      for (const i of options) own[i] = (own[i] ?? 0) + paid;
    }
    total -= most * paid;
  }
  blocks.forEach(({ runs, lane, options }, b) => {
    const costs = options.map(
      ({ need, give, cost }, i) => cost * plankIn(lane) + at(lane, need) - at(lane, give) + (tolls[b]?.[i] ?? 0),
    );
    total += runs.length * Math.min(...costs);
  });
  for (const { lane, count, least: from, size } of shorts) {
    let cheapest = plankIn(lane);
    for (let node = from; node <= nodes; node++)
      cheapest = Math.min(cheapest, at(lane, node) - (node >= size ? at(lane, node - size) : 0));
    total += count * cheapest;
  }
  return Math.ceil(total / SCALE);
}

function rising(worth: readonly number[], nodes: number, most: number): readonly number[] {
  let least = 0;
  return Array.from({ length: nodes + 1 }, (_, node) => {
    least = Math.min(most, Math.max(least, Math.floor((worth[node] ?? 0) * SCALE)));
    return least;
  });
}
