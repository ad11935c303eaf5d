/** Floor joists: what may be cut out of one, and screws against a squeak. */

import { type Length, roundUpRatio, ticks } from '../units/length.ts';
import { fastenersOn } from './subfloor-patch.ts';

/** Limits as divisors of the depth; a hole's distances from an edge and from another hole or notch as lengths. */
interface JoistLimits {
  readonly notch: number;
  readonly notchLength: number;
  readonly endNotch: number;
  readonly hole: number;
  readonly holeEdge: Length;
  readonly holeApart: Length;
}

/** Cuts in a joist, lengths in ticks; a missing measurement counts as past its limit. */
interface JoistCuts {
  readonly depth: Length;
  readonly notch?: { readonly depth: Length; readonly length?: Length; readonly place?: 'end' | 'outer' | 'middle' };
  readonly hole?: { readonly diameter: Length; readonly edge?: Length; readonly apart?: Length };
}

export type JoistFlaw =
  | 'notch-deep'
  | 'notch-long'
  | 'notch-middle'
  | 'notch-length-untold'
  | 'notch-place-untold'
  | 'hole-large'
  | 'hole-near-edge'
  | 'hole-edge-untold'
  | 'hole-near-cut'
  | 'hole-apart-untold';

/** Ticks, at exact ratios of the depth: D/6, D/3, D/4 and D/3 (IRC R502.8.1). */
export function joistLimits(depth: Length, limits: JoistLimits) {
  return {
    notch: depth / limits.notch,
    notchLength: depth / limits.notchLength,
    endNotch: depth / limits.endNotch,
    hole: depth / limits.hole,
  };
}

/**
 * Every limit that the cuts of one joist exceed, or that can't be judged because a measurement is missing (IRC
 * R502.8.1: notch ≤ D/6 deep and D/3 long, none in the middle third, D/4 at an end; hole ≤ D/3, 2 in from the edges and
 * from any other hole or notch). Compared in whole ticks.
 */
export function joistFlaws({ depth, notch, hole }: JoistCuts, limits: JoistLimits): readonly JoistFlaw[] {
  const flaws: JoistFlaw[] = [];
  if (notch && notch.depth > 0) {
    const part = notch.place === 'end' ? limits.endNotch : limits.notch;
    if (notch.depth * part > depth) flaws.push('notch-deep');
    if (notch.place === 'middle') flaws.push('notch-middle');
    if (notch.place === undefined) flaws.push('notch-place-untold');
    // A notch at an end runs out over the bearing, so its length isn't limited.
    if (notch.place !== 'end') {
      if (notch.length === undefined) flaws.push('notch-length-untold');
      else if (notch.length * limits.notchLength > depth) flaws.push('notch-long');
    }
  }
  if (hole && hole.diameter > 0) {
    if (hole.diameter * limits.hole > depth) flaws.push('hole-large');
    if (hole.edge === undefined) flaws.push('hole-edge-untold');
    else if (hole.edge < limits.holeEdge) flaws.push('hole-near-edge');
    if (hole.apart !== undefined && hole.apart < limits.holeApart) flaws.push('hole-near-cut');
    // A notch and a hole given together may be side by side.
    if (hole.apart === undefined && notch && notch.depth > 0) flaws.push('hole-apart-untold');
  }
  return flaws;
}

/** The noisy stretch in ticks: `along` the joists, and `across` them (0 for a single joist). */
interface Noisy {
  readonly along: Length;
  readonly across: Length;
}

/** What a screw goes through, how far it goes into the joist, and the steps it is sold in; ticks. */
interface Screwed {
  readonly panel: Length;
  readonly bite: Length;
  readonly step: Length;
}

/** `spacing` is the actual, even spacing; `length` is the shortest screw, in the steps it is sold in. */
interface Screws {
  readonly joists: number;
  readonly perJoist: number;
  readonly screws: number;
  readonly spacing: Length;
  readonly length: Length;
}

/**
 * Screws on every joist that a stretch `across` wide can contain (⌊across/joists⌋ + 1), ⌈along/apart⌉ + 1 on each;
 * length = panel + bite, rounded up to `step`. Throws a RangeError unless the distances are positive.
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
