/** Commands that put a project into another state: archived, deleted, active again. */

import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import type { Context, Outcome } from '../../src/chat/command.ts';
import type { Project, ProjectState } from '../../src/project/project.ts';
import { sameName } from '../../src/project/project-room.ts';
import type { Action } from '../../src/reply/reply.ts';
import { notAllowed, stateAlready } from '../../src/text/project-problems-text.ts';
import { SHARE } from '../../src/text/sharing-text.ts';
import {
  countProblem,
  doneOr,
  noneInUse,
  ONE_IN_USE,
  projectNamed,
  projectProblem,
  projectReply,
  withProject,
} from './project-command.ts';

interface Stating {
  readonly command: string;
  /** The states it may be in beforehand. */
  readonly from: readonly ProjectState['kind'][];
  readonly to: (now: number) => ProjectState;
  readonly said: string;
  readonly headline: (name: string) => string;
  readonly actions: (name: string) => readonly Action[];
  /** Whether the project is in use afterward. */
  readonly use: boolean;
}

/** Without a name, it's the project in use. */
export function stated(name: string, context: Context, stating: Stating): Promise<Outcome> {
  return withProject(context, async (access) => {
    const mine = await access.own();
    const among = mine.filter(({ state }) => stating.from.includes(state.kind));
    const [only, ...more] = among;
    const unnamed = stating.from.includes('deleted') ? (more.length === 0 ? only : undefined) : await access.inUse();
    const found = name === ONE_IN_USE ? unnamed : projectNamed(name, among, stating.command);
    const other = mine.find((one) => sameName(one.name, name) && !among.includes(one));
    if (other) return projectProblem(stateAlready(other.name, other.state.kind));
    if (await isShared(name, mine, access)) return projectProblem(notAllowed(name));
    if (!found) return projectProblem(await noneInUse(context, access));
    if ('problem' in found) return projectProblem(found.problem);
    const full =
      found.state.kind === 'deleted'
        ? countProblem(
            found.name,
            mine.filter((one) => one !== found),
          )
        : undefined;
    if (full) return projectProblem(full);
    const parts = { state: stating.to(access.now()) };
    const done = await access.change('own', () => ({ parts, said: stating.said, result: undefined }), found.id);
    return doneOr(context, done, async (_result, project: Project) => {
      const inUse = (await access.person())?.inUse;
      if (stating.use) await access.use(project.id);
      else if (inUse === project.id) await access.use(undefined);
      const actions = stating.actions(project.name);
      const ended = found.shares.length - project.shares.length;
      const assumed = ended > 0 ? [SHARE.ended(ended)] : [];
      return projectReply(context, { headline: stating.headline(project.name), actions, assumed, project });
    });
  });
}

/** To explain why somebody can't change a project that was only shared with them. */
async function isShared(name: string, own: readonly Project[], access: ProjectAccess): Promise<boolean> {
  return (await access.mine()).some((one) => sameName(one.name, name) && !own.some(({ id }) => id === one.id));
}
