/** What a bench measures, and how figures are summed up. */

/** One figure of a bench. `goal` is what it should be, in words; `ok` is null where there is no goal. */
export interface Metric {
  readonly bench: string;
  readonly metric: string;
  readonly value: number;
  readonly goal: string | null;
  readonly ok: boolean | null;
}

/** How large a run is: `quick` for CI, `full` at the desk. */
export type Size = 'quick' | 'full';

/** A bench by name. */
export interface Bench {
  readonly name: string;
  run(size: Size): Promise<readonly Metric[]>;
}

/** A figure with a goal from below or above, or none. */
export function metric(
  bench: string,
  name: string,
  value: number,
  goal?: { atLeast: number } | { below: number },
): Metric {
  const rounded = Number(value.toPrecision(5));
  if (!goal) return { bench, metric: name, value: rounded, goal: null, ok: null };
  if ('atLeast' in goal)
    return { bench, metric: name, value: rounded, goal: `>= ${goal.atLeast}`, ok: value >= goal.atLeast };
  return { bench, metric: name, value: rounded, goal: `< ${goal.below}`, ok: value < goal.below };
}

/** The value below which `share` (0 to 1) of the values lie. Throws a RangeError when there are none. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const value = sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
  if (value === undefined) throw new RangeError('no values');
  return value;
}

export function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
