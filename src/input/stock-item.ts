/** One stock length: how many where they are at hand, how long, and what one costs, by the stick or by its length. */

import { type Length, portion, TICKS_PER_FOOT, TICKS_PER_METRE } from '../units/length.ts';
import { readLength } from './length.ts';
import { FIGURE, MARK, readPrice } from './price.ts';
import type { Reading } from './reading.ts';
import { plainSigns } from './rooms/room-plain.ts';
import type { Price } from './told.ts';

/** `have` sticks are at hand; undefined where it is bought. */
export interface StockItem {
  readonly length: Length;
  readonly have?: number;
  readonly price?: Price;
}

const MOST_HAVE = 200;
const COUNT = /^(\d{1,3})\s*(?:x|\*|(?:sticks?|pieces?|boards?|lengths?)(?:\s*(?:of|at))?)\s*(?=\d)/;
const AMOUNT = `(?:\\b(?:at|for)\\s+|@\\s*)?((?:${MARK} ?${FIGURE})|(?:${FIGURE} ?${MARK}))`;
const UNMARKED = `(?:\\b(?:at|for)\\s+|@\\s*)(${FIGURE})`;
const PER = `\\s*(?:each|apiece|a piece|a stick|per stick|/ ?stick)|\\s*(?:/|per|a)\\s*(ft|foot|m|met(?:re|er)|lf|linear foot)\\b`;
const PRICE = new RegExp(`(?:(?<![\\s,])[\\s,]+)?(?:${AMOUNT}|${UNMARKED})(?:${PER})?\\s*$`);

/** An item of stock; undefined when it cannot be read. A bare number is in feet or metres. */
export function stockItem(typed: string, atHand: boolean, reading: Reading): StockItem | undefined {
  const plain = plainSigns(typed).trim();
  const priced = PRICE.exec(plain);
  const before = priced ? plain.slice(0, priced.index).trim() : plain;
  const count = COUNT.exec(before);
  const size = count ? before.slice(count[0].length) : before;
  const length = readLength(
    size.replace(/(?:(?<!\s)\s+)?\b(?:sticks?|boards?|long|each)\b/g, ''),
    reading,
    reading.habits.units === 'metric' ? 'm' : 'ft',
  );
  if (!length.ok || (count && !atHand)) return undefined;
  if (atHand) {
    const have = Number(count?.[1] ?? 1);
    return have < 1 || have > MOST_HAVE ? undefined : { length: length.value, have };
  }
  if (!priced) return { length: length.value };
  const price = readPrice(priced[1] ?? priced[2] ?? '', reading);
  if (!price.ok) return undefined;
  const per = priced[3] === undefined ? undefined : priced[3].startsWith('m') ? TICKS_PER_METRE : TICKS_PER_FOOT;
  const { cents, currency } = price.value;
  const each = per === undefined ? cents : portion(BigInt(cents), BigInt(length.value), BigInt(per));
  return { length: length.value, price: { cents: each, currency } };
}
