/** Spending outside the shopping list, the budget, and agreements on who pays. */

import { z } from 'zod';
import { STAGES } from '../reply/need.ts';
import { type OtherPayer, otherPayerSchema, payerSchema } from './project-limits.ts';

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
