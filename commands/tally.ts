/** `tally`: adds up counts and money that a conversation came to, with tax and what somebody else pays, and checks a figure said back. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { COMMON_PRACTICE } from '../src/figures/cited.ts';
import { type Saying, sayArea, sayMoney, sayNumber } from '../src/input/format.ts';
import { percent, text } from '../src/input/options.ts';
import { readCartonArea, readFloorArea } from '../src/input/parse-area.ts';
import { readPercent } from '../src/input/parse-number.ts';
import { readPadPrice, readPrice } from '../src/input/parse-price.ts';
import { type Read, type Reading, read, type Units, unread } from '../src/input/reading.ts';
import { partDone, type Unit, unitNamed, usedIn } from '../src/language/counted.ts';
import { type Fact, type Reply, reply } from '../src/reply/reply.ts';
import { TALLY } from '../src/text/home-text.ts';
import {
  type Area,
  portion,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
  cents as wholeCents,
} from '../src/units/length.ts';

interface Item {
  readonly label: string;
  readonly count?: { readonly value: number; readonly unit: Unit };
  readonly cents?: number;
  readonly currency?: string;
  readonly area?: Area;
  readonly units?: Units;
}

const MOST_ITEMS = 12;
const COUNTED = /^(?<count>\d{1,5}) (?<unit>[a-z]{3,8})(?: (?<how>at|of) (?<each>.+))?$/;
const BY_AREA = /^(?<label>[a-z ]{0,30}?) ?(?<area>\d[\d.,]* ?[^\d]{1,16}?) at (?<price>.+)$/;
const LABELED = /^(?<label>[a-z][a-z ]{0,40}?)?:? ?(?<price>[^a-z ]?[^a-z]*(?: ?[a-z]{3})?)$/;

function readItem(typed: string, reading: Reading): Read<Item> {
  const label = typed.trim();
  const { count, unit = '', how, each = '' } = COUNTED.exec(label.toLowerCase())?.groups ?? {};
  const named = unitNamed(unit);
  if (count !== undefined && named !== undefined) {
    const counted = { value: Number(count), unit: named };
    if (how === undefined) return read({ label, count: counted });
    if (how === 'of') {
      const carton = readCartonArea(each, reading);
      if (!carton.ok) return carton;
      const area = (carton.value?.area ?? 0n) * BigInt(counted.value);
      return read({ label, count: counted, area, ...(carton.value ? { units: carton.value.units } : {}) });
    }
    const price = readPrice(each, reading);
    if (!price.ok) return price;
    return read({ label, count: counted, cents: price.value.cents * counted.value, currency: price.value.currency });
  }
  const square = BY_AREA.exec(label.toLowerCase())?.groups;
  if (square) {
    const area = readFloorArea(square.area ?? '', reading);
    const price = readPadPrice(square.price ?? '', reading);
    if (area.ok && price.ok && price.value) {
      const { cents, currency } = price.value.price;
      return read({ label, cents: portion(BigInt(cents), area.value.area, price.value.per), currency });
    }
  }
  const money = LABELED.exec(label.toLowerCase())?.groups;
  const price = readPrice((money?.price ?? label).trim(), reading);
  return price.ok
    ? read({ label, ...price.value })
    : unread({ option: reading.option, got: label, expected: TALLY.item });
}

function readItems(typed: string, reading: Reading): Read<readonly Item[]> {
  const parts = typed.split(';').filter((part) => part.trim() !== '');
  if (parts.length === 0 || parts.length > MOST_ITEMS)
    return unread({ option: reading.option, got: typed, expected: TALLY.item });
  const items: Item[] = [];
  for (const part of parts) {
    const item = readItem(part, reading);
    if (!item.ok) return item;
    items.push(item.value);
  }
  return read(items);
}

/** A share of it, `after` what the insured pays first; or an amount. */
type Paid = { readonly share: number; readonly after?: number } | { readonly cents: number } | undefined;

function readPaid(typed: string, reading: Reading): Read<Paid> {
  if (/^none$/i.test(typed.trim())) return read(undefined);
  if (typed.includes('%')) {
    const [percentage = '', first] = typed.split(/ after /i);
    const share = readPercent(percentage, reading);
    if (!share.ok) return share;
    const deductible = first === undefined ? undefined : readPrice(first, reading);
    if (deductible && !deductible.ok) return deductible;
    return read({ share: share.value, ...(deductible ? { after: deductible.value.cents } : {}) });
  }
  const price = readPrice(typed, reading);
  return price.ok ? read({ cents: price.value.cents }) : price;
}

