/** Whole sticks by diving: the most used way of the relaxed program is taken, the rest priced again, until nothing is left. */

import type { Highs } from 'highs';
import type { StickNumbers } from '../trim/sticks.ts';
import { StickModel, type Way } from './stick-model.ts';
import { generateWays } from './stick-pricing.ts';

/** What is still to give, and from how many sticks. */
interface Rest {
  readonly pieces: readonly number[];
  readonly sticks: readonly number[];
}

/** Ways that give every piece from just these sticks; undefined when this dive runs aground. `turn` takes another way first. */
export function dive(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly Way[],
  mix: readonly number[],
  turn: number,
): readonly Way[] | undefined {
  let rest: Rest = { pieces: numbers.kinds.map(({ ids }) => ids.length), sticks: mix };
  const taken: Way[] = [];
  for (let depth = 0; rest.pieces.some((count) => count > 0); depth++) {
    const next = mostUsed(solver, numbers, ways, rest, depth === 0 ? turn : 0);
    if (!next) return undefined;
    for (const way of next) {
      const counts = way.counts.map((count, kind) => Math.min(count, rest.pieces[kind] ?? 0));
      if ((rest.sticks[way.supply] ?? 0) < 1) return undefined;
      taken.push({ supply: way.supply, counts });
      rest = {
        pieces: rest.pieces.map((count, kind) => count - (counts[kind] ?? 0)),
        sticks: rest.sticks.map((count, supply) => (supply === way.supply ? count - 1 : count)),
      };
    }
  }
  return taken;
}

/** Every way used at least once in the relaxed program, else the most used one; undefined when pieces must stay over. */
function mostUsed(
  solver: Highs,
  numbers: StickNumbers,
  ways: readonly Way[],
  rest: Rest,
  turn: number,
): readonly Way[] | undefined {
  const kept = rest.pieces.flatMap((count, kind) => (count > 0 ? [kind] : []));
  const residual: StickNumbers = {
    kinds: kept.map((kind) => ({
      size: numbers.kinds[kind]?.size ?? 0,
      ids: (numbers.kinds[kind]?.ids ?? []).slice(0, rest.pieces[kind] ?? 0),
    })),
    supplies: numbers.supplies.map((supply, i) => ({
      ...supply,
      capacity: (rest.sticks[i] ?? 0) > 0 ? supply.capacity : 0,
    })),
  };
  const model = new StickModel(solver, residual, 'mix');
  try {
    for (const { supply, counts } of ways) {
      if ((rest.sticks[supply] ?? 0) === 0) continue;
      const cut = kept.map((kind) => Math.min(counts[kind] ?? 0, rest.pieces[kind] ?? 0));
      if (cut.some((count) => count > 0)) model.add({ supply, counts: cut });
    }
    model.limit(rest.sticks);
    const solved = generateWays(
      model,
      residual,
      residual.supplies.map(() => 0),
    );
    if (!solved || solved.objective > 1e-6) return undefined;
    const whole = (way: Way): Way => {
      const counts = numbers.kinds.map(() => 0);
      kept.forEach((kind, i) => {
        counts[kind] = way.counts[i] ?? 0;
      });
      return { supply: way.supply, counts };
    };
    const sure = solved.used.flatMap((used, i) =>
      used > 1 - 1e-6 ? new Array<number>(Math.floor(used + 1e-6)).fill(i) : [],
    );
    const byUse = solved.used.map((used, i) => ({ used, i })).sort((a, b) => b.used - a.used || a.i - b.i);
    const chosen = sure.length > 0 && turn === 0 ? sure : [byUse[Math.min(turn, byUse.length - 1)]?.i ?? -1];
    return chosen.flatMap((i) => {
      const way = model.ways[i];
      return way ? [whole(way)] : [];
    });
  } finally {
    model.dispose();
  }
}
