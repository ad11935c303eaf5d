/** The reply of a project command. */

import type { Context } from '../../../src/bot/command.ts';
import type { Project } from '../../../src/project/project.ts';
import type { Action, Block, Reply } from '../../../src/reply/reply.ts';

interface Told {
  readonly headline: string;
  readonly blocks?: readonly Block[];
  readonly actions?: readonly Action[];
  readonly assumed?: readonly string[];
  readonly project?: Project;
}

/** A reply about a project, or about none. */
export function projectReply(
  context: Context,
  { headline, blocks = [], actions = [], assumed = [], project }: Told,
): Reply {
  return {
    headline,
    blocks,
    assumed: [...context.assumed, ...assumed],
    cautions: [],
    sources: [],
    actions,
    audience: 'asker',
    data: project ? projectData(project) : { kind: 'project' },
  };
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
