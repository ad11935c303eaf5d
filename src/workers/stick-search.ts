/** The cheapest way to cut sticks, with a proof: a first answer at once, then better ones and higher bounds. */

import type { Highs } from 'highs';
import {
  bestFit,
  cheapestFor,
  type Filling,
  lengthBound,
  numbersOf,
  type StickNumbers,
  type StickPlan,
  type StickTask,
  stickPlan,
} from '../trim/sticks.ts';
import {
  type Chosen,
  chooseWays,
  dive,
  everyWay,
  generateWays,
  type MixCut,
  mixCut,
  StickModel,
  type StickWay,
  violates,
} from './stick-programs.ts';

/** Sticks of each supply, and their cost; sticks on hand are always included. */
interface Mix {
  readonly sticks: readonly number[];
  readonly cents: number;
}

/** With more mixes than this the proof is abandoned. */
const MOST_MIXES = 400_000;

/**
 * Every mix that costs less than `below` and is long enough for all pieces, cheapest first; undefined when there are
 * too many.
 */
function mixesBelow(numbers: StickNumbers, below: number): readonly Mix[] | undefined {
  const { kinds, supplies } = numbers;
  const need = kinds.reduce((sum, { size, ids }) => sum + size * ids.length, 0);
  const bought = supplies
    .map((_, supply) => supply)
    .filter((supply) => supplies[supply]?.limit === undefined && !isBeaten(numbers, supply));
  const sticks = supplies.map(({ limit }) => limit ?? 0);
  const atHand = supplies.reduce((sum, { capacity, limit }) => sum + capacity * (limit ?? 0), 0);
  const mixes: Mix[] = [];
  let tooMany = false;
  const choose = (index: number, cents: number, length: number): void => {
    const supply = bought[index];
    if (supply === undefined) {
      if (length >= need) mixes.push({ sticks: [...sticks], cents });
      if (mixes.length > MOST_MIXES) tooMany = true;
      return;
    }
    const { cents: price = 0, capacity = 0 } = supplies[supply] ?? {};
    // More sticks than pieces are never useful.
    const most = kinds.reduce((sum, { ids }) => sum + ids.length, 0);
    for (let count = 0; count <= most && cents + count * price < below && !tooMany; count++) {
      sticks[supply] = count;
      choose(index + 1, cents + count * price, length + count * capacity);
    }
    sticks[supply] = 0;
  };
  choose(0, 0, atHand);
  return tooMany ? undefined : mixes.sort((a, b) => a.cents - b.cents || total(a) - total(b));
}

/** True when another stock to buy is at least as long and costs no more. */
function isBeaten({ supplies }: StickNumbers, supply: number): boolean {
  const own = supplies[supply];
  return supplies.some(
    (other, i) =>
      own !== undefined &&
      i !== supply &&
      other.limit === undefined &&
      other.capacity >= own.capacity &&
      other.cents <= own.cents &&
      (other.capacity > own.capacity || other.cents < own.cents || i < supply),
  );
}

function total({ sticks }: Mix): number {
  return sticks.reduce((sum, count) => sum + count, 0);
}

/** Mixes tried by linear programs before the proof is abandoned. */
const MOST_TRIED = 60;
/** Dives per mix, each starting with a different way. */
const DIVES = 12;

/** Plans of rising quality; the last is final. Throws a RangeError when a piece fits no stock. */
export function* searchSticks(task: StickTask, solver: Highs): Generator<StickPlan> {
  const numbers = numbersOf(task);
  let fillings = bestFit(numbers);
  let bound = lengthBound(numbers);
  const now = (): StickPlan => stickPlan(task, numbers, fillings, bound);
  yield now();
  if (now().proven || numbers.kinds.length === 0) return;
  const cost = new StickModel(solver, numbers, 'cost');
  const mix = new StickModel(solver, numbers, 'mix');
  try {
    for (const way of [...single(numbers), ...fillings]) cost.add(way);
    const relaxed = generateWays(
      cost,
      numbers,
      numbers.supplies.map(({ cents }) => cents),
    );
    if (!relaxed) return;
    for (const way of cost.ways) mix.add(way);
    const first = mixCut(relaxed, numbers);
    const cuts = first ? [first] : [];
    for (const step of proof(solver, numbers, mix, cuts, () => now().cents)) {
      if ('ways' in step) fillings = trimmed(numbers, step.ways);
      bound = Math.max(bound, step.bound);
      yield now();
    }
  } finally {
    cost.dispose();
    mix.dispose();
  }
}

