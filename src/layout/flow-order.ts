/** Places of joints among which rows on one another find no order for long: how many such rows in turn keep the rules at most. */

import type { ScatterFloor } from './scatter-floor.ts';

/** What the rules ask of rows with equal runs, in whole units of a grid; see `orderRules`. */
export interface OrderRules {
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
