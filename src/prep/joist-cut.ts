/** What may be cut out of a floor joist: notches and holes against the limits of its depth. */

import type { Length } from '../units/length.ts';

/** Limits as divisors of the depth; a hole's distances from an edge and from another hole or notch as lengths. */
export interface JoistLimits {
  readonly notch: number;
  readonly notchLength: number;
  readonly endNotch: number;
  readonly hole: number;
  readonly holeEdge: Length;
  readonly holeApart: Length;
}

/** Cuts in a joist, lengths in ticks; what was not told counts as past its limit. */
export interface JoistCuts {
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

/** Ticks, as exact ratios of the depth would have them: D/6, D/3, D/4 and D/3 (IRC R502.8.1). */
export function joistLimits(depth: Length, limits: JoistLimits) {
  return {
    notch: depth / limits.notch,
    notchLength: depth / limits.notchLength,
    endNotch: depth / limits.endNotch,
    hole: depth / limits.hole,
  };
}

/**
 * Every limit that the cuts of one joist pass, or that cannot be judged for want of a measure (IRC R502.8.1: notch ≤ D/6 deep
 * and D/3 long, none in the middle third, D/4 at an end; hole ≤ D/3, 2 in from the edges and from any other hole or notch). Compared in whole ticks.
 */
export function joistFlaws({ depth, notch, hole }: JoistCuts, limits: JoistLimits): readonly JoistFlaw[] {
  const flaws: JoistFlaw[] = [];
  if (notch && notch.depth > 0) {
    const part = notch.place === 'end' ? limits.endNotch : limits.notch;
    if (notch.depth * part > depth) flaws.push('notch-deep');
    if (notch.place === 'middle') flaws.push('notch-middle');
    if (notch.place === undefined) flaws.push('notch-place-untold');
    // A notch at an end runs out over the bearing: its length is not limited there.
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
    // Told together, they may stand side by side.
    if (hole.apart === undefined && notch && notch.depth > 0) flaws.push('hole-apart-untold');
  }
  return flaws;
}
