/** The planks of a comparison by name: what a channel can be asked to choose from. */

import { z } from 'zod';
import type { Reply } from '../reply/reply.ts';

const comparison = z.object({ choices: z.array(z.object({ name: z.string() })).min(2) });

/** The names in the order told; undefined for any other answer. */
export function comparedPlanks({ data }: Pick<Reply, 'data'>): readonly string[] | undefined {
  if (data.kind !== 'compare') return undefined;
  const read = comparison.safeParse(data);
  return read.success ? read.data.choices.map(({ name }) => name) : undefined;
}
