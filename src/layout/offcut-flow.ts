/** What the rules leave to rows on one another: how many of them may have their joints near one place, or near a few. */

import type { Lane } from './cutting.ts';
import { isJointed, type Run } from './runs.ts';
import { endsKept, type ScatterFloor } from './scatter-rules.ts';

// Places of joints among which rows on one another find no order for long: how many such rows in turn keep
// the rules at most.

/** What the rules ask of rows with equal runs, in whole units of a grid; see `orderRules`. */
interface OrderRules {
  readonly plank: number;
  readonly stagger: number;
  readonly inLine: number;
  readonly stair: number;
  /** Whether joints also meet round the end of a plank, and stairs are sure to show. */
  readonly long: boolean;
}

/**
 * The rules as they hold on the grid. Joints anywhere that keep them can all be moved to the grid at once, one way: a difference of
 * two then keeps its whole units, while twice the middle joint less the outer two, which tells how far two steps are from alike,
 * may come less than 2 units nearer to nothing. In runs of two planks or more, joints less than a plank from first to last that
 * break a rule are found within the runs: the first of them may be taken in the first plank.
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

/** The most rows in turn that begin with some of `starts` (whole units) and keep the rules; undefined when that is more than `most`. */
export function rowsInTurn(starts: readonly number[], rules: OrderRules, most: number): number | undefined {
  const { stagger, inLine, long } = rules;
  const count = starts.length;
  if (count === 0) return 0;
  const apart = starts.map((a) => starts.map((b) => (long ? circle(a - b, rules.plank) : Math.abs(a - b))));
  const at = (a: number, b: number): number => apart[a]?.[b] ?? 0;
  const after = starts.map((_, a) => starts.flatMap((_, b) => (at(a, b) >= stagger ? [b] : [])));
  /** Pairs that end a layout of so many rows. */
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

/** Two steps that are alike, each at most half a plank wherever the joints were before they were moved. */
function stepsAlike(below: number, middle: number, above: number, { plank, stair, long }: OrderRules): boolean {
  if (!long) return false;
  const [first, second] = [signed(middle - below, plank), signed(above - middle, plank)];
  return Math.abs(second - first) < stair && 2 * (Math.max(Math.abs(first), Math.abs(second)) + 1) <= plank;
}

/** The difference nearest to nothing that is as much but for whole planks. */
function signed(difference: number, plank: number): number {
  const rest = ((difference % plank) + plank) % plank;
  return 2 * rest > plank ? rest - plank : rest;
}

function circle(difference: number, plank: number): number {
  const rest = ((difference % plank) + plank) % plank;
  return Math.min(rest, plank - rest);
}

// The planks of a floor as a flow of offcuts: what every place of a start piece needs, leaves over and costs.

/** One place of a start piece. `need` and `give` are lengths in units, rounded so that nothing possible is lost; −1 is none. */
interface FlowOption {
  readonly start: number;
  readonly need: number;
  readonly give: number;
  /** Planks begun: the whole ones, and the one an end piece is cut from. */
  readonly cost: number;
}

/** Rows on one another with equal runs, all of one lane; those of a stack have the same options, whatever their lanes. */
interface FlowBlock {
  readonly runs: readonly number[];
  readonly lane: Lane;
  readonly stack: number;
  readonly options: readonly FlowOption[];
}

/** Pieces with walls at both ends: each takes `size` units, its kerf with it, from a rest of at least `least`. */
interface FlowShort {
  readonly lane: Lane;
  readonly count: number;
  readonly least: number;
  readonly size: number;
}

export interface FlowTable {
  /** A plank's length in units; an offcut of r units stands at node r. */
  readonly nodes: number;
  readonly unit: number;
  /** True when a unit divides every length, so that rounding lost nothing. */
  readonly exact: boolean;
  readonly blocks: readonly FlowBlock[];
  readonly shorts: readonly FlowShort[];
  /** Runs a plank long, by lane. */
  readonly wholes: readonly { readonly lane: Lane; readonly count: number }[];
}

/** A plank has at most this many nodes; where the lengths share a finer unit only, they are rounded. */
const MOST_NODES = 1000;

/** The table of a floor, its runs in `lanes`; those in none are left out. Least start pieces are on the grid of the common unit: see below. */
export function flowTable(floor: ScatterFloor, lanes: readonly Lane[] = floor.runs.map(() => 'full')): FlowTable {
  const { runs, plank, kerf, minEnd } = floor;
  const taken = runs.map((_, i) => i).filter((i) => lanes[i] !== 'none');
  const common = [plank, kerf, minEnd, ...taken.map((i) => runs[i]?.length ?? 0)].reduce(divisor, 0);
  const exact = plank / common <= MOST_NODES;
  // With one unit in all lengths some best layout has every start piece on it: the constraints are differences of lengths.
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

/** Lanes that take part of a plank. */
const LANES = ['full', 'near', 'far'] as const;

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** Jointed runs, those that lie on an equal one together with it. */
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
  // A whole start piece stands for itself: it costs a plank, where a start piece of the same length would need an offcut.
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
    // Within a stretch an end piece shrinks as its start grows: the least start is at one side, the least end at the other.
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

/** At most `most` rows of some blocks, which lie on one another, begin with one of the options. */
export interface FlowArc {
  readonly blocks: readonly number[];
  readonly options: readonly number[];
  readonly most: number;
}

const TOLERANCE = 1e-6;
/** Longer turns than this leave a rule of little worth. */
const MOST_IN_TURN = 8;

/** Rows on one another with equal runs, and what they use of each place; `length` is a run's. */
interface Stack {
  readonly over: readonly number[];
  readonly starts: readonly number[];
  readonly used: readonly number[];
  readonly count: number;
  readonly length: number;
}

/**
 * Arcs that `used` (rows by block and option) breaks. Distances are cut to whole units: joints that keep them can all be moved to
 * the grid at once, and then keep as much.
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
 * Of rows on one another only every other begins within less than a stagger, and where joints must not line up either only every
 * third within less than both. Less than a unit forbids nothing: two joints of one place may lie as far apart. Arcs that pass the
 * end of a plank are left out, for there the rule binds long runs only.
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
 * Places of which no more than a few rows in turn can begin with some: of every few and one more, one row begins elsewhere. They are
 * those in use, and as many near them as change nothing.
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

// A bound on the planks read off prices of offcuts, in whole numbers: whoever found the prices need not be
// trusted.

/** Prices are cut to this part of a plank: what is lost only weakens the bound. */
const SCALE = 1_000_000;

/** What an offcut of r units is worth, by r: the half along its near edge, and the half along its far edge. */
export interface Worth {
  readonly near: readonly number[];
  readonly far: readonly number[];
}

/**
 * No layout takes fewer planks than ⌈whole + Σ rows · min over places (cost + price of what it needs − price of what it gives)
 * + the same for short pieces⌉, for any prices by length that never fall as offcuts grow, from 0 to one plank (weak duality of
 * linear programs). An offcut's price has two parts, one for each long edge, that come to a plank at most: a ripped row which
 * keeps one edge pays and earns that part only, for a row that keeps the other may lie beside it. `worth` are prices near the
 * best ones, by units of length. An arc may have a price too: every row in it pays, and what as many rows as it allows would pay
 * comes off.
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
