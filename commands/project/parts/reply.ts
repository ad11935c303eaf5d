/** The reply of a project command. */

import type { Context } from '../../../src/chat/command.ts';
import type { Project } from '../../../src/project/project.ts';
import type { Action, Block, Reply } from '../../../src/reply/reply.ts';
import { NEXT } from '../../../src/text/project-text.ts';

/** Offered with every change. */
export const TAKE_BACK: Action = { label: NEXT.undo, ask: 'project undo' };

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

/** As many choices as one list of them shows. */
const MOST_REMOVED = 20;

/** The latest lines of a list, each to be removed by its number. */
export function removeActions(count: number, command: string, label: (no: number) => string): readonly Action[] {
  return Array.from({ length: Math.min(count, MOST_REMOVED) }, (_, i) => count - i)
    .sort((one, other) => one - other)
    .map((no) => ({ label: label(no), ask: `project ${command} remove ${no}`, among: NEXT.remove }));
}
