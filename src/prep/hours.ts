/** Person-hours as a range, from amounts of work and slow and fast paces. */

/** An amount, and how much of it one person does in an hour: slow and fast, in the same unit. */
export interface Work {
  readonly amount: number;
  readonly slow: number;
  readonly fast: number;
}

/** Σ amount ÷ pace, fast and slow: [least, most] hours for one person. */
export function hoursOf(works: readonly Work[]): readonly [number, number] {
  return works.reduce<readonly [number, number]>(
    ([least, most], { amount, slow, fast }) => [least + amount / fast, most + amount / slow],
    [0, 0],
  );
}

/** Hours to the half, outwards, and never none: [1.26, 3.75] is [1, 4]. */
export function toHalfHours([least, most]: readonly [number, number]): readonly [number, number] {
  return [Math.max(0.5, Math.floor(least * 2) / 2), Math.max(0.5, Math.ceil(most * 2) / 2)];
}
