/** A plank's price, whatever it is a price of, as the price of a carton. */

import {
  footPriceRead,
  notAPrice,
  priceMark,
  priceOfWhat,
  priceTooHigh,
  priceTwice,
} from '../text/plank-problems-text.ts';
import { type Area, portion, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import type { Ratio } from './length-number.ts';
import { CARTON, type Carton, PER, PLANK, SQUARE_FOOT, SQUARE_METRE } from './plank-carton.ts';
import type { Unclaimed } from './plank-claim.ts';
import { currencyOf, FIGURE, FIGURE_START, figureOf, HIGHEST_PRICE, MARK, markOf } from './price.ts';
import type { Reading } from './reading.ts';
import type { Flaw } from './rooms/room-flaw.ts';
import { LETTER } from './rooms/room-plain.ts';
import { sayNumber } from './say.ts';
import type { Price } from './told.ts';

const START = FIGURE_START;
const NAMED = `(?:price|priced|costs?|pay(?:ing)?)(?: ?(?:at|is|of|to be)(?![${LETTER}])| ?[:=])?`;
const WHAT = [
  `(?<foot>${SQUARE_FOOT})`,
  `(?<metre>${SQUARE_METRE})`,
  `(?<carton>${CARTON})`,
  `(?<plank>${PLANK}|each(?![${LETTER}])|apiece(?![${LETTER}]))`,
  `(?<line>(?:lin(?:ear)?\\.? ?)?(?:foot|feet|ft)(?![${LETTER}]))`,
].join('|');
const OF = `(?: ?-?(?:${PER} ?){0,2}(?:${WHAT}))?`;
const AMOUNTS = [
  `(?<before>${MARK}) ?(?<figure>${FIGURE})(?: ?(?<after>${MARK}))?`,
  `(?<figure>${FIGURE}) ?(?<after>${MARK})`,
];
/** "per carton: $58": what it buys may come first, when no count stands before it. */
const AHEAD = `(?:${START}${NAMED} ?|(?<!(?:\\d|[${LETTER}²]) ?))(?:per|an?|each|the)(?![${LETTER}]) ?(?:${WHAT}) ?[:=]? ?`;
const PRICES = [
  ...AMOUNTS.map((amount) => `${AHEAD}${amount}(?! ?${PER})`),
  ...AMOUNTS.map((amount) => `(?:${START}${NAMED} ?)?${START}${amount}${OF}`),
  `${START}${NAMED} ?(?<figure>${FIGURE})${OF}`,
].map((source) => new RegExp(source));
/** A figure for an area with no mark: 2.89/sq ft is probably a price. */
const UNMARKED = new RegExp(
  `${START}(?<figure>${FIGURE}) ?(?:per|/|an?(?![${LETTER}])) ?(?:${SQUARE_FOOT}|${SQUARE_METRE})`,
);

/** A price as told: the exact amount in whole units of its currency, and what it buys. */
export interface ToldPrice {
  readonly amount: Ratio;
  readonly currency: string;
  readonly of: 'carton' | 'plank' | 'foot' | 'metre';
  readonly from: number;
  readonly to: number;
}

/** Claims the price of a plank, if one is told. */
export function claimPrice(text: string, rest: Unclaimed, reading: Reading): { told?: ToldPrice; flaws: Flaw[] } {
  const found = rest.claimFirst(PRICES);
  const unmarked = rest.claim(UNMARKED);
  const flaws: Flaw[] = [];
  if (unmarked) {
    const place = placeOf(unmarked);
    const typed = text.slice(place.from, place.to);
    flaws.push({
      ...place,
      expected: found ? priceTwice() : priceMark(),
      mends: () => (found ? [] : [`${markOf(reading.habits.currency)}${typed}`]),
    });
  }
  if (!found) return { flaws };
  for (let second = rest.claimFirst(PRICES); second; second = rest.claimFirst(PRICES)) {
    flaws.push({ ...placeOf(second), expected: priceTwice(), mends: () => [] });
  }
  const place = placeOf(found);
  const typed = text.slice(place.from, place.to).trim();
  const groups = found.groups ?? {};
  const amount = figureOf(groups.figure ?? '', reading.habits);
  const flaw = (expected: string, ...mends: string[]) => ({
    flaws: [...flaws, { ...place, expected, mends: () => mends }],
  });
  const { before, after } = groups;
  if (!amount || (before !== undefined && after !== undefined && before !== after)) return flaw(notAPrice());
  if (amount.top > HIGHEST_PRICE * amount.bottom) return flaw(tooHigh(reading));
  const of = (['carton', 'plank', 'foot', 'metre'] as const).find((what) => groups[what] !== undefined);
  if (!of && groups.line === undefined) return flaw(priceOfWhat());
  if (!of) reading.note(footPriceRead(typed));
  const currency = currencyOf(before ?? after, reading.habits);
  return { told: { amount, currency, of: of ?? 'foot', ...place }, flaws };
}

/** The price of a carton in whole cents, rounded half up once. */
export function cartonPrice(told: ToldPrice, carton: Carton, reading: Reading): Price | Flaw {
  const [times, parts] = perCarton(told.of, carton);
  const { top, bottom } = told.amount;
  if (top * times > HIGHEST_PRICE * bottom * parts) {
    return { from: told.from, to: told.to, expected: tooHigh(reading), mends: () => [] };
  }
  return { cents: portion(100n * top, times, bottom * parts), currency: told.currency };
}

/** How many of what the price buys are in a carton, as a ratio. */
function perCarton(of: ToldPrice['of'], { count, area }: Carton): readonly [times: Area, parts: Area] {
  if (of === 'foot') return [area, SQUARE_TICKS_PER_SQUARE_FOOT];
  if (of === 'metre') return [area, SQUARE_TICKS_PER_SQUARE_METRE];
  return of === 'plank' ? [BigInt(count), 1n] : [1n, 1n];
}

function tooHigh({ habits }: Reading): string {
  return priceTooHigh(sayNumber(Number(HIGHEST_PRICE), { units: habits.units, decimal: habits.decimal }));
}

function placeOf(found: RegExpExecArray) {
  return { from: found.index, to: found.index + found[0].length };
}
