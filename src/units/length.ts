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
