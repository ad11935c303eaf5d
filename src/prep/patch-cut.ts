/** The hole that is cut for a patch: two sides on joist centrelines, the damage and sound wood round it inside. */

import { type Length, ticks } from '../units/length.ts';

/** Joists run along v; u is measured across them from the wall, v along them. `first` is the centreline nearest to the wall. */
export interface Joists {
  readonly spacing: Length;
  readonly first: Length;
  readonly width: Length;
}

/** An upright rectangle from (u0, v0) to (u1, v1) in ticks. */
export interface Rect {
  readonly u0: number;
  readonly v0: number;
  readonly u1: number;
  readonly v1: number;
}

export interface CutRules {
  /** Sound wood round the damage. */
  readonly margin: Length;
  /** Bays spanned at least. */
  readonly bays: number;
  /** Least width along the joists. */
  readonly least: Length;
  /** Where the walls opposite stand, if told. */
  readonly across?: Length;
  readonly along?: Length;
}

/** `joists` are centrelines from the first to the last the hole reaches, ascending. */
export interface PatchCut extends Rect {
  readonly joists: readonly number[];
  readonly bays: number;
}

/** Why no hole can be cut that lands on joists: nothing to land on towards a wall, or too few joists between the walls. */
export type NoCut = 'no-joist-before' | 'no-joist-after' | 'too-few-bays';

/**
 * The least hole that covers the damage with the margin (as far as the walls leave room), lands on joist centrelines at both
 * sides, spans `bays` bays and is `least` wide along the joists where there is room. All in ticks. The bay added is the
 * nearer one to the damage's middle. Throws a RangeError for damage that is empty or lies beyond the walls.
 */
export function patchCut(damage: Rect, joists: Joists, rules: CutRules): PatchCut | NoCut {
  const { across = ticks(Number.MAX_SAFE_INTEGER), along = ticks(Number.MAX_SAFE_INTEGER) } = rules;
  if (damage.u0 >= damage.u1 || damage.v0 >= damage.v1) throw new RangeError('damage without a size');
  if (damage.u0 < 0 || damage.v0 < 0 || damage.u1 > across || damage.v1 > along) throw new RangeError('damage beyond');
  const lowest = joists.first;
  const at = (index: number): number => lowest + index * joists.spacing;
  const highest = Math.floor((across - lowest) / joists.spacing);
  if (damage.u0 < lowest) return 'no-joist-before';
  if (damage.u1 > at(highest)) return 'no-joist-after';
  // The margin gives way where the wall leaves no joist for it.
  let low = Math.max(0, Math.floor((damage.u0 - rules.margin - lowest) / joists.spacing));
  let high = Math.min(highest, Math.ceil((damage.u1 + rules.margin - lowest) / joists.spacing));
  if (low === high) high = Math.min(highest, high + 1);
  const middle = damage.u0 + damage.u1;
  while (high - low < rules.bays) {
    const [down, up] = [low > 0, high < highest];
    if (!down && !up) return 'too-few-bays';
    const nearerDown = middle - (at(low) + at(low - 1)) <= at(high) + at(high + 1) - middle;
    if (down && (nearerDown || !up)) low -= 1;
    else high += 1;
  }
  const [v0, v1] = alongJoists(damage, rules, along);
  const lines = Array.from({ length: high - low + 1 }, (_, i) => at(low + i));
  return { u0: at(low), u1: at(high), v0, v1, joists: lines, bays: high - low };
}

/** The hole's ends along the joists: the damage, its margin, and the least width, grown evenly and kept between the walls. */
function alongJoists(damage: Rect, { margin, least }: CutRules, along: number): readonly [number, number] {
  let v0 = Math.max(0, damage.v0 - margin);
  let v1 = Math.min(along, damage.v1 + margin);
  const short = least - (v1 - v0);
  if (short <= 0) return [v0, v1];
  v0 = Math.max(0, v0 - Math.floor(short / 2));
  v1 = Math.min(along, v0 + least);
  return [Math.max(0, Math.min(v0, v1 - least)), v1];
}
