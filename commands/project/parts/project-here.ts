/** The project that a command is about, and a change of it; or the Problems where there is none. */

import type { Context, Problems } from '../../../src/bot/command.ts';
import type { Made } from '../../../src/bot/desk.ts';
import type { Deed } from '../../../src/project/may.ts';
import type { Project } from '../../../src/project/project.ts';
import { noProject, notAllowed, nothingKeptHere } from '../../../src/words/project-problems.ts';
import { noneInUse, saidIn } from './at-desk.ts';

/** The project in use. */
export async function projectHere(context: Context): Promise<Project | Problems> {
  if (!context.desk) return { problems: [nothingKeptHere(saidIn(context))] };
  return (await context.desk.inUse()) ?? { problems: [await noneInUse(context, context.desk)] };
}

/** The project after a change of it, with what the change gives. */
export async function changeHere<R>(
  context: Context,
  deed: Deed,
  make: (project: Project) => Made<R>,
): Promise<{ readonly project: Project; readonly result: R } | Problems> {
  if (!context.desk) return { problems: [nothingKeptHere(saidIn(context))] };
  const done = await context.desk.change(deed, make);
  if (done.ok) return { project: done.project, result: done.result };
  return { problems: [(done.why === 'gone' ? noProject : notAllowed)(saidIn(context))] };
}
