/** Amounts of money, exact: a symbol or code before or after the number, with either decimal mark; and prices per area. */

import { notAPrice, priceExample, priceMark, priceRead, priceTooHigh } from '../text/floor-problems-text.ts';
import { padPrice } from '../text/floor-text.ts';
import { portion, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import { sayMoney, sayNumber } from './format.ts';
import { numeralAt, type Ratio, valued } from './parse-number.ts';
import { type Preferences, type Price, type Read, type Reading, read, unread } from './reading.ts';
import { LETTER, plainSigns, withoutHidden } from './rooms/room-text.ts';

/** The highest price accepted, in whole units of its currency. */
export const HIGHEST_PRICE = 1_000_000n;
const LONGEST_TEXT = 60;

/** ISO 4217 codes by what people type; a bare $ is the user's own dollar. */
const CURRENCIES: Readonly<Record<string, string>> = {
  us$: 'USD',
  usd: 'USD',
  ca$: 'CAD',
  c$: 'CAD',
  cad: 'CAD',
  au$: 'AUD',
  a$: 'AUD',
  aud: 'AUD',
  '€': 'EUR',
  eur: 'EUR',
  euro: 'EUR',
  euros: 'EUR',
  '£': 'GBP',
  gbp: 'GBP',
  chf: 'CHF',
};

/** A number for money or an area as typed, as a regular expression source for plain text. */
export const FIGURE = '(?:(?<!\\d|\\d[.,])\\d+(?:[.,]\\d+)*|(?<!\\d)\\.\\d+)';

/** A number starts where no letter, digit or decimal mark is directly before it. */
export const FIGURE_START = `(?<![${LETTER}\\d.]|\\d,)`;

/** A currency symbol or code as typed, as a regular expression source for plain text. */
export const MARK = '(?:us\\$|ca\\$|au\\$|c\\$|a\\$|[$€£]|(?:usd|cad|aud|euros?|eur|gbp|chf|dollars?)(?![a-z]))';

const MONEY = new RegExp(`^(?:(?<before>${MARK}) ?)?(?<figure>${FIGURE})(?: ?(?<after>${MARK}))?$`);

/** The currency of a symbol; without one, the user's own. */
export function currencyOf(mark: string | undefined, preferences: Preferences): string {
  const code = CURRENCIES[mark ?? ''];
  if (code) return code;
  if (mark === undefined) return preferences.currency;
  return ['USD', 'CAD', 'AUD'].includes(preferences.currency) ? preferences.currency : 'USD';
}

/** A currency's symbol as written before a number. */
export function markOf(currency: string): string {
  return { USD: '$', EUR: '€', GBP: '£' }[currency] ?? `${currency} `;
}

/** The exact value of a typed number; undefined if its separators don't make sense. */
export function figureOf(typed: string, preferences: Preferences): Ratio | undefined {
  const numeral = numeralAt(typed, 0, false);
  if (!numeral || numeral.end !== typed.length) return undefined;
  const value = valued(numeral, undefined, preferences.decimal);
  return value && 'top' in value ? value : undefined;
}

/**
 * Whole cents, up to 1,000,000 currency units: $58, 31,90 €, CAD 12.50. Fractions of a cent are rounded half up, once,
 * with a note; a missing currency is noted too. Never throws: anything else is a Problem with a price to type instead.
 */
export function readPrice(text: string, reading: Reading): Read<Price> {
  const { option, preferences } = reading;
  const typed = withoutHidden(text.trim(), '\ufffd');
  const got = typed.length > LONGEST_TEXT ? `${[...typed].slice(0, LONGEST_TEXT).join('')}…` : typed;
  const problem = (expected: string) => unread({ option, got, expected, fix: priceExample(preferences.currency) });
  if (typed.length > LONGEST_TEXT) return problem(notAPrice());
  const { before, figure, after } = MONEY.exec(plainSigns(typed))?.groups ?? {};
  if (figure === undefined) return problem(/\d/.test(typed) ? priceMark() : notAPrice());
  const value = figureOf(figure, preferences);
  if (!value || (before !== undefined && after !== undefined && before !== after)) return problem(notAPrice());
  if (value.top > HIGHEST_PRICE * value.bottom) {
    return problem(
      priceTooHigh(sayNumber(Number(HIGHEST_PRICE), { units: preferences.units, decimal: preferences.decimal })),
    );
  }
  const mark = before ?? after;
  const price = { cents: portion(100n, value.top, value.bottom), currency: currencyOf(mark, preferences) };
  const exact = (100n * value.top) % value.bottom === 0n;
  if (mark === undefined || !exact) {
    const saying = { units: preferences.units, decimal: preferences.decimal };
    reading.note(priceRead(typed, sayMoney(price.cents, price.currency, saying)));
  }
  return read(price);
}

/** A price for `per` square ticks. */
export interface AreaPrice {
  readonly price: Price;
  readonly per: bigint;
}

/** `$0.45/sq ft`, `0,90 € per m²`; `none` is undefined. */
export function readPadPrice(text: string, reading: Reading): Read<AreaPrice | undefined> {
  if (/^(?:none|no|0)$/i.test(text.trim())) return read(undefined);
  const typed =
    /^(.+?)(?<!\s)\s*(?:\/|per|a|pro)\s*(sq\.?\s*(?:ft|feet|foot)|square (?:foot|feet)|sqft|ft²|m²|m2|sq\.?\s*m|square met(?:er|re)s?)\.?$/i.exec(
      text.trim(),
    );
  const price = typed?.[1] ? readPrice(typed[1], reading) : undefined;
  if (!typed || !price?.ok) return unread(padPrice(reading.option, text));
  const per = /f/i.test(typed[2] ?? '') ? SQUARE_TICKS_PER_SQUARE_FOOT : SQUARE_TICKS_PER_SQUARE_METRE;
  return read({ price: price.value, per });
}