interface Claimed {
  readonly value: number;
  readonly money: boolean;
}

function readClaim(typed: string, reading: Reading): Read<Claimed | undefined> {
  const said = typed.trim().toLowerCase();
  if (said === 'none') return read(undefined);
  const count = /^(\d{1,5})(?: [a-z]+)?$/.exec(said)?.[1];
  if (count !== undefined) return read({ value: Number(count), money: false });
  const price = readPrice(said, reading);
  return price.ok ? read({ value: price.value.cents, money: true }) : price;
}

interface Offer {
  readonly cents: number;
  readonly currency: string;
  readonly area: Area;
  readonly units: Units;
}

function readOffers(typed: string, reading: Reading): Read<readonly Offer[]> {
  if (/^none$/i.test(typed.trim())) return read([]);
  const offers: Offer[] = [];
  for (const part of typed.split(';')) {
    const [money = '', covers = ''] = part.split(/ for /i);
    const price = readPrice(money, reading);
    if (!price.ok) return price;
    const area = readCartonArea(covers, reading);
    if (!area.ok) return area;
    if (!area.value) return unread({ option: reading.option, got: part.trim(), expected: TALLY.offer });
    offers.push({ ...price.value, area: area.value.area, units: area.value.units });
  }
  return read(offers);
}

function readDone(typed: string, { option }: Reading): Read<ReturnType<typeof partDone>> {
  const found = partDone(typed.toLowerCase());
  return found || /^none$/i.test(typed.trim()) ? read(found) : unread({ option, got: typed, expected: TALLY.done });
}

function readUsed(typed: string, { option }: Reading): Read<ReturnType<typeof usedIn>> {
  const found = usedIn(`used ${typed.toLowerCase()}`);
  return found || /^none$/i.test(typed.trim()) ? read(found) : unread({ option, got: typed, expected: TALLY.used });
}

interface Sums {
  readonly counts: ReadonlyMap<Unit, readonly number[]>;
  readonly cents?: number;
  readonly currency: string;
  readonly area?: Area;
  readonly units: Units;
}

function summed(items: readonly Item[], currency: string, units: Units): Sums {
  const counts = new Map<Unit, readonly number[]>();
  for (const { count } of items) if (count) counts.set(count.unit, [...(counts.get(count.unit) ?? []), count.value]);
  const priced = items.flatMap(({ cents }) => cents ?? []);
  const areas = items.flatMap(({ area }) => area ?? []);
  return {
    counts,
    currency: items.find((item) => item.currency)?.currency ?? currency,
    units: items.find((item) => item.units)?.units ?? units,
    ...(priced.length > 0 ? { cents: priced.reduce((sum, one) => sum + one, 0) } : {}),
    ...(areas.length > 0 ? { area: areas.reduce((sum, one) => sum + one, 0n) } : {}),
  };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0);
}

type Said = Pick<Reply, 'headline'> & { readonly lines: readonly string[]; readonly facts: readonly Fact[] };

/** Each price by area, cheapest first in words. */
function compared(offers: readonly Offer[], saying: Saying): Said {
  const units = offers[0]?.units ?? 'imperial';
  const square = units === 'metric' ? SQUARE_TICKS_PER_SQUARE_METRE : SQUARE_TICKS_PER_SQUARE_FOOT;
  const each = offers.map(({ cents, area }) => portion(BigInt(cents), square, area));
  const best = each.reduce((least, cents, i) => (cents < (each[least] ?? 0) ? i : least), 0);
  const metric = units === 'metric';
  const say = (cents: number, i: number): string => sayMoney(wholeCents(cents), offers[i]?.currency ?? 'USD', saying);
  const others = each.map((cents, i) => ({ cents, i })).filter(({ i }) => i !== best);
  const even = others.every(({ cents }) => cents === each[best]);
  const facts = offers.map(({ cents, area }, i) => ({
    label: TALLY.nth(i),
    value: `${say(cents, i)} / ${sayArea(area, { ...saying, units })} = ${TALLY.bySquare(say(each[i] ?? 0, i), metric)}`,
  }));
  const lead = TALLY.bySquare(say(each[best] ?? 0, best), metric);
  return {
    headline:
      offers.length === 1
        ? TALLY.one(lead)
        : even
          ? TALLY.even(lead)
          : TALLY.cheaper(
              best,
              lead,
              others.map(({ cents, i }) => TALLY.bySquare(say(cents, i), metric)),
            ),
    lines: facts.map(({ label, value }) => `${label}: ${value}`),
    facts,
  };
}

