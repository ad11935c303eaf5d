/** Prices for stock lengths told without one, where others have theirs: by the foot of the dearest told. */

import { stockPriceRead } from '../text/trim-problems-text.ts';
import { portion } from '../units/length.ts';
import type { Reading } from './reading.ts';
import { sayMoney } from './say.ts';
import { sayLength } from './say-length.ts';
import type { StockItem } from './stock-item.ts';

/** Items to buy, each with a price where any has one; what was filled in is noted. */
export function filledPrices(
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
    const saying = { units: reading.habits.units, decimal: reading.habits.decimal };
    reading.note(stockPriceRead(sayLength(item.length, saying), sayMoney(cents, currency, saying)));
    return { ...item, price: { cents, currency } };
  });
}
