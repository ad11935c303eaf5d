/** A list of needs beside what is bought: what is left to buy, and what may go back. */

import { type Need, type Package, type PackagePrice, STAGES } from '../reply/need.ts';
import { type Cents, cents, portion, roundUp } from '../units/length.ts';
import { type Bought, boughtOf, lotsOf, type Shopping } from './purchases.ts';

// Needs of a whole job added up: one line an item, rounded up once to what is sold.

/** One item of the list: `amount` exact, `count` whole packages where it is sold in packages. */
export interface Line extends Pick<Need, 'item' | 'label' | 'stage'> {
  readonly unit: Need['quantity']['unit'];
  readonly amount: number;
  readonly package?: Package;
  readonly count?: number;
  readonly price?: PackagePrice;
  readonly rooms: readonly string[];
  readonly notes: readonly string[];
}

/**
 * Needs of one item (and one unit) added up, then ⌈amount ÷ package⌉ once. Where packages differ the first told is taken, since
 * amounts do not depend on them; of several prices for it the highest. By stage, then in the order told.
 */
export function mergeNeeds(needs: readonly Need[]): readonly Line[] {
  const groups = new Map<string, Need[]>();
  for (const need of needs) {
    const key = JSON.stringify([need.item, need.quantity.unit]);
    groups.set(key, [...(groups.get(key) ?? []), need]);
  }
  const lines = [...groups.values()].map(lineOf);
  return STAGES.flatMap((stage) => lines.filter((line) => line.stage === stage));
}

/** What a line costs, tax included, in whole cents; undefined where no price is told or it is not sold in packages. */
export function lineCost({ count, price }: Pick<Line, 'count' | 'price'>): Cents | undefined {
  if (count === undefined || price === undefined) return undefined;
  const net = count * price.cents;
  return cents(net + portion(BigInt(net), BigInt(price.tax ?? 0), 10_000n));
}

function lineOf(needs: readonly Need[]): Line {
  const [first] = needs;
  if (!first) throw new RangeError('a line of nothing');
  const amount = needs.reduce((sum, { quantity }) => sum + quantity.amount, 0);
  const sold = needs.find((need) => need.package)?.package;
  const prices = needs.flatMap(({ price, package: of }) => (price && of?.size === sold?.size ? [price] : []));
  const [price, ...others] = prices;
  const dearest = others.reduce((most, one) => (one.cents > (most?.cents ?? 0) ? one : most), price);
  const once = (texts: readonly (string | undefined)[]): readonly string[] => [
    ...new Set(texts.filter((text) => text !== undefined)),
  ];
  return {
    item: first.item,
    label: first.label,
    stage: STAGES.find((stage) => needs.some((need) => need.stage === stage)) ?? first.stage,
    unit: first.quantity.unit,
    amount,
    ...(sold && { package: sold, count: roundUp(amount / sold.size) }),
    ...(dearest && { price: dearest }),
    rooms: once(needs.map(({ room }) => room)),
    notes: once(needs.map(({ note }) => note)),
  };
}

/** One item. Packages are whole; amounts exact, in the unit of the need. */
export interface Tally extends Line {
  readonly bought: number;
  /** Left to buy: packages where it is sold in packages. */
  readonly left: number;
  /** Whole packages bought beyond what is needed. */
  readonly over: number;
  /** Of those, what is not told as opened. */
  readonly back: number;
  readonly lots: readonly string[];
}

/** What floating sums may differ by. */
const NOISE = 1e-9;

/** Each line with what is bought of it, then what is bought and not needed any more. */
export function tally(lines: readonly Line[], shopping: Shopping): readonly Tally[] {
  const needed = lines.map((line) => tallyOf(line, shopping));
  const known = new Set(lines.map(({ item }) => item));
  const orphans = [...new Map(shopping.bought.map((one) => [one.item, one])).values()].filter(
    ({ item }) => !known.has(item),
  );
  return [...needed, ...orphans.map((one) => tallyOf(emptyLine(one), shopping))];
}

function tallyOf(line: Line, shopping: Shopping): Tally {
  const size = line.package?.size;
  const bought = boughtOf(shopping, line.item);
  const missing = Math.max(0, line.amount - bought);
  const left = size === undefined ? (missing > NOISE * line.amount ? missing : 0) : roundUp(missing / size);
  const packages = shopping.bought.reduce(
    (sum, { item, packages: given }) => (item === line.item ? sum + (given?.count ?? 0) : sum),
    0,
  );
  const needed = size === undefined ? 0 : roundUp(line.amount / size);
  const whole = size === undefined ? 0 : Math.floor(bought / size + NOISE);
  const over = Math.max(0, Math.min(packages, whole - needed));
  const opened = shopping.opened[line.item] ?? 0;
  return {
    ...line,
    bought,
    left,
    over,
    back: Math.max(0, Math.min(over, packages - opened)),
    lots: lotsOf(shopping, line.item),
  };
}

/** An item that was bought and that nothing needs any more. */
function emptyLine({ item, label, stage, unit, packages }: Bought): Line {
  return {
    item,
    label,
    stage,
    unit,
    amount: 0,
    ...(packages && { package: { size: packages.size, label: packages.label, labels: packages.labels }, count: 0 }),
    rooms: [],
    notes: [],
  };
}
