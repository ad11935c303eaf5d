/** What a project has cost so far besides what its shopping list tells, and what it may cost. */

import { z } from 'zod';
import { STAGES } from '../reply/stage.ts';
import { payerSchema } from './payer.ts';

/** The most entries that a project keeps. */
export const MOST_ENTRIES = 500;

const currency = z.string().length(3);

const entrySchema = z.object({
  what: z.string().min(1).max(200),
  /** Whole cents; less than zero for a refund. */
  cents: z.int(),
  currency,
  stage: z.enum([...STAGES, 'tools', 'other']),
  payer: payerSchema,
  /** Milliseconds since 1970. */
  at: z.number(),
});

export const spendSchema = z.object({
  budget: z.object({ cents: z.int().positive(), currency }).optional(),
  entries: z.array(entrySchema).max(MOST_ENTRIES).readonly(),
});

export type SpendEntry = z.infer<typeof entrySchema>;
export type SpendStage = SpendEntry['stage'];
export type Spend = z.infer<typeof spendSchema>;

export const EMPTY_SPEND: Spend = { entries: [] };

/** With one entry more, the latest last. Throws a RangeError past the most that are kept. */
export function addEntry(spend: Spend, entry: SpendEntry): Spend {
  if (spend.entries.length >= MOST_ENTRIES) throw new RangeError('too many entries');
  return { ...spend, entries: [...spend.entries, entry] };
}

/** Without the entry at a place, counted from 0; the same where there is none. */
export function removeEntry(spend: Spend, at: number): Spend {
  return { ...spend, entries: spend.entries.filter((_, i) => i !== at) };
}

/** With this budget; without one for undefined. */
export function setBudget({ entries }: Spend, budget: Spend['budget']): Spend {
  return budget === undefined ? { entries } : { budget, entries };
}
