/** Laying a floor: slice regions into rows, choose start pieces, cut from the fewest planks, number the planks. */

import { boundOf, brokenRules } from './bounds.ts';
import { type CoveredArea, isSlanted, type Sliced, sliceArea } from './covered-area.ts';
import type { Bound, Plan, Plank, Rules } from './floor.ts';
import { cutAndNumber } from './offcuts.ts';
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
