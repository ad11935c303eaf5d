/** What a project adds to an answer: the offer to save it and the changes others made. Also remembers the request. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { keepRecent, recentOf, withAnswered } from '../accounts/records.ts';
import { isCalculating } from '../input/command-shape.ts';
import { LIMITS } from '../project/project-limits.ts';
import type { Block, Reply } from '../reply/reply.ts';
import { Outage } from '../storage/types.ts';
import { KEEP_LABEL, NEWS_TITLE, sayAgo, takenBack } from '../text/project-text.ts';
import type { Command } from './command.ts';
import { LONGEST_ASK } from './command-line.ts';
import type { Ports } from './ports.ts';
import { faultReference } from './request-id.ts';
import type { UserState } from './user-state.ts';

/** A request and how it was answered. */
interface AnsweredAsk {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly typed: ReadonlyMap<string, string>;
  readonly line: string;
}

const MOST_NEWS = 5;

/** Adds the offer to save the answer, and the changes others made in its project. */
export function offering(reply: Reply, ask: AnsweredAsk, { news }: UserState, now: number): Reply {
  const keep = `project keep ${ask.line}`;
  const actions =
    isCalculating(ask.command) && reply.example === undefined && keep.length <= LONGEST_ASK
      ? [...reply.actions, { label: KEEP_LABEL, ask: keep }]
      : reply.actions;
  const facts = news.slice(-MOST_NEWS).map(({ said, at, takenBack: back }) => ({
    label: sayAgo(now - at),
    value: back ? takenBack(said) : said,
  }));
  const block: readonly Block[] =
    touchesProject(ask) && facts.length > 0 ? [{ kind: 'facts', title: NEWS_TITLE, facts }] : [];
  return { ...reply, blocks: [...block, ...reply.blocks], actions };
}

/** Remembers the request and what was seen of the project. Never throws: the answer doesn't depend on it. */
export async function remembered(
  ask: AnsweredAsk,
  { headline }: Reply,
  access: ProjectAccess,
  ports: Ports,
): Promise<void> {
  const { store } = ports;
  const project = touchesProject(ask) ? await quietly(() => access.inUse(), ports) : undefined;
  if (!store || (!isCalculating(ask.command) && !project)) return;
  await quietly(async () => {
    const before = await recentOf(store.kept, access.via);
    const at = access.now();
    const requested = isCalculating(ask.command)
      ? {
          ...withAnswered(before, ask.typed, at),
          last: { line: ask.line, headline: headline.slice(0, LIMITS.headline), at },
        }
      : before;
    const seen = project ? { ...requested.seen, [project.id]: project.count } : requested.seen;
    await keepRecent(store.kept, access.via, { ...requested, seen });
  }, ports);
}

/** Whether the answer belongs to the open project: a project command, or a request it filled in. */
function touchesProject({ command, optionTexts, typed }: AnsweredAsk): boolean {
  return command.group === 'project' || [...optionTexts].some(([option, text]) => typed.get(option) !== text);
}

async function quietly<T>(permission: () => Promise<T>, ports: Ports): Promise<T | undefined> {
  try {
    return await permission();
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return undefined;
  }
}
