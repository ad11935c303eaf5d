/** Compares saved answers with what they would be today: each is shown as saved, with one line if it differs now. */

import type { Context } from '../../src/chat/command.ts';
import { hostZone, sayDay } from '../../src/input/moment.ts';
import type { KeptAsk, Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Action, Block } from '../../src/reply/reply.ts';
import { SAVED } from '../../src/text/project-text.ts';
import type { GuidesResult } from '../floor/floor-guides.ts';
import { asksOnce, filledFrom, guidesOfFloor, todaysLine, type Work, workOf } from './shopping-needs.ts';

interface SavedToday {
  /** Its number in the list, from 1. */
  readonly no: number;
  readonly saved: KeptAsk;
  /** `gone`: none of its rooms is part of the job anymore, or it had sizes of its own. */
  readonly stands: 'same' | 'differs' | 'unanswered' | 'gone' | 'unread';
  /** Today's headline, or why there isn't one. */
  readonly today?: string;
  /** The request for today's answer. */
  readonly line?: string;
}

/** Headlines are short, and needed every time the project is shown. */
const known = new Map<string, Promise<Today>>();
const MOST_KNOWN = 500;

type Today = { readonly headline: string } | { readonly why: string };

/** `commands` limits it to those commands. */
export async function savedToday(
  project: Project,
  context: Context,
  commands?: readonly string[],
): Promise<readonly SavedToday[]> {
  const all: SavedToday[] = [];
  for (const [i, saved] of project.kept.entries()) {
    const work = workOf(saved, project, context.parse);
    if (commands && !(typeof work === 'object' && commands.includes(work.name))) continue;
    all.push({ no: i + 1, saved, ...(await standing(saved, work, project, context)) });
  }
  return all;
}

async function standing(
  saved: KeptAsk,
  work: ReturnType<typeof workOf>,
  project: Project,
  context: Context,
): Promise<Omit<SavedToday, 'no' | 'saved'>> {
  if (typeof work === 'string') return { stands: work };
  const line = todaysLine(work);
  const today = await todays(work, line, project, context);
  if ('why' in today) return { stands: 'unanswered', today: today.why, line };
  return { stands: today.headline === saved.headline ? 'same' : 'differs', today: today.headline, line };
}

async function todays(work: Work, line: string, project: Project, context: Context): Promise<Today> {
  const key = `${await filledFrom(project, context)}\n${line}`;
  const before = known.get(key);
  if (before) return before;
  const today = headlineNow(work, line, project, context);
  known.set(key, today);
  // Failures aren't cached.
  today.catch(() => known.delete(key));
  const [oldest] = known.keys();
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
  return today;
}

/** The guides give the same headline for planks in a fraction of the time, and the lists need the guides anyway. */
async function headlineNow({ name }: Work, line: string, project: Project, context: Context): Promise<Today> {
  const ask = await asksOnce(project, context);
  const { outcome } = await (name === 'floor planks' ? ask(guidesOfFloor(line)) : context.ask(line, project));
  if ('problems' in outcome) return { why: outcome.problems[0].expected };
  if ('why' in outcome) return { why: outcome.why };
  const headline = name === 'floor planks' ? (outcome.data as GuidesResult).buy : outcome.headline;
  return { headline: headline.slice(0, LIMITS.headline) };
}

/** As they were saved, each with its date. */
export function savedTable({ kept }: Project): readonly Block[] {
  if (kept.length === 0) return [];
  const zone = hostZone();
  const rows = kept.map(({ headline, ask, at }, i) => [String(i + 1), sayDay(at, zone), headline, ask]);
  return [{ kind: 'table', title: SAVED.title, columns: SAVED.columns, rows }];
}

/** Only answers that differ from today's. */
export function savedLines(all: readonly SavedToday[]): readonly string[] {
  const zone = hostZone();
  return all.flatMap(({ no, saved, stands, today = '' }) => {
    const day = sayDay(saved.at, zone);
    if (stands === 'same') return [];
    if (stands === 'differs') return [SAVED.differs(no, day, today)];
    return [stands === 'unanswered' ? SAVED.unanswered(no, day, today) : SAVED[stands](no, day)];
  });
}

/** Only answers that differ from today's. */
export function savedActions(all: readonly SavedToday[]): readonly Action[] {
  return all.flatMap(({ no, stands, line }) =>
    stands === 'differs' && line !== undefined ? [{ label: SAVED.button(no), ask: line }] : [],
  );
}

/** One line for a list that differs from some saved answers, and how to see them. */
export interface SavedElse {
  readonly line: string;
  readonly actions: readonly Action[];
}

export function savedElse(all: readonly SavedToday[]): SavedElse | undefined {
  const zone = hostZone();
  const differing = all.filter(({ stands }) => stands === 'differs' || stands === 'unanswered');
  if (differing.length === 0) return undefined;
  return {
    line: SAVED.lists(differing.map(({ no, saved }) => [no, sayDay(saved.at, zone)] as const)),
    actions: [{ label: SAVED.show, ask: 'project show' }],
  };
}
