/** The terms of a sum of lengths: each quantity becomes a symbol, so that only the structure is left to parse. */

import type { Problem } from '../reply/reply.ts';
import { type Got, notASum, nothingBetween, sumTooLarge } from '../text/length-problems-text.ts';
import { matchAt } from './length-number.ts';
import { type Quantity, quantityAt } from './length-quantity.ts';
import type { Reading } from './reading.ts';

/** `structure` holds only symbols (q0, q1 …), the four signs and brackets; symbol qN stands for quantities[N]. */
export interface Terms {
  readonly structure: string;
  readonly quantities: readonly Quantity[];
}

const DEEPEST = 30;
const SIGN = /[+\-*/×·∙⋅÷]|(?:plus|minus|times|multiplied by|divided by|by|x)(?![a-z])/y;
const SHARE = /(?:(?:a|one) +)?(?<share>half|third|quarter)(?![a-z])(?: +of(?![a-z]))?|(?:twice|double)(?![a-z])/y;

const MULTIPLY = new Set(['*', '×', '·', '∙', '⋅', 'x', 'times', 'multiplied by', 'by']);
const DIVIDE = new Set(['/', '÷', 'divided by']);
const PARTS: Readonly<Record<string, bigint>> = { half: 2n, third: 3n, quarter: 4n };

/** The terms of a plain text, or a Problem that shows where it cannot be followed. */
export function termsOf(text: string, reading: Reading, got: Got, example: string): Terms | Problem {
  const quantities: Quantity[] = [];
  /** For each open bracket, the shares ("half of") that end where it closes. */
  const open: number[] = [];
  let [structure, shares, signs, at, afterValue] = ['', 0, 0, 0, false];
  const close = (count: number): void => {
    structure += ')'.repeat(count);
    [shares, signs, afterValue] = [0, 0, true];
  };

  for (;;) {
    while (text[at] === ' ') at++;
    if (at >= text.length) break;
    if (open.length + signs + shares > DEEPEST)
      return sumTooLarge(got, `${DEEPEST} brackets inside each other`, example);
    const stuck = notASum(got, text.slice(at, at + 20), example);

    const quantity = quantityAt(text, at, { reading, sum: true });
    if (quantity && 'expected' in quantity) return quantity;
    const share = quantity ? undefined : matchAt(SHARE, text, at);
    const opens = text[at] === '(';
    if (afterValue && (quantity || share || opens)) return nothingBetween(got, example);

    if (quantity) {
      structure += `q${quantities.push(quantity) - 1}`;
      close(shares);
      at = quantity.end;
    } else if (share) {
      structure += `(q${quantities.push(shareOf(share, at)) - 1}*`;
      shares++;
      at += share[0].length;
    } else if (opens) {
      structure += '(';
      open.push(shares);
      [shares, at] = [0, at + 1];
    } else if (text[at] === ')') {
      const ending = open.pop();
      if (ending === undefined || !afterValue) return stuck;
      close(ending + 1);
      at++;
    } else {
      const sign = matchAt(SIGN, text, at)?.[0];
      if (sign === undefined) return stuck;
      const plain = MULTIPLY.has(sign) ? '*' : DIVIDE.has(sign) ? '/' : sign === 'plus' || sign === '+' ? '+' : '-';
      if (!afterValue && (plain === '*' || plain === '/')) return stuck;
      signs = afterValue ? 0 : signs + 1;
      structure += plain;
      [afterValue, at] = [false, at + sign.length];
    }
  }
  return afterValue && open.length === 0 ? { structure, quantities } : notASum(got, '', example);
}

/** "half of" as the number it multiplies by. */
function shareOf(match: RegExpExecArray, at: number): Quantity {
  const share = match.groups?.share;
  const bottom = share === undefined ? 1n : (PARTS[share] ?? 1n);
  return { power: 0, top: share === undefined ? 2n : 1n, bottom, typed: match[0], end: at + match[0].length };
}
