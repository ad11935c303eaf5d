/** What an answer offers next, the same on every platform: further requests, choices, long parts, sources. */

import { z } from 'zod';
import { fullName } from '../input/command-shape.ts';
import { examplePlank, isExamplePlank } from '../input/parse-plank.ts';
import type { Preferences } from '../input/reading.ts';
import type { Action, Block, Reply } from '../reply/reply.ts';
import { REASON, REASONS } from '../text/handbook-text.ts';
import { exampleTaken } from '../text/reader-text.ts';
import type { Command, Outcome } from './command.ts';
import type { ParsedCommand } from './command-line.ts';

/**
 * A further request by its index in the reply's actions: a button carries the index and the answer's id, never the
 * text.
 */
export interface Offered {
  readonly place: number;
  readonly action: Action;
}

/** Several requests of one kind, offered as a list. */
export interface Choices {
  readonly name: string;
  readonly offered: readonly Offered[];
}

/** A block with a title, which may go behind a button in a long answer; `place` is its index in the blocks. */
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

/** In the reply's own order; a list with a single choice becomes an ordinary request. */
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

/** The handbook’s entries behind the figures of an answer, each as a request. */
export function reasonActions({ reasons = [] }: Pick<Reply, 'reasons'>): readonly Action[] {
  return reasons.map(({ entry, figure }) => ({
    label: REASON.label([figure, reasons.length === 1 && figure ? '' : REASONS[entry]].filter(Boolean).join(' ')),
    ask: `handbook entry: ${entry}`,
    among: REASON.list,
  }));
}

/** “Why stagger”, as answers offer it in a terminal. */
export function reasonTyped(text: string, commands: readonly Command[]): ParsedCommand | undefined {
  const word = REASON.typed.exec(text.trim())?.[1]?.toLowerCase();
  const entry = Object.keys(REASONS).find((id) => REASONS[id] === word);
  const command = commands.find((one) => fullName(one) === 'handbook');
  return entry === undefined || !command ? undefined : { ok: true, command, optionTexts: new Map([['entry', entry]]) };
}

/** An answer with an example plank says so first and has no shopping list. */
export function withExample(
  outcome: Outcome,
  optionTexts: ReadonlyMap<string, string>,
  preferences: Preferences,
): Outcome {
  if (!('headline' in outcome) || !isExamplePlank(optionTexts.get('plank') ?? '')) return outcome;
  const { needs: _needs, reasons: _reasons, ...reply } = outcome;
  const example = exampleTaken(examplePlank(preferences));
  // Follow-up requests would use the example plank too, and their buttons would not say so.
  return { ...reply, example, assumed: [example, ...reply.assumed], actions: [] };
}

/** All assumptions except the one shown right below the headline. */
export function assumedOf({ assumed, example }: Pick<Reply, 'assumed' | 'example'>): readonly string[] {
  return assumed.filter((line) => line !== example);
}

/** Tables, steps and checklists: looked up while working, not read as the answer. */
export function isPart(block: Block): block is Extract<Block, { readonly kind: 'table' | 'steps' | 'checklist' }> {
  return block.kind === 'table' || block.kind === 'steps' || block.kind === 'checklist';
}

const comparison = z.object({ choices: z.array(z.object({ name: z.string() })).min(2) });

/** The names of the planks compared, in order; undefined for any other answer. */
export function comparedPlanks({ data }: Pick<Reply, 'data'>): readonly string[] | undefined {
  if (data.kind !== 'compare') return undefined;
  const read = comparison.safeParse(data);
  return read.success ? read.data.choices.map(({ name }) => name) : undefined;
}
