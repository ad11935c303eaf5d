/** What a carton holds and costs: a count of planks, an area, or both, with the missing one computed from the size. */

import {
  areaAgainstCount,
  areaStands,
  cartonAreaRead,
  cartonMissing,
  countFromArea,
  countOutOfRange,
  footPriceRead,
  notAPrice,
  planksNotWhole,
  priceMark,
  priceOfWhat,
  priceTooHigh,
  priceTwice,
} from '../text/floor-problems-text.ts';
import { type Area, portion, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import { sayArea, sayNumber } from './format.ts';
import { type Ratio, roundedRatio } from './parse-number.ts';
import { currencyOf, FIGURE, FIGURE_START, figureOf, HIGHEST_PRICE, MARK, markOf } from './parse-price.ts';
import type { Price, Reading, Units } from './reading.ts';
import type { Flaw } from './rooms/room-flaw.ts';
import { LETTER } from './rooms/room-text.ts';

// The text of a plank. Each parser claims what it understands; whatever nobody claims is reported to the user.

/** Replaces claimed characters; no pattern matches it. */
const CLAIMED = '\u2588';

/** Plain text with claimed parts blanked out; positions stay the same. */
export interface Unclaimed {
  /** Claims the first match of a pattern in the rest. */
  claim(pattern: RegExp): RegExpExecArray | undefined;
  /** Like claim, with the first of the patterns that matches. */
  claimFirst(patterns: readonly RegExp[]): RegExpExecArray | undefined;
  /** Runs of unclaimed text with their positions. */
  left(): readonly { readonly from: number; readonly to: number; readonly words: string }[];
}

export function unclaimed(plain: string): Unclaimed {
  let rest = plain.replaceAll(CLAIMED, '?');
  return {
    claim(pattern) {
      pattern.lastIndex = 0;
      const found = pattern.exec(rest) ?? undefined;
      if (found) {
        const to = found.index + found[0].length;
        rest = rest.slice(0, found.index) + CLAIMED.repeat(found[0].length) + rest.slice(to);
      }
      return found;
    },
    claimFirst(patterns) {
      for (const pattern of patterns) {
        const found = this.claim(pattern);
        if (found) return found;
      }
      return undefined;
    },
    left() {
      return [...rest.matchAll(/[^\u2588,;\r\n]+/g)].map(({ index, 0: run }) => {
        const from = index + (run.length - run.trimStart().length);
        return { from, to: from + run.trim().length, words: run.trim() };
      });
    },
  };
}

const END = `(?![${LETTER}])`;
const CARTON = `(?:cartons?|box(?:es)?|packs?|packets?|packages?|cases?|bx|ctn|pkg)\\.?${END}`;
const PLANK = `(?:planks?|boards?|pieces?|pcs?|tiles?)\\.?${END}`;
export const PRICE_SQUARE_FOOT = `(?:(?:sq(?:uare)?\\.? ?-?(?:ft|feet|foot)|sqft|sf|(?:ft|feet|foot) ?\\^?[2²])\\.?${END})`;
export const SQUARE_METRE = `(?:(?:sq(?:uare)?\\.? ?-?(?:met(?:er|re)s?|m)|sqm|qm|m ?\\^?[2²])\\.?${END})`;
const PER = `(?:(?:per|an?|each|every|in|to|for|the)${END}|/)`;

const AREA = new RegExp(
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:(?<foot>${PRICE_SQUARE_FOOT})|(?<metre>${SQUARE_METRE}))(?! ?${PER} ?(?:${PER} ?)?${PLANK})(?: ?(?:${PER} ?){1,2}${CARTON})?`,
);
const COUNTS = [
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:(?:${PLANK}|ct${END}|count${END}) ?)?(?:${PER} ?){1,2}${CARTON}`,
  `${CARTON} ?(?:(?:of|has|holds|contains|with|is)${END}|[:=])? ?(?<figure>${FIGURE})(?![\\d.,]*\\d)(?! ?-?(?:x|${PER} ?)) ?(?:${PLANK})?`,
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:${PLANK}|ct${END}|count${END})(?: ?(?:${PER} ?)*${CARTON})?`,
  `${FIGURE_START}(?<figure>${FIGURE}) ?-?(?:carton|box|packs?|case)${END}`,
].map((source) => new RegExp(source));

const MOST = 1000;
/** Printed areas are nominal: this close to a whole number of planks they are accepted as is. */
const TOLERANCE = 50n;

interface Place {
  readonly from: number;
  readonly to: number;
}

/** What is said about a carton, each part with its position in the text. */
interface ParsedCarton {
  readonly area?: { readonly area: Area; readonly typed: string } & Place;
  readonly count?: { readonly count: number } & Place;
}

/** Claims the count and the area of a carton. A number per carton that isn't whole is an area, with a note. */
export function claimCarton(
  text: string,
  rest: Unclaimed,
  units: Units,
  reading: Reading,
): { given: ParsedCarton; flaws: Flaw[] } {
  const flaws: Flaw[] = [];
  let given: ParsedCarton = {};
  const found = rest.claim(AREA);
  if (found) {
    const foot = found.groups?.foot !== undefined;
    given = areaGiven(found, foot ? 'imperial' : 'metric', reading) ?? {};
    if (!given.area) flaws.push(cartonFlaw(found));
  }
  const counted = rest.claimFirst(COUNTS);
  if (!counted) return { given, flaws };
  const place = placeOf(counted);
  const value = figureOf(counted.groups?.figure ?? '', reading.preferences);
  if (!value) return { given, flaws: [...flaws, cartonFlaw(counted)] };
  if (value.top % value.bottom === 0n) {
    const count = value.top / value.bottom;
    if (count >= 1n && count <= BigInt(MOST))
      return { given: { ...given, count: { count: Number(count), ...place } }, flaws };
    const few = { ...place, expected: countOutOfRange(MOST), mends: () => [] };
    return { given, flaws: [...flaws, few] };
  }
  const area = given.area ? undefined : areaGiven(counted, units, reading);
  if (!area?.area) return { given, flaws: [...flaws, cartonFlaw(counted)] };
  const typed = text.slice(place.from, place.to).trim();
  reading.note(cartonAreaRead(typed, area.area.typed));
  return { given: area, flaws };
}

function cartonFlaw(found: RegExpExecArray): Flaw {
  return { ...placeOf(found), expected: cartonMissing(), mends: () => [] };
}

function placeOf(found: RegExpExecArray): Place {
  return { from: found.index, to: found.index + found[0].length };
}

function areaGiven(found: RegExpExecArray, units: Units, { preferences }: Reading): ParsedCarton | undefined {
  const figure = found.groups?.figure ?? '';
  const value = figureOf(figure, preferences);
  if (!value || value.top <= 0n) return undefined;
  const unit = units === 'imperial' ? SQUARE_TICKS_PER_SQUARE_FOOT : SQUARE_TICKS_PER_SQUARE_METRE;
  const area = roundedRatio({ top: value.top * unit, bottom: value.bottom });
  return { area: { area, typed: `${figure} ${units === 'imperial' ? 'sq ft' : 'm²'}`, ...placeOf(found) } };
}

interface Carton {
  readonly count: number;
  readonly area: Area;
}

/** Combines count and area: computes a missing one from one plank's area, and checks given ones to within 2 %. */
export function cartonOf(given: ParsedCarton, plank: Area, units: Units, reading: Reading): Carton | Flaw {
  const saying = { units, decimal: reading.preferences.decimal };
  const { area, count } = given;
  if (!area) return { count: count?.count ?? 1, area: plank * BigInt(count?.count ?? 1) };
  const planks = count?.count ?? Number(roundedRatio({ top: area.area, bottom: plank }));
  const product = plank * BigInt(planks);
  const apart = area.area > product ? area.area - product : product - area.area;
  const place = { from: area.from, to: area.to };
  if (planks < 1 || apart * TOLERANCE > product) {
    const exact = sayNumber(Number((area.area * 1000n) / plank) / 1000, saying, 3);
    const expected = count
      ? areaAgainstCount(area.typed, planks, sayArea(product, saying))
      : planksNotWhole(area.typed, exact);
    return { ...place, expected, mends: () => [] };
  }
  if (planks > MOST) return { ...place, expected: countOutOfRange(MOST), mends: () => [] };
  if (!count) reading.note(countFromArea(area.typed, planks));
  if (apart > 0n && sayArea(area.area, saying) !== sayArea(product, saying)) {
    reading.note(areaStands(area.typed, planks, sayArea(product, saying)));
  }
  return { count: planks, area: area.area };
}

// Prices, converted to the price of a carton.

const START = FIGURE_START;
const NAMED = `(?:price|priced|costs?|pay(?:ing)?)(?: ?(?:at|is|of|to be)(?![${LETTER}])| ?[:=])?`;
const WHAT = [
  `(?<foot>${PRICE_SQUARE_FOOT})`,
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
/** "per carton: $58": the unit may come first, unless a count is in front of it. */
const AHEAD = `(?:${START}${NAMED} ?|(?<!(?:\\d|[${LETTER}²]) ?))(?:per|an?|each|the)(?![${LETTER}]) ?(?:${WHAT}) ?[:=]? ?`;
const PRICES = [
  ...AMOUNTS.map((amount) => `${AHEAD}${amount}(?! ?${PER})`),
  ...AMOUNTS.map((amount) => `(?:${START}${NAMED} ?)?${START}${amount}${OF}`),
  `${START}${NAMED} ?(?<figure>${FIGURE})${OF}`,
].map((source) => new RegExp(source));
/** An amount per area without a currency: 2.89/sq ft is probably a price. */
const UNMARKED = new RegExp(
  `${START}(?<figure>${FIGURE}) ?(?:per|/|an?(?![${LETTER}])) ?(?:${PRICE_SQUARE_FOOT}|${SQUARE_METRE})`,
);

/** A price as given: the exact amount in whole units of its currency, and what it is for. */
interface ParsedPrice {
  readonly amount: Ratio;
  readonly currency: string;
  readonly of: 'carton' | 'plank' | 'foot' | 'metre';
  readonly from: number;
  readonly to: number;
}

export function claimPrice(text: string, rest: Unclaimed, reading: Reading): { given?: ParsedPrice; flaws: Flaw[] } {
  const found = rest.claimFirst(PRICES);
  const unmarked = rest.claim(UNMARKED);
  const flaws: Flaw[] = [];
  if (unmarked) {
    const place = placeOf(unmarked);
    const typed = text.slice(place.from, place.to);
    flaws.push({
      ...place,
      expected: found ? priceTwice() : priceMark(),
      mends: () => (found ? [] : [`${markOf(reading.preferences.currency)}${typed}`]),
    });
  }
  if (!found) return { flaws };
  for (let second = rest.claimFirst(PRICES); second; second = rest.claimFirst(PRICES)) {
    flaws.push({ ...placeOf(second), expected: priceTwice(), mends: () => [] });
  }
  const place = placeOf(found);
  const typed = text.slice(place.from, place.to).trim();
  const groups = found.groups ?? {};
  const amount = figureOf(groups.figure ?? '', reading.preferences);
  const flaw = (expected: string, ...mends: string[]) => ({
    flaws: [...flaws, { ...place, expected, mends: () => mends }],
  });
  const { before, after } = groups;
  if (!amount || (before !== undefined && after !== undefined && before !== after)) return flaw(notAPrice());
  if (amount.top > HIGHEST_PRICE * amount.bottom) return flaw(tooHigh(reading));
  const of = (['carton', 'plank', 'foot', 'metre'] as const).find((what) => groups[what] !== undefined);
  if (!of && groups.line === undefined) return flaw(priceOfWhat());
  if (!of) reading.note(footPriceRead(typed));
  const currency = currencyOf(before ?? after, reading.preferences);
  return { given: { amount, currency, of: of ?? 'foot', ...place }, flaws };
}

/** The price of a carton in whole cents, rounded half up once. */
export function cartonPrice(given: ParsedPrice, carton: Carton, reading: Reading): Price | Flaw {
  const [times, parts] = perCarton(given.of, carton);
  const { top, bottom } = given.amount;
  if (top * times > HIGHEST_PRICE * bottom * parts) {
    return { from: given.from, to: given.to, expected: tooHigh(reading), mends: () => [] };
  }
  return { cents: portion(100n * top, times, bottom * parts), currency: given.currency };
}

/** How many of the priced units are in a carton, as a ratio. */
function perCarton(of: ParsedPrice['of'], { count, area }: Carton): readonly [times: Area, parts: Area] {
  if (of === 'foot') return [area, SQUARE_TICKS_PER_SQUARE_FOOT];
  if (of === 'metre') return [area, SQUARE_TICKS_PER_SQUARE_METRE];
  return of === 'plank' ? [BigInt(count), 1n] : [1n, 1n];
}

function tooHigh({ preferences }: Reading): string {
  return priceTooHigh(sayNumber(Number(HIGHEST_PRICE), { units: preferences.units, decimal: preferences.decimal }));
}