type Step = { readonly bound: number } | { readonly bound: number; readonly ways: readonly StickWay[] };

/**
 * Goes through the mixes in order of cost; the first that can be cut is the cheapest. Each one is excluded by a cut,
 * succeeds, or leaves the proof open.
 */
function* proof(
  solver: Highs,
  numbers: StickNumbers,
  model: StickModel,
  cuts: MixCut[],
  best: () => number,
): Generator<Step> {
  const mixes = mixesBelow(numbers, best());
  if (!mixes) return;
  const impossible: (readonly number[])[] = [];
  let tried = 0;
  let open = false;
  for (const { sticks, cents } of mixes) {
    if (cents >= best()) break;
    if (cuts.some((cut) => violates(sticks, cut)) || impossible.some((less) => isWithin(sticks, less))) continue;
    if (tried++ > MOST_TRIED) return;
    model.limit(sticks);
    const solved = generateWays(
      model,
      numbers,
      numbers.supplies.map(() => 0),
    );
    if (!solved) return;
    if (solved.objective > 1e-6) {
      const cut = mixCut(solved, numbers);
      if (cut && violates(sticks, cut)) {
        cuts.push(cut);
        continue;
      }
    }
    if (!open) yield { bound: cents };
    const found = cutMix(solver, numbers, model.ways, sticks);
    if (typeof found === 'object') {
      yield { bound: open ? 0 : cents, ways: found.ways };
      return;
    }
    if (found === 'none') impossible.push(sticks);
    else open = true;
  }
  if (!open) yield { bound: best() };
}

/**
 * Ways that cut all pieces from exactly these sticks: by diving, then by integer programs over known and over all ways.
 */
function cutMix(solver: Highs, numbers: StickNumbers, ways: readonly StickWay[], sticks: readonly number[]): Chosen {
  for (let turn = 0; turn < DIVES; turn++) {
    const found = dive(solver, numbers, ways, sticks, turn);
    if (found) return { ways: found };
  }
  const every = everyWay(numbers, sticks);
  return chooseWays(solver, numbers, every ?? ways, sticks, every !== undefined);
}

function isWithin(sticks: readonly number[], most: readonly number[]): boolean {
  return sticks.every((count, supply) => count <= (most[supply] ?? 0));
}

/** Each kind alone on the cheapest stock to buy that holds it, as often as it fits. */
function single({ kinds, supplies }: StickNumbers): readonly StickWay[] {
  return kinds.flatMap(({ size, ids }, kind) => {
    if (!supplies.some(({ limit, capacity }) => limit === undefined && capacity >= size)) return [];
    const supply = cheapestFor(supplies, size);
    const times = Math.min(ids.length, Math.floor((supplies[supply]?.capacity ?? 0) / size));
    return [{ supply, counts: kinds.map((_, i) => (i === kind ? times : 0)) }];
  });
}

/** Ways without duplicate pieces, each bought stick as cheap as its pieces allow, empty sticks dropped. */
function trimmed({ kinds, supplies }: StickNumbers, ways: readonly StickWay[]): readonly Filling[] {
  const left = kinds.map(({ ids }) => ids.length);
  return ways.flatMap(({ supply, counts }) => {
    const given = counts.map((count, kind) => {
      const take = Math.min(count, left[kind] ?? 0);
      left[kind] = (left[kind] ?? 0) - take;
      return take;
    });
    const filled = given.reduce((sum, count, kind) => sum + count * (kinds[kind]?.size ?? 0), 0);
    if (filled === 0) return [];
    return [{ supply: supplies[supply]?.limit === undefined ? cheapestFor(supplies, filled) : supply, counts: given }];
  });
}
