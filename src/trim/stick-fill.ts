/** The fullest and the most valuable sticks: exact subset sums over kinds of pieces, by lists of states none of which beats another. */

/** How often each kind is cut from one stick. */
export type Counts = readonly number[];

/** A filled stick: its counts and their worth. */
export interface Filled {
  readonly value: number;
  readonly counts: Counts;
}

interface State {
  readonly size: number;
  readonly value: number;
  readonly last: number;
  readonly before: State | undefined;
}

/** More states than this and the answer is no longer exact: the caller is told by undefined. */
const MOST_STATES = 200_000;

/**
 * The worth of the most valuable stick for each capacity: max Σ valueᵢ·aᵢ with Σ sizeᵢ·aᵢ ≤ capacity and aᵢ ≤ mostᵢ; whole
 * numbers in and out, exact. Undefined when the task is too large to do so. Values must not be negative.
 */
export function mostValuableByValue(
  sizes: readonly number[],
  values: readonly number[],
  most: readonly number[],
  capacities: readonly number[],
): readonly Filled[] | undefined {
  const largest = Math.max(0, ...capacities);
  let states: State[] = [{ size: 0, value: 0, last: -1, before: undefined }];
  for (let kind = 0; kind < sizes.length; kind++) {
    const [size, value] = [sizes[kind] ?? 0, values[kind] ?? 0];
    if (value <= 0 || size > largest) continue;
    for (let copy = 0; copy < (most[kind] ?? 0); copy++) {
      const before = states.length;
      states = withOneMore(states, kind, size, value, largest, copy);
      if (states.length > MOST_STATES) return undefined;
      if (states.length === before && states.every(({ last }) => last !== kind)) break;
    }
  }
  return capacities.map((capacity) => {
    let best = states[0];
    for (const state of states) {
      if (state.size > capacity) break;
      best = state;
    }
    return { value: best?.value ?? 0, counts: countsOf(best, sizes.length) };
  });
}

/** States with one more of a kind (from those that hold `copy` of it), those that are larger and worth no more left out. */
function withOneMore(
  states: readonly State[],
  kind: number,
  size: number,
  value: number,
  largest: number,
  copy: number,
): State[] {
  const more: State[] = [];
  for (const state of states) {
    if (state.size + size > largest) break;
    if (copy === 0 || (state.last === kind && copiesOf(state, kind) === copy)) {
      more.push({ size: state.size + size, value: state.value + value, last: kind, before: state });
    }
  }
  const merged: State[] = [];
  let worth = -1;
  let [i, j] = [0, 0];
  for (;;) {
    const [a, b] = [states[i], more[j]];
    const next = !b || (a && (a.size < b.size || (a.size === b.size && a.value >= b.value))) ? a : b;
    if (!next) return merged;
    if (next === a) i++;
    else j++;
    if (next.value > worth) {
      merged.push(next);
      worth = next.value;
    }
  }
}

function copiesOf(state: State, kind: number): number {
  let copies = 0;
  for (let at: State | undefined = state; at && at.last === kind; at = at.before) copies++;
  return copies;
}

function countsOf(state: State | undefined, kinds: number): Counts {
  const counts = new Array<number>(kinds).fill(0);
  for (let at = state; at && at.last >= 0; at = at.before) counts[at.last] = (counts[at.last] ?? 0) + 1;
  return counts;
}
