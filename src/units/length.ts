/** Exact lengths in ticks, areas in square ticks, money in cents, and rounding up to whole items. */

declare const lengthBrand: unique symbol;

/**
 * Whole ticks. 1 tick = 1/8128 in = 3.125 µm exactly: the largest unit in which both 1/64 in and 0.1 mm are whole (1 in
 * = 25.4 mm exactly: NIST, U.S. Survey Foot, 2022).
 */
export type Length = number & { readonly [lengthBrand]: true };

export const TICKS_PER_INCH = 8128;
export const TICKS_PER_FOOT = TICKS_PER_INCH * 12;
export const TICKS_PER_YARD = TICKS_PER_FOOT * 3;
export const TICKS_PER_MM = 320;
export const TICKS_PER_METRE = TICKS_PER_MM * 1000;

/** Throws a RangeError unless `value` is a safe whole number, since every sum has to stay exact. */
export function ticks(value: number): Length {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number of ticks: ${value}`);
  return value as Length;
}

/** Rounds once to a tick. */
export function inches(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_INCH));
}

/** Rounds once to a tick. */
export function feet(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_FOOT));
}

/** Rounds once to a tick. */
export function millimetres(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_MM));
}

/** Square ticks. A bigint because 5,000 m² is already 5.12 × 10¹⁴ and prices multiply it further. */
export type Area = bigint;

export const SQUARE_TICKS_PER_SQUARE_FOOT: Area = BigInt(TICKS_PER_FOOT) ** 2n;
export const SQUARE_TICKS_PER_SQUARE_METRE: Area = BigInt(TICKS_PER_METRE) ** 2n;

export function areaOf(width: Length, length: Length): Area {
  return BigInt(width) * BigInt(length);
}

declare const centsBrand: unique symbol;

/** Whole cents (hundredths of the user's currency). */
export type Cents = number & { readonly [centsBrand]: true };

/** Throws a RangeError unless `value` is a safe whole number. */
export function cents(value: number): Cents {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number of cents: ${value}`);
  return value as Cents;
}

/** `amount` × `numerator` ÷ `denominator`, rounded once, half a cent up. The product is a bigint, so it is exact. */
export function portion(amount: bigint, numerator: bigint, denominator: bigint): Cents {
  if (denominator <= 0n) throw new RangeError(`cannot divide by ${denominator}`);
  const doubled = 2n * amount * numerator + denominator;
  const half = 2n * denominator;
  const quotient = doubled >= 0n ? doubled / half : -((-doubled + half - 1n) / half);
  return cents(Number(quotient));
}

// Rounding up to whole items (cartons, sticks, tubes) happens only here.

/** Relative error that a few floating-point operations can leave: 1.1*3/0.3 comes out 4e-16 above 11. */
const NOISE = 1e-9;

/**
 * The smallest whole number not below `value`; a value within floating-point noise of a whole number counts as that
 * number. Throws a RangeError for a negative, infinite or NaN value, or one too large to count exactly.
 */
export function roundUp(value: number): number {
  if (!Number.isFinite(value) || value < 0 || value > Number.MAX_SAFE_INTEGER) {
    throw new RangeError(`cannot round up ${value}`);
  }
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= NOISE * Math.max(1, value) ? nearest : Math.ceil(value);
}

/** ⌈amount / size⌉, exact at any size. Throws a RangeError when `size` is not positive or `amount` is negative. */
export function roundUpRatio(amount: bigint, size: bigint): number {
  if (size <= 0n || amount < 0n) throw new RangeError(`cannot round up ${amount} / ${size}`);
  return Number((amount + size - 1n) / size);
}
