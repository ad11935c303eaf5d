/** What an answer that stands before its search has ended says of itself, and whether that is so. */

import { CHAT } from '../../../src/text/chat-text.ts';

/** What an answer says that is replaced when it is whole. */
export const WORKING = CHAT.working.slice(0, 20);

/** Why it stands: more is to come, too many ask, or it takes more than an ask may. */
const STANDS = [
  WORKING,
  'I’m busy just now, so',
  'I’m still working on your',
  'That’s as far as I',
  'Some of it took too long',
];
/** Where its pictures are, which differs with the ways that were open. */
const ELSEWHERE = 'in our direct messages';
/** Of a floor: the planks that none can do with fewer than. */
const PLANKS = /needs fewer than (\d+)/;
/** Of trim: the money that a best way would save at the most. */
const MONEY = /at most [$€£]([\d.,]+) above the least possible/;

/** Whether a line may differ from one time to the next: it tells where the pictures are, or how far the search went. */
export function isPassing(line: string): boolean {
  // What stands over such a line goes with it.
  return line.includes(ELSEWHERE) || line.includes(CHAT.assumed) || isOwned(line);
}

function isOwned(line: string): boolean {
  return STANDS.some((words) => line.includes(words)) || (isBounded(line) && !line.includes('proven'));
}

function isBounded(line: string): boolean {
  return PLANKS.test(line) || /above the least possible/.test(line);
}

/**
 * Why an answer may not stand beside the settled one, by both first lines: it does not say that it is unproved, or claims a bound
 * that the settled one goes below; undefined where it may.
 */
export function falseOf(lines: readonly string[], settled: string): string | undefined {
  const [first = ''] = lines;
  const owned = lines.filter(isOwned);
  if (owned.length === 0) return `${first} does not say that it is unproved`;
  for (const line of owned) {
    const planks = PLANKS.exec(line)?.[1];
    const laid = /(\d+) to lay/.exec(settled)?.[1];
    if (planks !== undefined && laid !== undefined && Number(planks) > Number(laid))
      return `${line} is not so: ${settled}`;
    const over = MONEY.exec(line)?.[1];
    const [cost, least] = [first, settled].map((headline) => /: [$€£]([\d.,]+)\.$/.exec(headline)?.[1]);
    if (over !== undefined && cost !== undefined && least !== undefined && money(cost) - money(over) > money(least)) {
      return `${line} is not so: ${settled}`;
    }
  }
  return undefined;
}

/** Whole cents. */
function money(given: string): number {
  return Number(given.replace(/\D/g, ''));
}
