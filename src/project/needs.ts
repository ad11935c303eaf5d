/** The shopping list: needs added up, compared with purchases, and what can be returned. */

import { type Need, type Package, type PackagePrice, STAGES } from '../reply/need.ts';
import { type Cents, cents, portion, roundUp } from '../units/length.ts';
import { type Bought, boughtOf, lotsOf, type Shopping } from './purchases.ts';

// Adding up the needs of a whole job: one line per item, rounded up once to what is sold.

/** One item: `amount` is exact, `count` whole packages if it is sold in packages. */
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
 * Adds up needs by item and unit, then rounds ⌈amount ÷ package⌉ once. If packages differ, the first is used, since
 * amounts don't depend on them; of several prices for it, the highest. Sorted by stage, then in the given order.
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

/** Cost of a line in whole cents, tax included; undefined without a price or if it isn't sold in packages. */
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

/** Packages are whole; amounts are exact, in the need's unit. */
export interface Tally extends Line {
  readonly bought: number;
  /** Still to buy: in packages if it is sold in packages. */
  readonly left: number;
  /** Whole packages bought beyond the need. */
  readonly over: number;
  /** Of those, the unopened ones. */
  readonly back: number;
  readonly lots: readonly string[];
}

/** Tolerance for floating-point sums. */
const NOISE = 1e-9;

/** Each line with what was bought, then items bought that are no longer needed. */
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
