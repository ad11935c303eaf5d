/** The elements of a walk at any angle, the legs they come to, and walks mended from them. */

import { TICKS_PER_INCH, ticks } from '../core/length.ts';
import { type Saying, sayLength } from './say-length.ts';
import { closeLegs, type Leg, remeasured } from './walk-bearing.ts';
import type { Turn } from './walk-path.ts';

/** A wall; a turn by so many degrees; or a wall that goes `ahead` and `aside`, after which one faces the side. */
export type Element =
  | { readonly kind: 'wall'; readonly typed: string; readonly length: number }
  | { readonly kind: 'turn'; readonly typed: string; readonly turn: Turn; readonly degrees: number }
  | {
      readonly kind: 'diagonal';
      readonly typed: string;
      readonly turn: Turn;
      readonly ahead: number;
      readonly aside: number;
    };

const MOST_PAIRS = 6;
const MOST_MENDS = 3;
const MOST_TURNS = 40;

/** The legs of a walk, and the bearing after its last turn where it ends with one. */
export function legsOf(elements: readonly Element[]): { legs: readonly Leg[]; after: number | undefined } {
  const legs: Leg[] = [];
  let bearing = 0;
  for (const element of elements) {
    if (element.kind === 'wall') legs.push({ length: element.length, bearing, told: true });
    else if (element.kind === 'turn') bearing += signOf(element.turn) * element.degrees;
    else {
      const { ahead, aside, turn } = element;
      const swing = (Math.atan2(aside, ahead) * 180) / Math.PI;
      legs.push({ length: Math.hypot(ahead, aside), bearing: bearing + signOf(turn) * swing, told: false });
      bearing += signOf(turn) * 90;
    }
  }
  return { legs, after: elements.at(-1)?.kind === 'wall' ? undefined : bearing };
}

/** Texts of walks that close, made from one that does not: two walls measured anew, or a turn the other way. */
export function mendedTexts(elements: readonly Element[], saying: Saying): readonly string[] {
  const { legs, after } = legsOf(elements);
  const order = legs
    .map((_, i) => i)
    .filter((i) => legs[i]?.told)
    .sort((i, j) => (legs[j]?.length ?? 0) - (legs[i]?.length ?? 0))
    .slice(0, MOST_PAIRS);
  const measured = order
    .flatMap((one, k) => order.slice(k + 1).map((other) => remeasured(legs, one, other)))
    .flatMap((changed) =>
      changed?.every(({ length }) => length >= TICKS_PER_INCH) && closeLegs(changed, after).kind === 'outline'
        ? [changed]
        : [],
    )
    .sort((a, b) => changeOf(legs, a) - changeOf(legs, b))
    .slice(0, MOST_MENDS)
    .map((changed) => written(elements, changed, saying));
  const turns = elements.filter(({ kind }) => kind !== 'wall').length;
  const flipped =
    turns > MOST_TURNS
      ? []
      : elements.flatMap((element, i) => {
          if (element.kind === 'wall') return [];
          const other = { ...element, turn: element.turn === 'right' ? 'left' : 'right' } as const;
          const walk = elements.map((kept, k) => (k === i ? other : kept));
          const way = legsOf(walk);
          return closeLegs(way.legs, way.after).kind === 'outline' ? [written(walk, way.legs, saying)] : [];
        });
  return [...flipped.slice(0, MOST_MENDS), ...measured];
}

function changeOf(before: readonly Leg[], after: readonly Leg[]): number {
  return before.reduce((sum, leg, i) => sum + Math.abs(leg.length - (after[i]?.length ?? 0)), 0);
}

function written(elements: readonly Element[], legs: readonly Leg[], saying: Saying): string {
  let leg = 0;
  const parts = elements.map((element) => {
    if (element.kind === 'turn') return element.degrees === 90 ? element.turn : `${element.turn} ${element.degrees}°`;
    const length = Math.round(legs[leg++]?.length ?? 0);
    if (element.kind === 'diagonal')
      return `${element.turn} diagonal ${sayLength(ticks(element.ahead), saying)} x ${sayLength(ticks(element.aside), saying)}`;
    return sayLength(ticks(length), saying);
  });
  return `walk ${parts.join(' ')}`;
}

function signOf(turn: Turn): 1 | -1 {
  return turn === 'right' ? 1 : -1;
}
