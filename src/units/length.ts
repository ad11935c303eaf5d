/** An exact length: a whole number of ticks, the largest unit in which 1/64 in and 0.1 mm are both whole. */

declare const lengthBrand: unique symbol;

/** Whole ticks; 1 tick = 1/8128 in = 3.125 µm exactly (1 in = 25.4 mm exactly: NIST, U.S. Survey Foot, 2022). */
export type Length = number & { readonly [lengthBrand]: true };

export const TICKS_PER_INCH = 8128;
export const TICKS_PER_FOOT = TICKS_PER_INCH * 12;
export const TICKS_PER_YARD = TICKS_PER_FOOT * 3;
export const TICKS_PER_MM = 320;
export const TICKS_PER_METRE = TICKS_PER_MM * 1000;

/** Ticks as a Length. Throws a RangeError when they are not a safe whole number: every sum must stay exact. */
export function ticks(value: number): Length {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number of ticks: ${value}`);
  return value as Length;
}

/** Inches as a Length, rounded once to a tick. */
export function inches(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_INCH));
}

/** Feet as a Length, rounded once to a tick. */
export function feet(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_FOOT));
}

/** Millimetres as a Length, rounded once to a tick. */
export function millimetres(value: number): Length {
  return ticks(Math.round(value * TICKS_PER_MM));
}

// An exact area in square ticks, held as a bigint: 5,000 m² is 5.12 × 10¹⁴ square ticks and prices multiply
// it further.

/** Square ticks. */
export type Area = bigint;

export const SQUARE_TICKS_PER_SQUARE_FOOT: Area = BigInt(TICKS_PER_FOOT) ** 2n;
export const SQUARE_TICKS_PER_SQUARE_METRE: Area = BigInt(TICKS_PER_METRE) ** 2n;

/** Width × length, exactly. */
export function areaOf(width: Length, length: Length): Area {
  return BigInt(width) * BigInt(length);
}

// Money in whole cents of one currency, and the exact sums a price needs.

declare const centsBrand: unique symbol;

/** Whole cents (hundredths of the asker's currency). */
export type Cents = number & { readonly [centsBrand]: true };

/** Cents from a whole number. Throws a RangeError when it is not a safe whole number. */
export function cents(value: number): Cents {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number of cents: ${value}`);
  return value as Cents;
}

/** `amount` × `numerator` ÷ `denominator`, rounded once, half a cent up. Exact: the product is a bigint. */
export function portion(amount: bigint, numerator: bigint, denominator: bigint): Cents {
  if (denominator <= 0n) throw new RangeError(`cannot divide by ${denominator}`);
  const doubled = 2n * amount * numerator + denominator;
  const half = 2n * denominator;
  const quotient = doubled >= 0n ? doubled / half : -((-doubled + half - 1n) / half);
  return cents(Number(quotient));
}

// Rounding up to whole things (cartons, sticks, tubes), in the one place where it may happen.

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
