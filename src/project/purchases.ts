/** What a project has bought, with prices, lots and opened packages, what else it spent, its budget and who pays. */

import { z } from 'zod';
import { STAGES } from '../reply/need.ts';
import { type OtherPayer, otherPayerSchema, payerSchema, signedSchema } from './project-limits.ts';

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

export const MOST_ENTRIES = 500;

/** Limit on agreements: both payers' amounts and shares, and every stage. */
const MOST_COVERS = 40;

const currency = z.string().length(3);
const stageSchema = z.enum([...STAGES, 'tools', 'other']);

const entrySchema = z.object({
  what: z.string().min(1).max(200),
  /** Whole cents; negative for a refund. */
  cents: z.int(),
  currency,
  stage: stageSchema,
  payer: payerSchema,
  /** Milliseconds since 1970. */
  at: z.number(),
});

/** What someone else agreed to pay: an amount, a share of the total in hundredths of a percent, or a whole stage. */
const coverSchema = z
  .discriminatedUnion('kind', [
    z.object({ kind: z.literal('amount'), payer: otherPayerSchema, cents: z.int().positive(), currency }),
    z.object({ kind: z.literal('part'), payer: otherPayerSchema, part: z.int().min(1).max(10_000) }),
    z.object({ kind: z.literal('stage'), payer: otherPayerSchema, stage: stageSchema }),
  ])
  .readonly();

export const spendSchema = z.object({
  budget: z.object({ cents: z.int().positive(), currency }).optional(),
  entries: z.array(entrySchema).max(MOST_ENTRIES).readonly(),
  covers: z.array(coverSchema).max(MOST_COVERS).readonly().optional(),
});

export type SpendEntry = z.infer<typeof entrySchema>;
export type SpendStage = SpendEntry['stage'];
export type Spend = z.infer<typeof spendSchema>;
export type Cover = z.infer<typeof coverSchema>;

export const EMPTY_SPEND: Spend = { entries: [] };

/** Adds an entry at the end. Throws a RangeError beyond the limit. */
export function addEntry(spend: Spend, entry: SpendEntry): Spend {
  if (spend.entries.length >= MOST_ENTRIES) throw new RangeError('too many entries');
  return { ...spend, entries: [...spend.entries, entry] };
}

/** Removes the entry at an index from 0; unchanged if there is none. */
export function removeEntry(spend: Spend, at: number): Spend {
  return { ...spend, entries: spend.entries.filter((_, i) => i !== at) };
}

/** Sets the budget; undefined removes it. */
export function setBudget({ budget: _before, ...spend }: Spend, budget: Spend['budget']): Spend {
  return budget === undefined ? spend : { budget, ...spend };
}

/** Adds an agreement: an amount or share replaces the previous one, a stage is added to the others. */
export function addCover(spend: Spend, cover: Cover): Spend {
  const replaced = (one: Cover): boolean =>
    one.payer === cover.payer &&
    (one.kind === 'stage' ? cover.kind === 'stage' && one.stage === cover.stage : cover.kind !== 'stage');
  const others = (spend.covers ?? []).filter((one) => !replaced(one));
  return { ...spend, covers: [...others, cover].slice(-MOST_COVERS) };
}

export function dropCovers({ covers = [], ...spend }: Spend, payer: OtherPayer): Spend {
  const others = covers.filter((one) => one.payer !== payer);
  return others.length === 0 ? spend : { ...spend, covers: others };
}