export default defineCommand({
  name: 'tally',
  summary: 'Adds up boxes, prices and tax, and what you pay of it',
  hidden: true,
  options: z.object({
    items: text(
      { summary: 'Counts and prices, with “;” between them', standard: '0 boxes', example: '7 boxes at $64.99' },
      readItems,
    ),
    'sales-tax': percent({ summary: 'Sales tax', standard: '0%', example: '8.25%' }),
    paid: text({ summary: 'What somebody else pays of it', standard: 'none', example: '$600' }, readPaid),
    check: text({ summary: 'A figure to check', standard: 'none', example: '14' }, readClaim),
    offers: text(
      {
        summary: 'Prices to compare, with what each covers',
        standard: 'none',
        example: '$54.99 for 20 sq ft; $59.98 for 19.63 sq ft',
      },
      readOffers,
    ),
    done: text({ summary: 'How much is done', standard: 'none', example: '8 of 20 rows' }, readDone),
    used: text({ summary: 'How much is used', standard: 'none', example: '6 boxes' }, readUsed),
  }),
  examples: [
    {
      ask: 'tally items: 7 boxes at $64.99, sales-tax: 8.25%',
      headline: '$492.46 for 7 boxes at $64.99, with 8.25% tax.',
    },
    {
      ask: 'tally items: $921.36, paid: $600',
      headline: 'You pay $321.36: $921.36 less $600.00 that is paid for you.',
    },
    { ask: 'tally items: 8 boxes; 6 boxes, check: 14', headline: 'Yes, 14 boxes: 8 + 6.' },
    {
      ask: 'tally offers: $59.98 for 19.63 sq ft; $54.99 for 20 sq ft',
      headline: 'The second is cheaper: $2.75 a sq ft, the first $3.06 a sq ft.',
    },
    {
      ask: 'tally done: 8 of 20 rows, used: 6 boxes',
      headline: '12 of 20 rows left: at this rate 9 boxes more, 15 in all.',
    },
  ],
  run: ({ items, 'sales-tax': tax, paid, check, offers, done, used }, { assumed, preferences, optionTexts }) => {
    const saying: Saying = { units: preferences.units, decimal: preferences.decimal };
    const sums = summed(items, preferences.currency, preferences.units);
    const [counted] = sums.counts;
    const own = { sums, saying, tax };
    const said =
      offers.length > 0
        ? compared(offers, saying)
        : done
          ? progress(done, used, saying)
          : used && counted && counted[0] === used.unit
            ? left(total(counted[1]), used)
            : check
              ? checked(check, own)
              : totalled(items, paid, own);
    const cents = sums.cents === undefined ? undefined : paidBy(withTax(sums.cents, tax), paid).whole;
    return reply({
      headline: said.headline,
      lines: said.lines,
      assumed: optionTexts.size === 0 ? [] : assumed,
      blocks: said.facts.length > 0 ? [{ kind: 'facts', section: 'why', facts: said.facts }] : [],
      ...(done && used ? { sources: [COMMON_PRACTICE] } : {}),
      data: {
        kind: 'tally',
        ...(cents === undefined ? {} : { cents, currency: sums.currency }),
        ...(counted && (total(counted[1]) > 0 || !done) ? { count: total(counted[1]), unit: counted[0] } : {}),
        ...(done && used ? { count: wholeAt(done, used.count) - used.count, unit: used.unit } : {}),
        ...(sums.area === undefined ? {} : { area: Number(sums.area) }),
      },
    });
  },
});

function withTax(cents: number, tax: number): number {
  return portion(BigInt(cents), BigInt(10_000 + tax), 10_000n);
}

/** What is paid for them, at most all of it. */
function paidBy(cents: number, paid: Paid): { readonly whole: number; readonly theirs: number } {
  const theirs =
    paid === undefined
      ? 0
      : 'share' in paid
        ? portion(BigInt(Math.max(0, cents - (paid.after ?? 0))), BigInt(paid.share), 10_000n)
        : paid.cents;
  return { whole: cents, theirs: Math.min(theirs, cents) };
}

