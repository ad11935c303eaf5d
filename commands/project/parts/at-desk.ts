/** How a project command comes to its project and changes it, and what is said where it cannot. */

import type { Desk, Made } from '../../../src/accounts/account-access.ts';
import type { Done } from '../../../src/accounts/project-changes.ts';
import type { Context, Outcome, Problems } from '../../../src/chat/command.ts';
import type { Project } from '../../../src/project/project.ts';
import { DAY, type Deed } from '../../../src/project/project-limits.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { noProject, notAllowed, nothingKeptHere } from '../../../src/text/project-problems-text.ts';

/** Runs a command at the asker's desk; a problem where nothing is kept. */
export async function atDesk(context: Context, run: (desk: Desk) => Promise<Outcome>): Promise<Outcome> {
  return context.desk ? run(context.desk) : keptNowhere(context);
}

/** Runs a command on the project in use; a problem where there is none. */
export function inProject(
  context: Context,
  run: (project: Project, desk: Desk) => Promise<Outcome> | Outcome,
): Promise<Outcome> {
  return atDesk(context, async (desk) => {
    const project = await desk.inUse();
    return project ? run(project, desk) : problem(await noneInUse(context, desk));
  });
}

/** The project in use, or the problem where there is none. */
export async function projectHere(context: Context): Promise<Project | Problems> {
  if (!context.desk) return keptNowhere(context);
  return (await context.desk.inUse()) ?? problem(await noneInUse(context, context.desk));
}

/** The project in use after a change of it, with what the change gives. */
export async function changeHere<R>(
  context: Context,
  deed: Deed,
  make: (project: Project) => Made<R>,
): Promise<{ readonly project: Project; readonly result: R } | Problems> {
  if (!context.desk) return keptNowhere(context);
  const done = await context.desk.change(deed, make);
  return done.ok ? { project: done.project, result: done.result } : refused(context, done.why);
}

/** What to do first where no project is in use: the one deleted within a day is meant, or the last begun. */
export async function noneInUse(context: Context, desk: Desk): Promise<Problem> {
  const mine = await desk.mine();
  const deleted = mine
    .flatMap(({ name, state }) => (state.kind === 'deleted' ? [{ name, at: state.at, deleted: true }] : []))
    .sort((one, other) => other.at - one.at)[0];
  const live = mine.filter(({ state }) => state.kind !== 'deleted').at(-1);
  const justNow = deleted !== undefined && desk.now() - deleted.at < DAY;
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

export function problem(one: Problems['problems'][0]): Problems {
  return { problems: [one] };
}

function keptNowhere(context: Context): Problems {
  return problem(nothingKeptHere(saidIn(context)));
}

function refused(context: Context, why: 'gone' | 'not-allowed'): Problems {
  return problem((why === 'gone' ? noProject : notAllowed)(saidIn(context)));
}

/** What was typed, as it is said back. */
function saidIn({ told }: Context): string {
  return [...told.values()].join(', ');
}
