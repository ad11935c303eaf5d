/** Reads what was spent: spent $84.20 on adhesive, insurer; refund $32.50 carton; budget $2,500. */

import type { Stage } from '../reply/need.ts';
import { readInTime } from '../workers/time-limits.ts';
import { FIGURE, MARK, readPrice } from './parse-price.ts';
import { stageNamed } from './parse-progress.ts';
import type { Price, Reading } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

export type ParsedSpending =
  | { readonly kind: 'show' }
  | { readonly kind: 'remove'; readonly place: number }
  | { readonly kind: 'budget'; readonly price: Price | undefined }
  | { readonly kind: 'cover'; readonly payer: 'insurer' | 'landlord'; readonly of: Cover }
  | {
      readonly kind: 'spent' | 'refund';
      readonly price: Price;
      /** What for, as typed. */
      readonly what: string;
      readonly payer: 'self' | 'insurer' | 'landlord' | undefined;
    };

/** What somebody else pays: an amount, hundredths of a percent of the whole, whole stages, or nothing any more. */
type Cover = { readonly price: Price } | { readonly part: number } | { readonly stages: readonly Stage[] } | 'nothing';

const LONGEST_TEXT = 400;
const MONEY = new RegExp(`${MARK} ?${FIGURE}|${FIGURE} ?${MARK}`, 'i');
const BARE = new RegExp(`(?<![\\p{L}\\d.,])${FIGURE}(?![\\p{L}\\d])`, 'u');
const REFUND =
  /(?<![a-z])(?:refund(?:ed|s)?|money back|got back|got .{1,20} back|credited|reimbursed|return(?:ed)?)(?![a-z])/;
const BUDGET = /(?<![a-z])budget(?![a-z])/;
const PAYERS: readonly (readonly [RegExp, 'self' | 'insurer' | 'landlord'])[] = [
  [
    /(?:,\s*|(?<!\s)\s+)?(?:(?:paid|covered|pays?) by |from |for |the |my |our )*\binsur(?:er|ance)(?: company)?(?: pays| paid| covers)?\b/i,
    'insurer',
  ],
  [
    /(?:,\s*|(?<!\s)\s+)?(?:(?:paid|covered|pays?) by |from |for |the |my |our )*\blandlord(?: pays| paid| covers)?\b/i,
    'landlord',
  ],
  [/(?:,\s*|(?<!\s)\s+)?(?:paid by (?:me|myself|us|self)|\b(?:myself|out of pocket|self)\b)/i, 'self'],
];
const VERBS =
  /^(?:\s|[,;:-]|(?:i|we|i've|we've|have|has|just|also|paid|spent|spend|pay|cost|costs|add|added|bought|refund(?:ed|s)?|got|back|money|returned|return|credited|reimbursed|of|on|for|from|to|a|an|the|in|was|were|is|it)(?![\p{L}\d]))+/iu;

/** The spending in a text; undefined if there is none. Never throws. */
export function readSpending(text: string, reading: Reading): ParsedSpending | undefined {
  return readInTime(() => spendingIn(text, reading));
}

function spendingIn(text: string, reading: Reading): ParsedSpending | undefined {
  const typed = withoutHidden(text, ' ').replace(/\s+/g, ' ').trim();
  if (typed.length > LONGEST_TEXT) return undefined;
  const plain = plainSigns(typed);
  if (/^(?:list|show|total|sum|how much(?: so far)?\??)?$/.test(plain)) return { kind: 'show' };
  const removed = /^(?:remove|delete|undo|strike|take out)(?: (?:entry|number|no\.?|line))? ?#?(\d{1,4})$/.exec(plain);
  if (removed) return { kind: 'remove', place: Number(removed[1]) };
  const cover = coverIn(plain, reading);
  if (cover) return cover;
  const money = MONEY.exec(plain) ?? bareIn(plain);
  if (BUDGET.test(plain) && /(?<![a-z])(?:none|no|remove|off|without)(?![a-z])/.test(plain)) {
    return { kind: 'budget', price: undefined };
  }
  if (!money) return undefined;
  const price = readPrice(money[0], reading);
  if (!price.ok || price.value.cents === 0) return undefined;
  if (BUDGET.test(plain)) return { kind: 'budget', price: price.value };
  const rest = `${typed.slice(0, money.index)} ${typed.slice(money.index + money[0].length)}`;
  const payer = PAYERS.find(([pattern]) => pattern.test(rest));
  const bare = payer ? rest.replace(payer[0], ' ') : rest;
  const what = trimmed(bare);
  return {
    kind: REFUND.test(plain) ? 'refund' : 'spent',
    price: price.value,
    what,
    payer: payer?.[1],
  };
}

