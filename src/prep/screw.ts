/** Screws against a squeak: how many, how far apart, how long. */

import { type Length, roundUpRatio, ticks } from '../units/length.ts';
import { fastenersOn } from './fastener.ts';

/** The noisy stretch: `along` the joists, `across` them (0 for one joist), in ticks. */
export interface Noisy {
  readonly along: Length;
  readonly across: Length;
}

/** What a screw goes through, how far into the joist, and the steps it is sold in; ticks. */
export interface Screwed {
  readonly panel: Length;
  readonly bite: Length;
  readonly step: Length;
}

/** `spacing` is that of the screws as they come out, evenly from end to end; `length` the least screw, in the steps it is sold in. */
export interface Screws {
  readonly joists: number;
  readonly perJoist: number;
  readonly screws: number;
  readonly spacing: Length;
  readonly length: Length;
}

/**
 * Screws along every joist that a stretch `across` wide can hold (⌊across/joists⌋ + 1), ⌈along/apart⌉ + 1 on each, and their
 * length: panel + bite, rounded up to `step`. Throws a RangeError when a distance is not above zero.
 */
export function squeakScrews(noisy: Noisy, joists: Length, apart: Length, { panel, bite, step }: Screwed): Screws {
  if (joists <= 0 || apart <= 0 || noisy.along <= 0) throw new RangeError('a distance of nothing');
  const count = Math.floor(noisy.across / joists) + 1;
  const perJoist = fastenersOn(noisy.along, apart);
  const steps = roundUpRatio(BigInt(panel + bite), BigInt(step));
  return {
    joists: count,
    perJoist,
    screws: count * perJoist,
    spacing: ticks(Math.floor(noisy.along / (perJoist - 1))),
    length: ticks(steps * step),
  };
}