interface Sum {
  readonly sums: Sums;
  readonly saying: Saying;
  readonly tax: number;
}

/** What all of it takes at the rate of what is done. */
function wholeAt({ some, all }: { readonly some: number; readonly all: number }, used: number): number {
  return some === 0 ? used : Math.ceil((used * all) / some);
}

function progress(
  { some, all, unit }: NonNullable<ReturnType<typeof partDone>>,
  used: ReturnType<typeof usedIn>,
  saying: Saying,
): Said {
  const rest = all - some;
  const share = `${sayNumber((100 * rest) / all, saying, 0)}%`;
  const whole = used && some > 0 ? wholeAt({ some, all }, used.count) : undefined;
  return {
    headline:
      used && whole !== undefined
        ? TALLY.rate(rest, all, unit, whole - used.count, whole, used.unit)
        : TALLY.left(rest, all, unit, share),
    lines: used ? [TALLY.rateHow] : [TALLY.saidUsed],
    facts: [],
  };
}

function left(all: number, { count, unit }: NonNullable<ReturnType<typeof usedIn>>): Said {
  return {
    headline: all >= count ? TALLY.unused(all - count, all, unit) : TALLY.over(count, all, unit),
    lines: [],
    facts: [],
  };
}

function checked({ value, money }: Claimed, { sums, saying, tax }: Sum): Said {
  const [counted] = sums.counts;
  if (money || !counted) {
    const cents = withTax(sums.cents ?? 0, tax);
    const say = (amount: number): string => sayMoney(wholeCents(amount), sums.currency, saying);
    // Whole dollars are near enough for a figure said aloud.
    const said = money ? value : value * 100;
    const near = Math.abs(said - cents) < 100;
    return {
      headline: near
        ? TALLY.yes(say(cents), [])
        : TALLY.no(say(cents), say(Math.abs(cents - said)), said > cents, say(said)),
      lines: [],
      facts: [],
    };
  }
  const [unit, values] = counted;
  const all = total(values);
  const parts = values.map((one) => sayNumber(one, saying));
  const say = (count: number): string => TALLY.count(count, unit);
  return {
    headline:
      value === all
        ? TALLY.yes(say(all), parts)
        : TALLY.no(say(all), say(Math.abs(all - value)), value > all, `${value}`),
    lines: value === all || parts.length < 2 ? [] : [TALLY.parts(parts)],
    facts: [],
  };
}

function totalled(items: readonly Item[], paid: Paid, { sums, saying, tax }: Sum): Said {
  const share = `${sayNumber(tax / 100, saying)}%`;
  const labels = items.map(({ label }) => label);
  if (sums.cents !== undefined) {
    const say = (amount: number): string => sayMoney(wholeCents(amount), sums.currency, saying);
    const { whole, theirs } = paidBy(withTax(sums.cents, tax), paid);
    const facts = items.flatMap(({ label, cents }) => (cents === undefined ? [] : [{ label, value: say(cents) }]));
    const of = labels.filter((label) => !/^[^a-z]*$/i.test(label));
    return {
      headline: paid
        ? TALLY.yours(say(whole - theirs), say(whole), say(theirs))
        : TALLY.money(say(whole), of, tax > 0 ? share : undefined),
      lines: [
        ...(facts.length > 1 || tax > 0
          ? [
              TALLY.parts([
                ...facts.map(({ value }) => value),
                ...(tax > 0 ? [TALLY.tax(say(whole - sums.cents))] : []),
              ]),
            ]
          : []),
        ...(paid || tax > 0 ? [] : [TALLY.more]),
      ],
      facts,
    };
  }
  const [counted] = sums.counts;
  const count = counted ? TALLY.count(total(counted[1]), counted[0]) : '';
  if (sums.area !== undefined) {
    return {
      headline: TALLY.covers(count, sayArea(sums.area, { ...saying, units: sums.units })),
      lines: [TALLY.saidRoom],
      facts: [],
    };
  }
  return {
    headline: TALLY.inAll(
      count,
      (counted?.[1] ?? []).map((one) => sayNumber(one, saying)),
    ),
    lines: [TALLY.saidPrice],
    facts: [],
  };
}
