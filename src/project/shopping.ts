/** What of a project is bought, at what price and of which lot, and what of it is opened. */

import { z } from 'zod';
import { STAGES } from '../reply/stage.ts';
import { payerSchema } from './payer.ts';

/** The most purchases that a project keeps. */
export const MOST_BOUGHT = 500;

const amount = z.number().positive().max(Number.MAX_SAFE_INTEGER);

/** One purchase: `amount` in the unit of the need, `cents` for all of it. */
const boughtSchema = z.object({
  item: z.string().min(1).max(200),
  label: z.string().min(1).max(200),
  stage: z.enum(STAGES),
  unit: z.enum(['count', 'length', 'area', 'volume', 'weight']),
  amount,
  /** Whole packages, where it is sold in packages, and what one holds. */
  packages: z
    .strictObject({ count: z.int().positive(), size: amount, label: z.string(), labels: z.string() })
    .optional(),
  cost: z.object({ cents: z.int().nonnegative(), currency: z.string().length(3) }).optional(),
  lot: z.string().min(1).max(40).optional(),
  payer: payerSchema.optional(),
  /** Milliseconds since 1970. */
  at: z.number(),
});

export const shoppingSchema = z.object({
  bought: z.array(boughtSchema).max(MOST_BOUGHT).readonly(),
  /** Packages opened, by item. */
  opened: z.record(z.string(), z.int().nonnegative()),
});

export type Bought = z.infer<typeof boughtSchema>;
export type Shopping = z.infer<typeof shoppingSchema>;

export const EMPTY_SHOPPING: Shopping = { bought: [], opened: {} };

/** With one purchase more, the latest last. Throws a RangeError past the most that are kept. */
export function buy(shopping: Shopping, bought: Bought): Shopping {
  if (shopping.bought.length >= MOST_BOUGHT) throw new RangeError('too many purchases');
  return { ...shopping, bought: [...shopping.bought, bought] };
}

/** Without the purchase at a place, counted from 0; the same where there is none. */
export function unbuy(shopping: Shopping, at: number): Shopping {
  return { ...shopping, bought: shopping.bought.filter((_, i) => i !== at) };
}

/** With as many packages of an item told as opened; none of it forgets the item. */
export function open(shopping: Shopping, item: string, packages: number): Shopping {
  const { [item]: _, ...others } = shopping.opened;
  return { ...shopping, opened: packages > 0 ? { ...others, [item]: packages } : others };
}

/** The amount bought of an item, in its unit. */
export function boughtOf({ bought }: Shopping, item: string): number {
  return bought.reduce((sum, one) => (one.item === item ? sum + one.amount : sum), 0);
}

/** The lots bought of an item, each once, in the order bought. */
export function lotsOf({ bought }: Shopping, item: string): readonly string[] {
  const lots = bought.flatMap(({ item: of, lot }) => (of === item && lot !== undefined ? [lot] : []));
  return lots.filter((lot, i) => lots.findIndex((one) => one.toLowerCase() === lot.toLowerCase()) === i);
}
