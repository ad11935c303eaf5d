/** Sticks to buy and sticks at hand: `8 ft $7.98; 12 ft $12.48; 16 ft`, `have 3 x 8 ft, 5'2"`. */

import type { Problem } from '../reply/reply.ts';
import { noStockToBuy, onSaleOnly, stockUnread, tooMuchStock, twoCurrencies } from '../text/trim-problems-text.ts';
import { inches } from '../units/length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { type StockItem, stockItem } from './stock-item.ts';
import { filledPrices } from './stock-price.ts';

/** Stock lengths with what each costs; `currency` undefined where no price was told. */
export interface ToldStock {
  readonly items: readonly StockItem[];
  readonly currency: string | undefined;
}

const MOST_ITEMS = 24;
const SHORTEST = inches(6);

/** Items apart by `;`, a new line, `and`, or a comma and a space; what follows `have` up to the `;` is at hand. All problems at once. */
export function readStock(text: string, reading: Reading): Read<ToldStock> {
  const items: StockItem[] = [];
  const wrong: string[] = [];
  const metric = reading.habits.units === 'metric';
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

/** As readStock, for profiles of several kinds: what is at hand would fit one of them only, and is a Problem. */
export function readStockOnSale(text: string, reading: Reading): Read<ToldStock> {
  const stock = readStock(text, reading);
  if (!stock.ok || stock.value.items.every(({ have }) => have === undefined)) return stock;
  const sections = text.split(/[;\n]/).filter((section) => !/\b(?:have|got|left)/i.test(section));
  const fix = sections.map((section) => section.trim()).join('; ');
  return unread(onSaleOnly({ option: reading.option, got: text }, fix));
}
