/** What the rules leave to rows on one another: how many of them may have their joints near one place, or near a few. */

import { type OrderRules, orderRules, rowsInTurn } from './flow-order.ts';
import type { FlowTable } from './flow-table.ts';
import type { ScatterFloor } from './scatter-floor.ts';

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
