/** Sticks to buy and sticks on hand: `8 ft $7.98; 12 ft $12.48; 16 ft`, `have 3 x 8 ft, 5'2"`. */

import type { Problem } from '../reply/reply.ts';
import {
  noStockToBuy,
  onSaleOnly,
  stockPriceRead,
  stockUnread,
  tooMuchStock,
  twoCurrencies,
} from '../text/trim-problems-text.ts';
import { inches, type Length, portion, TICKS_PER_FOOT, TICKS_PER_METRE } from '../units/length.ts';
import { sayLength, sayMoney } from './format.ts';
import { readLength } from './parse-length.ts';
import { FIGURE, MARK, readPrice } from './parse-price.ts';
import { type Price, type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns } from './rooms/room-text.ts';

// One stock length: how many are on hand, its length, and its price per stick or per length.

/** `have` sticks are on hand; undefined if it is for sale. */
interface StockItem {
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

/** An item of stock; undefined if it can't be parsed. A bare number is in feet or meters. */
function stockItem(typed: string, atHand: boolean, reading: Reading): StockItem | undefined {
  const plain = plainSigns(typed).trim();
  const priced = PRICE.exec(plain);
  const before = priced ? plain.slice(0, priced.index).trim() : plain;
  const count = COUNT.exec(before);
  const size = count ? before.slice(count[0].length) : before;
  const length = readLength(
    size.replace(/(?:(?<!\s)\s+)?\b(?:sticks?|boards?|long|each)\b/g, ''),
    reading,
    reading.preferences.units === 'metric' ? 'm' : 'ft',
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

// Stock without a price, when others have one, gets the highest given price per foot.

/** Items to buy, all with a price if any has one; filled-in prices are noted. */
function filledPrices(
  items: readonly StockItem[],
  currency: string | undefined,
  reading: Reading,
): readonly StockItem[] {
  if (currency === undefined) return items;
  const priced = items.flatMap(({ length, price }) => (price ? [{ length, cents: price.cents }] : []));
  const [dearest] = priced.sort((a, b) => b.cents * a.length - a.cents * b.length);
  if (!dearest) return items;
  return items.map((item) => {
    if (item.price || item.have !== undefined) return item;
    const cents = portion(BigInt(dearest.cents), BigInt(item.length), BigInt(dearest.length));
    const saying = { units: reading.preferences.units, decimal: reading.preferences.decimal };
    reading.note(stockPriceRead(sayLength(item.length, saying), sayMoney(cents, currency, saying)));
    return { ...item, price: { cents, currency } };
  });
}

/** Stock lengths with prices; `currency` is undefined without any price. */
export interface ParsedStock {
  readonly items: readonly StockItem[];
  readonly currency: string | undefined;
}

const MOST_ITEMS = 24;
const SHORTEST = inches(6);

/**
 * Items separated by `;`, a newline, `and`, or a comma and a space; what follows `have` up to the `;` is on hand.
 * Reports all problems at once.
 */
export function readStock(text: string, reading: Reading): Read<ParsedStock> {
  const items: StockItem[] = [];
  const wrong: string[] = [];
  const metric = reading.preferences.units === 'metric';
  const standard = metric ? '2.4 m' : '8 ft';
  const mended = text
    .split(/[;\n]/)
    .filter((section) => section.trim() !== '')
    .map((section) => {
      let atHand = false;
      return section
        .split(/,\s+|(?<!\s)\s+(?:and|&)\s+/)
        .filter((part) => part.trim() !== '')
        .map((part) => {
          const have = /^\s*(?:i\s+|we\s+)?(?:have|got|leftovers?|left over)\b\s*:?/i.exec(part);
          atHand ||= have !== null;
          const typed = part.slice(have?.[0].length ?? 0).trim();
          const item = stockItem(typed, atHand, reading);
          if (item && item.length >= SHORTEST) {
            items.push(item);
            return part.trim();
          }
          wrong.push(part.trim());
          return `${have ? 'have ' : ''}${standard}`;
        })
        .join(', ');
    })
    .join('; ');
  const got = { option: reading.option, got: text };
  const [first, ...more] = wrong.map((part): Problem => stockUnread({ ...got, got: part }, mended));
  if (first) return unread(first, ...more);
  if (items.length === 0) return unread(stockUnread(got, standard));
  if (items.length > MOST_ITEMS) return unread(tooMuchStock(got, MOST_ITEMS, standard));
  if (items.every(({ have }) => have !== undefined)) return unread(noStockToBuy(got, `${mended}; ${standard}`));
  const currencies = [...new Set(items.flatMap(({ price }) => (price ? [price.currency] : [])))];
  const [currency, other] = currencies;
  if (other !== undefined) return unread(twoCurrencies(got, standard));
  return read({ items: filledPrices(items, currency, reading), currency });
}

/** Like readStock, for several kinds of profile: sticks on hand would fit only one of them, so they are a Problem. */
export function readStockOnSale(text: string, reading: Reading): Read<ParsedStock> {
  const stock = readStock(text, reading);
  if (!stock.ok || stock.value.items.every(({ have }) => have === undefined)) return stock;
  const sections = text.split(/[;\n]/).filter((section) => !/\b(?:have|got|left)/i.test(section));
  const fix = sections.map((section) => section.trim()).join('; ');
  return unread(onSaleOnly({ option: reading.option, got: text }, fix));
}

// Sticks named in a sentence, with their prices.

const STICK_NOUNS = '(?:sticks?|lengths?|pieces?|footers?|boards?|ones?)';
/** A stick's length in feet, and behind it what it costs: “12 footers are 9.98”, “8 ft sticks $6.49 each”. */
const STICK = new RegExp(
  `(?<![\\d.,]|(?:x|by) ?)(?<feet>\\d{1,2})[ -]?(?:ft|foot|feet|'|footers?)(?![a-z]| ?(?:x|by) ?\\d)(?: (?:long )?${STICK_NOUNS}(?![a-z]))?` +
    `(?:(?: (?:is|are|at|for|costs?|run|runs|go for|goes for|priced at)| ?[:=])* ?(?<price>\\$ ?\\d{1,3}(?:\\.\\d{1,2})?|\\d{1,3}\\.\\d{2})` +
    `(?! ?(?:x|by|ft|feet|foot|'|"|in|sq|(?:a|per|/|an) ?(?:sq|box|carton|linear|running|lf|ft|foot))(?![a-z])))?`,
  'g',
);
const PER_FOOT =
  /(?<![\d.,])\$? ?(\d{1,2}(?:\.\d{1,2})?) ?(?:dollars? )?(?:\/|a|per|each|the) ?(?:linear |lineal |running )?(?:ft|foot|lf|lft)(?![a-z])(?! ?2)/;
const STICK_WORDS = new RegExp(`(?<![a-z])${STICK_NOUNS}(?![a-z])`);
const SHORTEST_STICK = 6;
const LONGEST_STICK = 20;
/** What stores carry where no length is named. */
const USUAL_FEET = [8, 12, 16];

/** “Lengths of 2.4 m”, “3 m lengths at €7.50”. */
const METRIC_STICK = new RegExp(
  `(?<![a-z])${STICK_NOUNS} (?:(?:of|are|is|at|in|come in|only) ){0,2}(?<behind>\\d(?:[.,]\\d{1,2})?) ?m(?:et(?:er|re)s?)?(?![a-z\\d²])|(?<![\\d.,]|(?:x|by) ?)(?<before>\\d(?:[.,]\\d{1,2})?)[ -]?m(?:et(?:er|re))? (?:long )?${STICK_NOUNS}(?![a-z])(?: (?:at|for|are|is) ?(?<price>[€£$] ?\\d{1,3}(?:[.,]\\d{1,2})?))?`,
  'g',
);
const METRIC_RANGE = { least: 1.2, most: 6 };

function metricSticks(plain: string): readonly string[] {
  return [...plain.matchAll(METRIC_STICK)].flatMap(({ groups = {} }) => {
    const figure = groups.behind ?? groups.before ?? '';
    const metres = Number(figure.replace(',', '.'));
    const price = groups.price === undefined ? '' : ` ${groups.price.replace(' ', '')}`;
    return metres >= METRIC_RANGE.least && metres <= METRIC_RANGE.most ? [`${figure} m${price}`] : [];
  });
}

/** The sticks of a sentence about trim as the stock option reads them. Undefined if it names neither a length nor a price by the foot. */
export function stockInSentence(plain: string): string | undefined {
  const metric = metricSticks(plain);
  if (metric.length > 0) return metric.join('; ');
  const perFoot = PER_FOOT.exec(plain)?.[1];
  const named = STICK_WORDS.test(plain) ? [...plain.matchAll(STICK)] : [];
  const sticks = new Map<number, string | undefined>();
  for (const { groups } of named) {
    const feet = Number(groups?.feet);
    if (feet < SHORTEST_STICK || feet > LONGEST_STICK) continue;
    sticks.set(feet, groups?.price?.replace(/[$ ]/g, '') ?? sticks.get(feet));
  }
  const lengths = sticks.size > 0 ? [...sticks.keys()] : perFoot === undefined ? [] : USUAL_FEET;
  const item = (feet: number): string => {
    const price = sticks.get(feet);
    if (price !== undefined) return `${feet} ft $${price}`;
    return perFoot === undefined ? `${feet} ft` : `${feet} ft $${perFoot}/ft`;
  };
  return lengths.length > 0 ? lengths.map(item).join('; ') : undefined;
}
