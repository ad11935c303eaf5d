/** A walk's text cut into steps: walls, turns, and words that are neither. */

import { LETTER } from './room-plain.ts';
import { SIDE, TIMES } from './room-side.ts';
import type { Turn } from './walk-path.ts';

interface Placed {
  readonly from: number;
  readonly to: number;
  readonly typed: string;
}

export type Step =
  | ({ readonly kind: 'wall' } & Placed)
  | ({ readonly kind: 'turn'; readonly turn: Turn } & Placed)
  | ({ readonly kind: 'angle' } & Placed)
  | ({ readonly kind: 'diagonal'; readonly ahead: string; readonly aside: string } & Placed)
  | ({ readonly kind: 'word' } & Placed);

/** A slanted wall by its two offsets: ahead, and to the side that the turn before it names. */
export const DIAGONAL = `(?:diagonal(?:ly)?|slant(?:ed|ing)?|bevel(?:led|ed)?)(?: (?:wall|of))* *(?=\\d|\\.)`;
/** An angle with its sign or word; a bare number is a wall. */
export const ANGLE = '\\d{1,3}(?:[.,]\\d{1,2})? ?(?:[°º˚*]|deg(?:rees?)?(?![a-z]))';

const STEP = new RegExp(
  [
    `(?<diagonal>${DIAGONAL}(?<ahead>${SIDE})${TIMES}(?<aside>${SIDE}))`,
    `(?<angle>${ANGLE})`,
    `(?<wall>${SIDE}(?! ?(?:[°º˚]|deg(?:rees?)?(?![a-z]))))`,
    `(?<turn>(?:right|left|rt|lt|r|l)(?![${LETTER}]))`,
    `(?<filler>\\s+|[,.:>()&]|-(?!\\d)|(?:walk|walls?|a?round|turn|then|and|go|to|on|the|straight|ahead|forward|corner|at|by|of|angle|angled|an?)(?![${LETTER}]))`,
    `(?<word>[${LETTER}']+|\\S)`,
  ].join('|'),
  'g',
);

/** The steps of `plain` between two places, in order. */
export function stepsOf(plain: string, from: number, to: number): Step[] {
  const steps: Step[] = [];
  for (const { index, groups, 0: typed } of plain.slice(from, to).matchAll(STEP)) {
    const placed = { from: from + index, to: from + index + typed.length, typed };
    if (groups?.wall !== undefined) steps.push({ kind: 'wall', ...placed });
    else if (groups?.angle !== undefined) steps.push({ kind: 'angle', ...placed });
    else if (groups?.diagonal !== undefined)
      steps.push({ kind: 'diagonal', ahead: groups.ahead ?? '', aside: groups.aside ?? '', ...placed });
    else if (groups?.turn !== undefined)
      steps.push({ kind: 'turn', turn: /^r/.test(typed) ? 'right' : 'left', ...placed });
    else if (groups?.word !== undefined) steps.push({ kind: 'word', ...placed });
  }
  return steps;
}
