/** The elements of a walk at any angle, the legs they come to, and walks mended from them. */

import { closeLegs, type Leg } from './walk-bearing.ts';
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

/** Texts of walks that close, made from one that does not: one turn the other way, its walls as they were typed. */
export function mendedTexts(elements: readonly Element[]): readonly string[] {
  if (elements.filter(({ kind }) => kind !== 'wall').length > MOST_TURNS) return [];
  return elements.flatMap((element, i) => {
    if (element.kind === 'wall') return [];
    const other = { ...element, turn: element.turn === 'right' ? 'left' : 'right' } as const;
    const walk = elements.map((kept, k) => (k === i ? other : kept));
    const { legs, after } = legsOf(walk);
    return closeLegs(legs, after).kind === 'outline' ? [written(walk)] : [];
  });
}

function written(elements: readonly Element[]): string {
  const parts = elements.map((element) => {
    if (element.kind === 'wall') return element.typed;
    const { turn } = element;
    if (element.kind === 'turn') return element.degrees === 90 ? turn : `${turn} ${element.degrees}°`;
    // As it was typed, but for its side.
    return element.typed.replace(/right|left|(?<![a-z])[rl](?![a-z])/i, turn);
  });
  return `walk ${parts.join(' ')}`;
}

function signOf(turn: Turn): 1 | -1 {
  return turn === 'right' ? 1 : -1;
}
