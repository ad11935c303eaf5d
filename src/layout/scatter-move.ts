/** The moves of a search for scattered joints: each can be taken back. */

import { endOf } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';
import { MENDING, type ScatterState } from './scatter-state.ts';
import { GRID } from './start-place.ts';

type Random = () => number;

/** How often each kind of move is tried: turned short pieces, swapped rows, shifted chains, a run made to fit another. */
const SHARES = { turn: 0.06, swap: 0.25, chain: 0.05, fit: 0.39 } as const;
/** While rules are mended, planks stay few where rows of one length change places or whole chains move. */
const MENDING_SHARES = { turn: 0.02, swap: 0.6, chain: 0.15, fit: 0.15 } as const;
const CHOOSY = 2;
/** A chain is shifted by up to this many places of the grid. */
const FARTHEST = 12;
/** An offcut this much longer than the start piece cut from it still makes a chain. */
const SLACK = GRID / 4;

/** Makes one move; what is handed back takes it back. */
export function change(state: ScatterState, random: Random): () => void {
  const { floor } = state;
  const shares = state.weights === MENDING ? MENDING_SHARES : SHARES;
  const pick = (list: readonly number[]): number => list[Math.floor(random() * list.length)] ?? 0;
  let run = pick(floor.jointed);
  // While rules are mended, runs that break one are moved more than those that do not.
  for (let k = 0; k < CHOOSY && state.weights === MENDING && state.faultsOf(run) < MENDING.pattern; k++)
    run = pick(floor.jointed);
  const was = state.starts[run] as number;
  let kind = random();
  if (kind < shares.turn && floor.short.length > 0) {
    const short = pick(floor.short);
    state.turn(short);
    return () => state.turn(short);
  }
  kind -= shares.turn;
  if (kind < shares.swap) {
    const other = pick(floor.alike[run] ?? []);
    const its = state.starts[other] as number;
    if (its !== was) {
      state.swap(run, other);
      return () => state.swap(run, other);
    }
  }
  kind -= shares.swap;
  if (kind < shares.chain) {
    const by = (1 + Math.floor(random() * FARTHEST)) * (random() < 0.5 ? GRID : -GRID) * (random() < 0.5 ? 1 : 0.25);
    return shift(state, run, by, random);
  }
  kind -= shares.chain;
  return moveAll(state, [run], [kind < shares.fit ? fitted(state, run, random) : pick(floor.places[run] ?? [was])]);
}

function moveAll(state: ScatterState, runs: readonly number[], to: readonly number[]): () => void {
  const were = runs.map((run) => state.starts[run] as number);
  runs.forEach((run, i) => {
    state.move(run, to[i] as number);
  });
  return () => {
    for (let i = runs.length - 1; i >= 0; i--) state.move(runs[i] as number, were[i] as number);
  };
}

/** The offcut a run leaves of its last plank. */
function offcut({ runs, plank, kerf }: ScatterFloor, run: number, start: number): number {
  return plank - kerf - endOf(runs[run]?.length ?? 0, start, plank);
}

/** Moves runs that are cut from one another's offcuts by as much, so that each still fits the next. */
function shift(state: ScatterState, run: number, by: number, random: Random): () => void {
  const { floor, starts } = state;
  const { jointed, runs, plank, minEnd } = floor;
  const can = (i: number): boolean => endsKept(runs[i]?.length ?? 0, (starts[i] as number) + by, plank, minEnd);
  if (!can(run)) return () => {};
  const chain = [run];
  const skip = Math.floor(random() * jointed.length);
  const next = (fits: (i: number) => number): number | undefined => {
    for (let k = 0; k < jointed.length; k++) {
      const i = jointed[(k + skip) % jointed.length] as number;
      const slack = fits(i);
      if (slack >= 0 && slack <= SLACK && !chain.includes(i)) return i;
    }
    return undefined;
  };
  for (let last = run; ; ) {
    const left = offcut(floor, last, starts[last] as number);
    const after = next((i) => left - (starts[i] as number));
    if (after === undefined || !can(after)) break;
    chain.push(after);
    last = after;
  }
  for (let first = run; ; ) {
    const need = starts[first] as number;
    const before = next((i) => offcut(floor, i, starts[i] as number) - need);
    if (before === undefined || !can(before)) break;
    chain.push(before);
    first = before;
  }
  return moveAll(
    state,
    chain,
    chain.map((i) => (starts[i] as number) + by),
  );
}

/** A start piece that makes a run just fit another: from its offcut, or leaving an offcut for it. */
function fitted(state: ScatterState, run: number, random: Random): number {
  const { floor, starts } = state;
  const { runs, plank, kerf, minEnd, short, jointed } = floor;
  const beside = floor.near[run];
  if (beside !== undefined && random() < 0.5) return starts[beside] as number;
  const pool = random() * runs.length < short.length ? short : jointed;
  const other = pool[Math.floor(random() * pool.length)] ?? run;
  const length = runs[run]?.length ?? 0;
  const its = runs[other]?.length ?? 0;
  const isShort = its <= plank;
  const start =
    random() < 0.5
      ? isShort
        ? plank - kerf - its
        : offcut(floor, other, starts[other] as number)
      : endOf(length, plank - kerf - (isShort ? its : (starts[other] as number)), plank);
  return endsKept(length, start, plank, minEnd) ? start : (starts[run] as number);
}
