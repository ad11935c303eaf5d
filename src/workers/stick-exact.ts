/** Whole sticks: integer programs over known ways, or over every fullest way where those are few. */

import type { Highs } from 'highs';
import type { Counts, StickNumbers } from '../trim/sticks.ts';
import type { Way } from './stick-model.ts';

/** Nodes an integer program may take: steps, not seconds, so that the same task gives the same answer. */
const NODES = 1500;
/** HiGHS's model status for a program without solutions. */
const INFEASIBLE = 8;
/** Every way is listed up to this many. */
const MOST_WAYS = 4000;

/** How an integer program ended: a choice of ways, none for certain, or not known. */
export type Chosen = { readonly ways: readonly Way[] } | 'none' | 'unknown';

/** Ways that cover every kind with the sticks of a mix; `none` for certain only when `ways` are all there are. */
export function chooseWays(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly Way[],
  mix: readonly number[],
  areAll: boolean,
): Chosen {
  const { kinds } = numbers;
  const usable = ways.filter(({ supply }) => (mix[supply] ?? 0) > 0);
  if (usable.length === 0) return 'unknown';
  const model = solver.createModel();
  try {
    model.options.set({ output_flag: false, presolve: 'off', mip_max_nodes: NODES, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    const nothing = { indices: [], values: [] };
    for (const { ids } of kinds) model.addRow(ids.length, Number.POSITIVE_INFINITY, nothing);
    for (const sticks of mix) model.addRow(0, sticks, nothing);
    usable.forEach(({ supply, counts }, column) => {
      const indices = counts.flatMap((count, kind) => (count > 0 ? [kind] : []));
      const values = indices.map((kind) => counts[kind] ?? 0);
      model.addCol(0, 0, mix[supply] ?? 0, { indices: [...indices, kinds.length + supply], values: [...values, 1] });
      model.changeColIntegrality(column, 1);
    });
    model.run();
    if (model.getModelStatus() === INFEASIBLE) return areAll ? 'none' : 'unknown';
    const used = [...model.getSolution().colValue].map(Math.round);
    if (!covers(usable, used, numbers, mix)) return 'unknown';
    return { ways: usable.flatMap((way, i) => new Array<Way>(used[i] ?? 0).fill(way)) };
  } finally {
    model.dispose();
  }
}

/** The rounded choice, checked in whole numbers. */
function covers(
  ways: readonly Way[],
  used: readonly number[],
  { kinds }: StickNumbers,
  mix: readonly number[],
): boolean {
  if (used.length !== ways.length) return false;
  const given = kinds.map(() => 0);
  const sticks = mix.map(() => 0);
  ways.forEach(({ supply, counts }, i) => {
    const times = used[i] ?? 0;
    sticks[supply] = (sticks[supply] ?? 0) + times;
    counts.forEach((count, kind) => {
      given[kind] = (given[kind] ?? 0) + count * times;
    });
  });
  return (
    kinds.every(({ ids }, kind) => (given[kind] ?? 0) >= ids.length) &&
    mix.every((most, supply) => (sticks[supply] ?? 0) <= most)
  );
}

/** Every way to fill a stick that takes no further piece, for each supply of a mix; undefined when they are too many. */
export function everyWay({ kinds, supplies }: StickNumbers, mix: readonly number[]): readonly Way[] | undefined {
  const ways: Way[] = [];
  for (let supply = 0; supply < supplies.length; supply++) {
    if ((mix[supply] ?? 0) === 0) continue;
    const found = fullest(kinds, supplies[supply]?.capacity ?? 0, MOST_WAYS - ways.length);
    if (!found) return undefined;
    ways.push(...found.map((counts) => ({ supply, counts })));
  }
  return ways;
}

function fullest(kinds: StickNumbers['kinds'], capacity: number, most: number): readonly Counts[] | undefined {
  const found: Counts[] = [];
  const counts = kinds.map(() => 0);
  let steps = 0;
  const place = (kind: number, rest: number): boolean => {
    if (found.length > most || steps++ > most * 50) return false;
    const own = kinds[kind];
    if (!own) {
      const isFull = kinds.every(({ size, ids }, i) => (counts[i] ?? 0) === ids.length || size > rest);
      if (isFull) found.push([...counts]);
      return true;
    }
    for (let count = Math.min(own.ids.length, Math.floor(rest / own.size)); count >= 0; count--) {
      counts[kind] = count;
      if (!place(kind + 1, rest - count * own.size)) return false;
    }
    counts[kind] = 0;
    return true;
  };
  return place(0, capacity) && found.length <= most ? found : undefined;
}
