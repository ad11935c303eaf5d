/** How a project command comes to its project and changes it, and what is said where it cannot. */

import { closest, distance } from 'fastest-levenshtein';
import type { Made, ProjectAccess } from '../../src/accounts/account-access.ts';
import type { Done } from '../../src/accounts/project-changes.ts';
import type { Context, Outcome, Problems } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { readLabel } from '../../src/input/parse-label.ts';
import { read } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { DAY, LIMITS, type Permission } from '../../src/project/project-limits.ts';
import { folded, sameName } from '../../src/project/project-room.ts';
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

/** Runs a command at the asker's desk; a problem where nothing is kept. */
export async function withProject(
  context: Context,
  run: (access: ProjectAccess) => Promise<Outcome>,
): Promise<Outcome> {
  return context.access ? run(context.access) : keptNowhere(context);
}

/** Runs a command on the project in use; a problem where there is none. */
export function inProject(
  context: Context,
  run: (project: Project, access: ProjectAccess) => Promise<Outcome> | Outcome,
): Promise<Outcome> {
  return withProject(context, async (access) => {
    const project = await access.inUse();
    return project ? run(project, access) : projectProblem(await noneInUse(context, access));
  });
}

/** The project in use, or the problem where there is none. */
export async function projectHere(context: Context): Promise<Project | Problems> {
  if (!context.access) return keptNowhere(context);
  return (await context.access.inUse()) ?? projectProblem(await noneInUse(context, context.access));
}

/** The project in use after a change of it, with what the change gives. */
export async function changeHere<R>(
  context: Context,
  permission: Permission,
  make: (project: Project) => Made<R>,
): Promise<{ readonly project: Project; readonly result: R } | Problems> {
  if (!context.access) return keptNowhere(context);
  const done = await context.access.change(permission, make);
  return done.ok ? { project: done.project, result: done.result } : refused(context, done.why);
}

/** What to do first where no project is in use: the one deleted within a day is meant, or the last begun. */
export async function noneInUse(context: Context, access: ProjectAccess): Promise<Problem> {
  const mine = await access.mine();
  const deleted = mine
    .flatMap(({ name, state }) => (state.kind === 'deleted' ? [{ name, at: state.at, deleted: true }] : []))
    .sort((one, other) => other.at - one.at)[0];
  const live = mine.filter(({ state }) => state.kind !== 'deleted').at(-1);
  const justNow = deleted !== undefined && access.now() - deleted.at < DAY;
  return noProject(saidIn(context), live && !justNow ? { name: live.name, deleted: false } : deleted);
}

/** What a change came to; a problem where the project is gone or is not the asker's to change. */
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

/** What was typed, as it is said back. */
function saidIn({ optionTexts }: Context): string {
  return [...optionTexts.values()].join(', ');
}

// The reply of a project command.

/** Offered with every change. */
export const TAKE_BACK: Action = { label: NEXT.undo, ask: 'project undo' };

interface ReadLine {
  readonly lines?: readonly string[];
  /** The section that was itself asked for. */
  readonly opens?: SectionId;
  readonly headline: string;
  readonly blocks?: readonly Block[];
  readonly actions?: readonly Action[];
  readonly assumed?: readonly string[];
  readonly project?: Project;
}

/** A reply about a project, or about none. */
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

/** What others may read of a project in result data: no ids, nobody's accounts. */
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

/** As many choices as one list of them shows. */
const MOST_REMOVED = 20;

/** The latest lines of a list, each to be removed by its number. */
export function removeActions(count: number, command: string, label: (no: number) => string): readonly Action[] {
  return Array.from({ length: Math.min(count, MOST_REMOVED) }, (_, i) => count - i)
    .sort((one, other) => one - other)
    .map((no) => ({ label: label(no), ask: `project ${command} remove ${no}`, among: NEXT.remove }));
}

// Projects by their names.

/** The name of a project to be. */
export const newNameOption = (summary: string, standard?: string) =>
  text(
    { summary, example: 'Upstairs flat', colons: 'any', ...(standard === undefined ? {} : { standard }) },
    (typed, reading) => readLabel(typed, reading, LIMITS.name),
  );

/** The name of one of the asker's projects; without it the one in use. */
export const projectOption = (summary: string) =>
  text({ summary, example: 'Upstairs flat', standard: 'the one in use', names: 'project', colons: 'any' }, (typed) =>
    read(typed.trim()),
  );

export const ONE_IN_USE = 'the one in use';

/** The project of a name among some, or the problem with the name. */
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

/** Why a new project of this name cannot begin; undefined where it can. */
export function nameProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const same = mine.find((project) => sameName(project.name, name));
  if (same) return same.state.kind === 'deleted' ? nameDeleted(same.name) : nameTaken(same.name);
  return countProblem(name, mine);
}

/** Why there cannot be one project more; undefined where there can. Those deleted are in nobody's way until they are very many. */
export function countProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const live = mine.filter(({ state }) => state.kind !== 'deleted');
  const [oldest] = live;
  if (oldest && live.length >= LIMITS.projects) return tooManyProjects(name, LIMITS.projects, oldest.name);
  return mine.length >= LIMITS.projectsDeleted
    ? tooManyDeleted(name, LIMITS.projectsDeleted, LIMITS.restore)
    : undefined;
}
