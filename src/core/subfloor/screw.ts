/** Screws against a squeak: how many, how far apart, how long. */

import { type Length, TICKS_PER_INCH, ticks } from '../length.ts';
import { roundUpRatio } from '../round-up.ts';
import { fastenersOn } from './fastener.ts';

/** The noisy stretch: `along` the joists, `across` them (0 for one joist), in ticks. */
export interface Noisy {
  readonly along: Length;
  readonly across: Length;
}

/** `spacing` is that of the screws as they come out, evenly from end to end; `length` the least screw, by quarter inches. */
export interface Screws {
  readonly joists: number;
  readonly perJoist: number;
  readonly screws: number;
  readonly spacing: Length;
  readonly length: Length;
}

const QUARTER_INCH = TICKS_PER_INCH / 4;

/**
 * Screws along every joist that a stretch `across` wide can hold (⌊across/joists⌋ + 1), ⌈along/apart⌉ + 1 on each, and their
 * length: panel + bite, rounded up to a quarter inch. Throws a RangeError when a distance is not above zero.
 */
export function squeakScrews(noisy: Noisy, joists: Length, apart: Length, panel: Length, bite: Length): Screws {
  if (joists <= 0 || apart <= 0 || noisy.along <= 0) throw new RangeError('a distance of nothing');
  const count = Math.floor(noisy.across / joists) + 1;
  const perJoist = fastenersOn(noisy.along, apart);
  const quarters = roundUpRatio(BigInt(panel + bite), BigInt(QUARTER_INCH));
  return {
    joists: count,
    perJoist,
    screws: count * perJoist,
    spacing: ticks(Math.floor(noisy.along / (perJoist - 1))),
    length: ticks(quarters * QUARTER_INCH),
  };
}
