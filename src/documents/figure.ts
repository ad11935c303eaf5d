/** Exact amounts as figures of the asker's units, for lists that are reckoned with. */

import type { NeedUnit } from '../reply/need.ts';

/** A unit's sign, and how many of it an exact amount is: ticks, square ticks, litres or kilograms. */
interface Unit {
  readonly unit: string;
  readonly of: (exact: number) => number;
}

export type Measured = Readonly<Record<NeedUnit, Unit>>;

/** An inch is 8128 ticks, a millimetre 320. */
const INCH = 8128;
const MILLIMETRE = 320;
/** Exact by definition: the U.S. liquid quart and the avoirdupois pound (NIST Handbook 44, appendix C). */
const QUART = 0.946352946;
const POUND = 0.45359237;

/** Parts of a bag or a tube are kept to a thousandth. */
const COUNT = unit('', 1, 3);

const IMPERIAL: Measured = {
  count: COUNT,
  length: unit('in', INCH, 4),
  area: unit('sq ft', (12 * INCH) ** 2, 2),
  volume: unit('qt', QUART, 3),
  weight: unit('lb', POUND, 2),
};

const METRIC: Measured = {
  count: COUNT,
  length: unit('mm', MILLIMETRE, 1),
  area: unit('m²', (1000 * MILLIMETRE) ** 2, 3),
  volume: unit('L', 1, 3),
  weight: unit('kg', 1, 2),
};

export function inUnits(units: 'imperial' | 'metric'): Measured {
  return units === 'metric' ? METRIC : IMPERIAL;
}

/** Rounded to so many places: 1/16 in is 0.0625, so that no mark of a tape is lost. */
function unit(sign: string, each: number, places: number): Unit {
  return { unit: sign, of: (exact) => Math.round((exact / each) * 10 ** places) / 10 ** places };
}
