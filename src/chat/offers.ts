/** What an answer offers next, the same on every platform: further asks, choices of a kind, its long parts, its sources. */

import { z } from 'zod';
import type { Action, Block, Reply } from '../reply/reply.ts';

/** A next ask, with its place in the reply's actions: a button carries the place and the answer's id, never the ask. */
export interface Offered {
  readonly place: number;
  readonly action: Action;
}

/** Several asks of one kind, offered as a list under one name. */
export interface Choices {
  readonly name: string;
  readonly offered: readonly Offered[];
}

/** A block with a title, which may stand behind a button where the answer is long: `place` is its place in the blocks. */
export interface ReplyPart {
  readonly place: number;
  readonly title: string;
}

export interface Offers {
  readonly asks: readonly Offered[];
  readonly choices: readonly Choices[];
  readonly parts: readonly ReplyPart[];
  readonly sources: boolean;
}

/** The offers of a reply, in its own order; a choice alone of its kind is an ask like any other. */
export function offersOf(reply: Reply): Offers {
  const offered = reply.actions.map((action, place) => ({ place, action }));
  const names = [...new Set(reply.actions.flatMap(({ among }) => among ?? []))];
  const choices = names
    .map((name) => ({ name, offered: offered.filter(({ action }) => action.among === name) }))
    .filter((choice) => choice.offered.length > 1);
  const listed = new Set(choices.flatMap((choice) => choice.offered));
  return {
    asks: offered.filter((one) => !listed.has(one)),
    choices,
    parts: reply.blocks.flatMap((block, place) => (isPart(block) ? [{ place, title: block.title }] : [])),
    sources: reply.sources.length > 0,
  };
}

/** How doubtful things were read, but for what stands right below the headline. */
export function assumedOf({ assumed, example }: Pick<Reply, 'assumed' | 'example'>): readonly string[] {
  return assumed.filter((line) => line !== example);
}

/** Tables, steps and checklists: what is looked up while working, not read as the answer. */
export function isPart(block: Block): block is Extract<Block, { readonly kind: 'table' | 'steps' | 'checklist' }> {
  return block.kind === 'table' || block.kind === 'steps' || block.kind === 'checklist';
}

// The planks of a comparison by name: what a channel can be asked to choose from.

const comparison = z.object({ choices: z.array(z.object({ name: z.string() })).min(2) });

/** The names in the order told; undefined for any other answer. */
export function comparedPlanks({ data }: Pick<Reply, 'data'>): readonly string[] | undefined {
  if (data.kind !== 'compare') return undefined;
  const read = comparison.safeParse(data);
  return read.success ? read.data.choices.map(({ name }) => name) : undefined;
}
