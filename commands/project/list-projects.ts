/** `project list`: all projects of the asker. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { openQuestions } from '../../src/chat/notifications.ts';
import type { Preferences } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { isSharedPart } from '../../src/project/share-scope.ts';
import type { Block } from '../../src/reply/reply.ts';
import { START_ASK } from '../../src/text/project-problems-text.ts';
import { MEASURE, NEXT, PROJECT } from '../../src/text/project-text.ts';
import { SHARE, sayShared } from '../../src/text/sharing-text.ts';
import { projectReply, withProject } from './project-command.ts';

/** Lengths asked of whoever may measure, project by project. */
function toMeasure(mine: readonly Project[], preferences: Preferences): readonly Block[] {
  const items = mine
    .filter(({ state }) => state.kind === 'active')
    .flatMap((project) =>
      openQuestions(project, preferences).map(({ label }) => MEASURE.inProject(project.name, label)),
    );
  return items.length === 0 ? [] : [{ kind: 'checklist', title: MEASURE.openTitle, items }];
}

export default defineCommand({
  group: 'project',
  name: 'list',
  summary: 'All your projects, archived and lately deleted ones too',
  options: z.object({}),
  examples: [{ ask: 'project list', headline: '2 projects.' }],
  run: (_options, context) =>
    withProject(context, async (access) => {
      const [mine, inUse] = [await access.mine(), await access.inUse()];
      if (mine.length === 0) {
        const actions = [{ label: NEXT.start, ask: START_ASK }];
        return projectReply(context, { headline: PROJECT.none, actions });
      }
      const me = (await access.person())?.id;
      const rows = mine.map(({ id, name, owner, rooms, kept, state, shares: [share] }) => {
        const now = id === inUse?.id ? PROJECT.use : PROJECT.states[state.kind];
        if (owner === me || !share) return [name, String(rooms.length), String(kept.length), now];
        const given = SHARE.inList(sayShared(share), SHARE.mays[share.role], share.label, now);
        return isSharedPart(share) ? [name, '', '', given] : [name, String(rooms.length), String(kept.length), given];
      });
      const others = mine.filter(({ id, state }) => id !== inUse?.id && state.kind !== 'deleted');
      return projectReply(context, {
        headline: PROJECT.several(mine.length),
        blocks: [
          { kind: 'table', title: PROJECT.projects, columns: PROJECT.projectColumns, rows },
          ...toMeasure(mine, context.preferences),
        ],
        actions: [
          ...others.map(({ name }) => ({ label: NEXT.use(name), ask: `project use ${name}` })),
          ...mine
            .filter(({ state, owner }) => state.kind === 'deleted' && owner === me)
            .map(({ name }) => ({ label: NEXT.restore(name), ask: `project restore ${name}` })),
        ].slice(0, 5),
      });
    }),
});
