/** The words of what a project costs: estimate, actual, budget, who pays. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { counted } from './floor.ts';

export const SPEND = {
  headline: (spent: string, expected: string | undefined, budget: string | undefined, shares: string | undefined) =>
    `Spent ${spent}${expected === undefined ? '' : `, ${expected} expected in all`}${budget === undefined ? '' : `, of a budget of ${budget}`}${shares === undefined ? '' : `: ${shares}`}.`,
  added: (amount: string, what: string, payer: string) =>
    `Spent: ${amount}${what === '' ? '' : `, ${what}`} (${payer}).`,
  refunded: (amount: string, what: string, payer: string) =>
    `Refund: ${amount}${what === '' ? '' : `, ${what}`} (${payer}).`,
  removed: (what: string) => `Removed: ${what}.`,
  budgetSet: (amount: string) => `Budget: ${amount}.`,
  budgetGone: 'No budget any more.',
  said: (text: string) => `spend: ${text}`,
  untold: 'not told what for',
  payers: { self: 'you', insurer: 'insurer', landlord: 'landlord' },
  stageTitle: 'By stage',
  stageColumns: ['Stage', 'Estimate', 'Spent', 'Left to buy'],
  tools: 'Tools',
  other: 'Other',
  cover: (who: string, what: string) => `Agreed: the ${who} pays ${what}.`,
  coverGone: (who: string) => `The ${who} pays nothing any more, but for what they paid already.`,
  sharesTitle: 'Who pays, in all',
  payerTitle: 'Paid so far, by whom',
  budgetTitle: 'Budget',
  budget: 'Budget',
  spent: 'Spent',
  left: 'Left to buy',
  expected: 'Expected in all',
  room: 'Within the budget by',
  over: 'Over the budget by',
  near: (share: string) => `Near the budget: what is spent and left to buy comes to ${share} % of it.`,
  past: (amount: string) => `Past the budget: what is spent and left to buy comes to ${amount} more.`,
  unpriced: (count: number) =>
    `${counted(count, 'thing')} on the shopping list ${count === 1 ? 'has' : 'have'} no price yet and ${count === 1 ? 'is' : 'are'} in no sum.`,
  listTitle: 'Entries',
  listColumns: ['No.', 'Day', 'What', 'Stage', 'Amount', 'Paid by'],
  purchasesTitle: 'From the shopping list',
  purchasesColumns: ['Day', 'What', 'Amount', 'Paid by'],
  others: (amounts: readonly string[]) => `in other currencies, in no sum: ${amounts.join(', ')}`,
  remove: (no: number) => `Remove entry ${no}`,
  stageTaken: (stage: string) => `counted under ${stage}`,
} as const;

export const SPEND_PROBLEMS = {
  unread: (got: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected:
      'Say what you paid and for what, a refund, or a budget; or what somebody else pays: “insurer pays $1,500”, “insurer pays 25 %”, “insurer pays the tear-out”.',
    fix: 'spent $84.20 on adhesive, insurer',
  }),
} as const;
