/** How project commands find their project and change it, and what they reply if they can't. */

import { closest, distance } from 'fastest-levenshtein';
import type { Made, ProjectAccess } from '../../src/accounts/account-access.ts';
import type { Done } from '../../src/accounts/records.ts';
import type { Context, Outcome, Problems } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { readLabel } from '../../src/input/parse-label.ts';
import { read } from '../../src/input/reading.ts';
import { folded } from '../../src/input/rooms/room-text.ts';
import type { Project } from '../../src/project/project.ts';
import { DAY, LIMITS, type Permission } from '../../src/project/project-limits.ts';
import { sameName } from '../../src/project/project-room.ts';
import { type Action, type Block, type Problem, type Reply, reply, type SectionId } from '../../src/reply/reply.ts';
import {
  nameDeleted,
  nameTaken,
  noProject,
  notAllowed,
  nothingKeptHere,
  projectUnknown,
  tooManyDeleted,
  tooManyProjects,
} from '../../src/text/project-problems-text.ts';
import { NEXT } from '../../src/text/project-text.ts';

/** A Problem where projects can't be stored. */
export async function withProject(
  context: Context,
  run: (access: ProjectAccess) => Promise<Outcome>,
): Promise<Outcome> {
  return context.access ? run(context.access) : keptNowhere(context);
}

/** A Problem if no project is in use. */
export function inProject(
  context: Context,
  run: (project: Project, access: ProjectAccess) => Promise<Outcome> | Outcome,
): Promise<Outcome> {
  return withProject(context, async (access) => {
    const project = await access.inUse();
    return project ? run(project, access) : projectProblem(await noneInUse(context, access));
  });
}

export async function projectHere(context: Context): Promise<Project | Problems> {
  if (!context.access) return keptNowhere(context);
  return (await context.access.inUse()) ?? projectProblem(await noneInUse(context, context.access));
}

/** `result` is whatever the change returned. */
export async function changeHere<R>(
  context: Context,
  permission: Permission,
  make: (project: Project) => Made<R>,
): Promise<{ readonly project: Project; readonly result: R } | Problems> {
  if (!context.access) return keptNowhere(context);
  const done = await context.access.change(permission, make);
  return done.ok ? { project: done.project, result: done.result } : refused(context, done.why);
}

/** Suggests the project they deleted within the last day, or the one they began last. */
export async function noneInUse(context: Context, access: ProjectAccess): Promise<Problem> {
  const mine = await access.mine();
  const deleted = mine
    .flatMap(({ name, state }) => (state.kind === 'deleted' ? [{ name, at: state.at, deleted: true }] : []))
    .sort((one, other) => other.at - one.at)[0];
  const live = mine.filter(({ state }) => state.kind !== 'deleted').at(-1);
  const justNow = deleted !== undefined && access.now() - deleted.at < DAY;
  return noProject(saidIn(context), live && !justNow ? { name: live.name, deleted: false } : deleted);
}

/** A Problem if the project is gone or the user may not change it. */
export async function doneOr<R>(
  context: Context,
  done: Done<R>,
  run: (result: R, project: Project) => Promise<Outcome> | Outcome,
): Promise<Outcome> {
  return done.ok ? run(done.result, done.project) : refused(context, done.why);
}

export function projectProblem(one: Problems['problems'][0]): Problems {
  return { problems: [one] };
}

function keptNowhere(context: Context): Problems {
  return projectProblem(nothingKeptHere(saidIn(context)));
}

function refused(context: Context, why: 'gone' | 'not-allowed'): Problems {
  return projectProblem((why === 'gone' ? noProject : notAllowed)(saidIn(context)));
}

/** What they typed, for quoting it back. */
function saidIn({ optionTexts }: Context): string {
  return [...optionTexts.values()].join(', ');
}

/** Offered with every change. */
export const TAKE_BACK: Action = { label: NEXT.undo, ask: 'project undo' };

interface ReadLine {
  readonly lines?: readonly string[];
  /** The section that the request was about. */
  readonly opens?: SectionId;
  readonly headline: string;
  readonly blocks?: readonly Block[];
  readonly actions?: readonly Action[];
  readonly assumed?: readonly string[];
  readonly project?: Project;
}

export function projectReply(
  context: Context,
  { headline, lines, opens, blocks = [], actions = [], assumed = [], project }: ReadLine,
): Reply {
  return reply({
    headline,
    ...(lines && { lines }),
    ...(opens && { opens }),
    blocks,
    assumed: [...context.assumed, ...assumed],
    actions,
    data: project ? projectData(project) : { kind: 'project' },
  });
}

/** Safe for others to read: no ids and no accounts. */
function projectData({ name, state, rooms, picks, kept }: Project) {
  return {
    kind: 'project',
    name,
    state: state.kind,
    rooms,
    picks,
    kept: kept.map(({ ask, headline, at }) => ({ ask, headline, at })),
  };
}

/** The most choices one list of them can show. */
const MOST_REMOVED = 20;

/** The latest entries, each with its number in the list. */
export function removeActions(count: number, command: string, label: (no: number) => string): readonly Action[] {
  return Array.from({ length: Math.min(count, MOST_REMOVED) }, (_, i) => count - i)
    .sort((one, other) => one - other)
    .map((no) => ({ label: label(no), ask: `project ${command} remove ${no}`, among: NEXT.remove }));
}

export const newNameOption = (summary: string, standard?: string) =>
  text(
    { summary, example: 'Upstairs flat', colons: 'any', ...(standard === undefined ? {} : { standard }) },
    (typed, reading) => readLabel(typed, reading, LIMITS.name),
  );

/** Without a name, the project in use. */
export const projectOption = (summary: string) =>
  text({ summary, example: 'Upstairs flat', standard: 'the one in use', names: 'project', colons: 'any' }, (typed) =>
    read(typed.trim()),
  );

export const ONE_IN_USE = 'the one in use';

/** The Problem says what's wrong with the name. */
export function projectNamed(name: string, among: readonly Project[], command: string): Project | { problem: Problem } {
  const bare = name.replace(/^["'“”]+|(?<!["'“”])["'“”]+$/g, '');
  const exact = among.find((project) => sameName(project.name, bare));
  if (exact) return exact;
  const near =
    among.length > 0
      ? closest(
          folded(bare),
          among.map((project) => folded(project.name)),
        )
      : '';
  const likely = among.find((project) => folded(project.name) === near && distance(near, folded(bare)) <= 3);
  return { problem: projectUnknown(bare, likely?.name, command) };
}

/** Undefined if the name is fine. */
export function nameProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const same = mine.find((project) => sameName(project.name, name));
  if (same) return same.state.kind === 'deleted' ? nameDeleted(same.name) : nameTaken(same.name);
  return countProblem(name, mine);
}

/** Undefined if there's room for one more. Deleted projects count only once there are very many. */
export function countProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const live = mine.filter(({ state }) => state.kind !== 'deleted');
  const [oldest] = live;
  if (oldest && live.length >= LIMITS.projects) return tooManyProjects(name, LIMITS.projects, oldest.name);
  return mine.length >= LIMITS.projectsDeleted
    ? tooManyDeleted(name, LIMITS.projectsDeleted, LIMITS.restore)
    : undefined;
}