const COVERS =
  /^(?:the |my |our )?(insurer|insurance|landlord)(?: company)?(?: will| is|'ll)? (?:pay(?:s|ing)?|cover(?:s|ing)?)(?: for)? (.+?)[.!]?$/;
const OF_ALL =
  '(?: (?:of|for|towards?) (?:it|that|this|all(?: of it)?|everything|(?:the )?(?:whole )?(?:job|project|total|cost|floor)))?';
const ALL = /^(?:it|all|everything|the whole (?:job|thing)|all of it|the (?:whole )?(?:job|project))$/;
const PART = new RegExp(`^(?:(\\d{1,3}(?:[.,]\\d{1,2})?) ?(?:%|percent|per cent)|(half)|a (third|quarter))${OF_ALL}$`);
const FIGURE_OF_ALL = new RegExp(`^${FIGURE}(?=${OF_ALL}$)`);
const NOTHING_BUT_ALL = new RegExp(`^${OF_ALL}$`);
const PARTS: Readonly<Record<string, number>> = { half: 5000, third: 3333, quarter: 2500 };

/** What the insurer or the landlord pays of the whole job; what they paid for one thing is an entry of its own. */
function coverIn(plain: string, reading: Reading): ParsedSpending | undefined {
  const [, who = '', what = ''] = COVERS.exec(plain) ?? [];
  if (what === '') return undefined;
  const payer = who === 'landlord' ? 'landlord' : 'insurer';
  if (/^(?:nothing|none(?: of it)?|no more|not any more)$/.test(what)) return { kind: 'cover', payer, of: 'nothing' };
  if (ALL.test(what)) return { kind: 'cover', payer, of: { part: 10_000 } };
  const [, percent, half, share] = PART.exec(what) ?? [];
  const part = percent === undefined ? PARTS[half ?? share ?? ''] : Math.round(Number(percent.replace(',', '.')) * 100);
  if (part !== undefined) return part >= 1 && part <= 10_000 ? { kind: 'cover', payer, of: { part } } : undefined;
  const money = MONEY.exec(what) ?? FIGURE_OF_ALL.exec(what);
  if (money) {
    const rest = what.slice(money.index + money[0].length);
    if (what.slice(0, money.index).trim() !== '' || !NOTHING_BUT_ALL.test(rest)) return undefined;
    const price = readPrice(money[0], reading);
    return price.ok && price.value.cents > 0 ? { kind: 'cover', payer, of: { price: price.value } } : undefined;
  }
  const named = what
    .split(/,|\band\b|\+|&/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const stages = named.map(stageNamed);
  const known = stages.filter((one) => one !== undefined);
  return known.length > 0 && known.length === named.length
    ? { kind: 'cover', payer, of: { stages: [...new Set(known)] } }
    : undefined;
}

/** A lone figure is an amount in the asker's own currency where nothing else could be meant. */
function bareIn(plain: string): RegExpExecArray | null {
  return /(?<![a-z])(?:spent|spend|paid|pay|refund(?:ed)?|budget|cost)(?![a-z])/.test(plain) ? BARE.exec(plain) : null;
}

function trimmed(text: string): string {
  let rest = text.replace(/\s+/g, ' ').trim();
  rest = rest.replace(VERBS, '').trim();
  return rest
    .replace(/^[\s,;:.-]+|(?<![\s,;:.-])[\s,;:.-]+$/g, '')
    .replace(/(?<!\s)\s*,\s*$/, '')
    .replace(/(?<!\s)\s+(?:for|on|from|by)$/i, '');
}
