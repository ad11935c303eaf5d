/** A project's needs, asked through the same commands as anybody asks, added up and rounded once. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { type Line, mergeNeeds, type Tally, tally } from '../../../src/project/needs.ts';
import type { Project } from '../../../src/project/project.ts';
import type { Need } from '../../../src/reply/need.ts';
import type { Caution } from '../../../src/reply/reply.ts';
import { SHOPPING, type Untold } from '../../../src/text/shopping-text.ts';
import { asksOnce, filledFrom } from './asked-once.ts';
import { type JobAsk, listAsks } from './shopping-asks.ts';

/** What a list is made of. */
export interface Listed {
  readonly lines: readonly Line[];
  readonly untold: readonly Untold[];
  /** Asks that could not be answered, in words. */
  readonly unread: readonly string[];
  /** Asks that are refused for safety, in words. */
  readonly refused: readonly string[];
  readonly cautions: readonly Caution[];
}

/** What one ask gives to a list. */
type Given = Pick<Listed, 'unread' | 'refused' | 'cautions'> & { readonly needs: readonly Need[] };

/** Answers are worked out once for the same ask of the same project as it is: ticking off does not lay floors again. */
const known = new Map<string, Promise<Given>>();
const MOST_KNOWN = 500;

/** The list of a project, whatever is bought of it. */
export async function listOf(project: Project, context: Context): Promise<Listed> {
  const { asks, untold } = listAsks(project, context);
  const from = await filledFrom(project, context);
  const askAs = await asksOnce(project, context);
  const given: Given[] = [];
  // A reading of moisture needs nothing from the shop.
  const bought = asks.filter(({ name }) => name !== 'prep moisture');
  for (const ask of bought) given.push(await once(`${from}\n${ask.line}`, () => askFor(ask, askAs)));
  const topics = new Map(given.flatMap(({ cautions }) => cautions).map((caution) => [caution.topic, caution]));
  return {
    lines: mergeNeeds(given.flatMap(({ needs }) => needs)),
    untold,
    unread: given.flatMap(({ unread }) => unread),
    refused: given.flatMap(({ refused }) => refused),
    cautions: [...topics.values()],
  };
}

/** The list beside what is bought. */
export function talliesOf({ lines }: Listed, project: Project): readonly Tally[] {
  return tally(lines, project.shopping);
}

async function askFor({ name, line }: JobAsk, askAs: Context['ask']): Promise<Given> {
  const { outcome } = await askAs(guidesOfFloor(line));
  return givenBy(name, outcome);
}

function givenBy(name: string, outcome: Outcome): Given {
  const nothing = { needs: [], unread: [], refused: [], cautions: [] };
  if ('problems' in outcome) {
    const [{ expected }] = outcome.problems;
    return { ...nothing, unread: [SHOPPING.unread(name, expected)] };
  }
  if ('why' in outcome) {
    const { why, call, cautions } = outcome;
    return { ...nothing, refused: [SHOPPING.refused(name, why, call)], cautions };
  }
  return { ...nothing, needs: outcome.needs ?? [], cautions: outcome.cautions };
}

/** The guides of a floor need what its planks do, and compare it with no other pattern, which takes several times as long. */
export function guidesOfFloor(ask: string): string {
  return ask.replace(/^floor planks/, 'floor guides');
}

function once(key: string, work: () => Promise<Given>): Promise<Given> {
  const before = known.get(key);
  if (before) return before;
  const given = work();
  known.set(key, given);
  // What failed is not remembered.
  given.catch(() => known.delete(key));
  const [oldest] = known.keys();
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
  return given;
}
