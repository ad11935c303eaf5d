/** Rounding up to whole things (cartons, sticks, tubes), in the one place where it may happen. */

/** The noise that a few floating operations leave, relative to the value: 1.1*3/0.3 is 11 and 4e-16 parts more. */
const NOISE = 1e-9;

/**
 * The least whole number not below `value`, where a value within floating noise of a whole number is that number.
 * Throws a RangeError for what is negative, not finite or too large to count exactly.
 */
export function roundUp(value: number): number {
  if (!Number.isFinite(value) || value < 0 || value > Number.MAX_SAFE_INTEGER) {
    throw new RangeError(`cannot round up ${value}`);
  }
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= NOISE * Math.max(1, value) ? nearest : Math.ceil(value);
}

/** ⌈amount / size⌉ of whole numbers, exact at any size. Throws a RangeError when `size` is not positive or `amount` is negative. */
export function roundUpRatio(amount: bigint, size: bigint): number {
  if (size <= 0n || amount < 0n) throw new RangeError(`cannot round up ${amount} / ${size}`);
  return Number((amount + size - 1n) / size);
}
