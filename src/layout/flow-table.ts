/** The planks of a floor as a flow of offcuts: what every place of a start piece needs, leaves over and costs. */

import type { Lane } from './rip-share.ts';
import { isJointed, type Run } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';

/** One place of a start piece. `need` and `give` are lengths in units, rounded so that nothing possible is lost; −1 is none. */
export interface FlowOption {
  readonly start: number;
  readonly need: number;
  readonly give: number;
  /** Planks begun: the whole ones, and the one an end piece is cut from. */
  readonly cost: number;
}

/** Rows on one another with equal runs, all of one lane; those of a stack have the same options, whatever their lanes. */
export interface FlowBlock {
  readonly runs: readonly number[];
  readonly lane: Lane;
  readonly stack: number;
  readonly options: readonly FlowOption[];
}

/** Pieces with walls at both ends: each takes `size` units, its kerf with it, from a rest of at least `least`. */
export interface FlowShort {
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
