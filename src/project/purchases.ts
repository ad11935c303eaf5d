/** Purchases of a project with prices and lots, and which packages are opened. */

import { z } from 'zod';
import { STAGES } from '../reply/need.ts';
import { payerSchema, signedSchema } from './project-limits.ts';

export const MOST_BOUGHT = 500;

/** Tolerance for floating-point sums. */
const NOISE = 1e-9;

const amount = z.number().positive().max(Number.MAX_SAFE_INTEGER);

/** `amount` is in the need's unit; `cents` is for all of it. */
const boughtSchema = z.object({
  item: z.string().min(1).max(200),
  label: z.string().min(1).max(200),
  stage: z.enum(STAGES),
  unit: z.enum(['count', 'length', 'area', 'volume', 'weight']),
  amount,
  /** Whole packages, if it is sold in packages, and the content of each. */
  packages: z
    .strictObject({ count: z.int().positive(), size: amount, label: z.string(), labels: z.string() })
    .optional(),
  cost: z.object({ cents: z.int().nonnegative(), currency: z.string().length(3) }).optional(),
  lot: z.string().min(1).max(40).optional(),
  payer: payerSchema.optional(),
  /** Milliseconds since 1970. */
  at: z.number(),
  by: signedSchema.optional(),
});

export const shoppingSchema = z.object({
  bought: z.array(boughtSchema).max(MOST_BOUGHT).readonly(),
  opened: z.record(z.string(), z.int().nonnegative()),
});

export type Bought = z.infer<typeof boughtSchema>;
export type Shopping = z.infer<typeof shoppingSchema>;

export const EMPTY_SHOPPING: Shopping = { bought: [], opened: {} };

/** Adds a purchase at the end. Throws a RangeError beyond the limit. */
export function buy(shopping: Shopping, bought: Bought): Shopping {
  if (shopping.bought.length >= MOST_BOUGHT) throw new RangeError('too many purchases');
  return { ...shopping, bought: [...shopping.bought, bought] };
}

/** Returns an amount of an item, latest purchases first; the unit prices stay. More than was bought means all of it. */
export function giveBack(shopping: Shopping, item: string, amount: number): Shopping {
  let left = amount;
  const bought = [...shopping.bought].reverse().flatMap((one): Bought[] => {
    if (one.item !== item || left <= 0) return [one];
    const kept = one.amount - Math.min(left, one.amount);
    left -= one.amount - kept;
    if (kept <= NOISE * one.amount) return [];
    const { packages, cost, ...rest } = one;
    const count = packages && Math.round(kept / packages.size);
    return [
      {
        ...rest,
        amount: kept,
        ...(packages && count && { packages: { ...packages, count } }),
        ...(cost && { cost: { ...cost, cents: Math.round((cost.cents * kept) / one.amount) } }),
      },
    ];
  });
  return { ...shopping, bought: bought.reverse() };
}

export function unbuyAll(shopping: Shopping, item: string): Shopping {
  return { ...open(shopping, item, 0), bought: shopping.bought.filter((one) => one.item !== item) };
}

/** The last purchase of an item that is only a check mark: no price, lot or payer. */
export function lastTick({ bought }: Shopping, item: string): Bought | undefined {
  return bought.filter((one) => one.item === item && !one.cost && one.lot === undefined && !one.payer).at(-1);
}

/** Removes that check mark if it still exists; other purchases stay. */
export function untick(shopping: Shopping, { item, at, amount }: Bought): Shopping {
  const last = lastTick(shopping, item);
  if (last?.at !== at || last.amount !== amount) return shopping;
  return { ...shopping, bought: shopping.bought.filter((one) => one !== last) };
}

/** Sets how many packages of an item are open; zero removes the entry. */
export function open(shopping: Shopping, item: string, packages: number): Shopping {
  const { [item]: _, ...others } = shopping.opened;
  return { ...shopping, opened: packages > 0 ? { ...others, [item]: packages } : others };
}

/** The amount bought of an item, in its unit. */
export function boughtOf({ bought }: Shopping, item: string): number {
  return bought.reduce((sum, one) => (one.item === item ? sum + one.amount : sum), 0);
}

/** Distinct lots of an item, in purchase order. */
export function lotsOf({ bought }: Shopping, item: string): readonly string[] {
  const lots = bought.flatMap(({ item: of, lot }) => (of === item && lot !== undefined ? [lot] : []));
  return lots.filter((lot, i) => lots.findIndex((one) => one.toLowerCase() === lot.toLowerCase()) === i);
}
