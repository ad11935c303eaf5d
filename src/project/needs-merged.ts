/** Needs of a whole job added up: one line an item, rounded up once to what is sold. */

import { type Need, type Package, type PackagePrice, STAGES } from '../reply/need.ts';
import { type Cents, cents, portion, roundUp } from '../units/length.ts';

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
