/** The shopping list (needs added up, compared with purchases, what can be returned) and what a project costs by stage. */

import { type Need, type Package, type PackagePrice, STAGES } from '../reply/need.ts';
import { type Cents, cents, portion, roundUp } from '../units/length.ts';
import { PAYERS, type Payer } from './project-limits.ts';
import { type Bought, boughtOf, lotsOf, type Shopping, type Spend, type SpendStage } from './purchases.ts';

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

/** Whole cents of one currency. */
interface StageCost {
  readonly stage: SpendStage;
  /** Everything on the list, at known prices. */
  readonly estimate: number;
  readonly spent: number;
  readonly left: number;
}

export interface SpendSummary {
  readonly stages: readonly StageCost[];
  readonly spent: number;
  readonly left: number;
  /** Spent plus still to buy. */
  readonly expected: number;
  readonly payers: Readonly<Record<Payer, number>>;
  /** What each payer pays of the expected total, as agreed; undefined without agreements. */
  readonly shares: Readonly<Record<Payer, number>> | undefined;
  readonly budget: number | undefined;
  readonly verdict: 'within' | 'near' | 'past' | undefined;
  /** Items still to buy that have no price in this currency. */
  readonly unpriced: number;
}

/** Above this share of the budget it counts as nearly used up. */
const NEAR = 0.9;

/** Sums in one currency; amounts in others are left out. A purchase without a payer is the user's own. */
export function summarise(tallies: readonly Tally[], shopping: Shopping, spend: Spend, currency: string): SpendSummary {
  const entries = spend.entries.filter((one) => one.currency === currency);
  const bought = shopping.bought.flatMap(({ cost, stage, payer }) =>
    cost?.currency === currency ? [{ stage, cents: cost.cents, payer: payer ?? ('self' as const) }] : [],
  );
  const paid: readonly { stage: SpendStage; cents: number; payer: Payer }[] = [...bought, ...entries];
  const priced = tallies.filter(({ price }) => price?.currency === currency);
  const costOf = (one: Tally, count: number | undefined): number =>
    lineCost({ ...one, ...(count !== undefined && { count }) }) ?? 0;
  const stages = [...STAGES, 'tools', 'other'].map((stage): StageCost => {
    const own = priced.filter((one) => one.stage === stage);
    return {
      stage: stage as SpendStage,
      estimate: sum(own.map((one) => costOf(one, one.count))),
      spent: sum(paid.filter((one) => one.stage === stage).map(({ cents }) => cents)),
      left: sum(own.map((one) => (one.package ? costOf(one, one.left) : 0))),
    };
  });
  const spent = sum(stages.map((one) => one.spent));
  const left = sum(stages.map((one) => one.left));
  const budget = spend.budget?.currency === currency ? spend.budget.cents : undefined;
  const expected = spent + left;
  const payers = Object.fromEntries(
    PAYERS.map((payer) => [payer, sum(paid.filter((one) => one.payer === payer).map(({ cents }) => cents))]),
  ) as Record<Payer, number>;
  return {
    stages: stages.filter((one) => one.estimate !== 0 || one.spent !== 0),
    spent,
    left,
    expected,
    payers,
    shares: sharesOf(spend, stages, paid, expected, currency),
    budget,
    verdict:
      budget === undefined ? undefined : expected > budget ? 'past' : expected >= NEAR * budget ? 'near' : 'within',
    unpriced: tallies.filter((one) => one.left > 0 && !(one.package && priced.includes(one))).length,
  };
}

/**
 * Who pays what of the expected total. A stage someone covers is theirs entirely. Amounts and shares of the whole come
 * on top, reduced by what they already paid for other stages. Nobody pays more than the total.
 */
function sharesOf(
  { covers = [] }: Spend,
  stages: readonly StageCost[],
  paid: readonly { readonly stage: SpendStage; readonly cents: number; readonly payer: Payer }[],
  expected: number,
  currency: string,
): SpendSummary['shares'] {
  const counted = covers.filter((one) => one.kind !== 'amount' || one.currency === currency);
  if (counted.length === 0) return undefined;
  let rest = Math.max(0, expected);
  const shares: Record<Payer, number> = { self: 0, insurer: 0, landlord: 0 };
  for (const payer of PAYERS.filter((one) => one !== 'self')) {
    const own = counted.filter((one) => one.payer === payer);
    const whole = new Set(own.flatMap((one) => (one.kind === 'stage' ? [one.stage] : [])));
    const ofStages = sum(stages.flatMap((one) => (whole.has(one.stage) ? [one.spent + one.left] : [])));
    const agreed = sum(
      own.map((one) =>
        one.kind === 'amount' ? one.cents : one.kind === 'part' ? Math.round((expected * one.part) / 10_000) : 0,
      ),
    );
    const already = sum(paid.flatMap((one) => (one.payer === payer && !whole.has(one.stage) ? [one.cents] : [])));
    const share = Math.max(0, Math.min(rest, ofStages + Math.max(agreed, already)));
    shares[payer] = share;
    rest -= share;
  }
  return { ...shares, self: rest };
}

function sum(cents: readonly number[]): number {
  return cents.reduce((total, one) => total + one, 0);
}
