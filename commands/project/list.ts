/** `project list`: all projects of the asker. */

import { z } from 'zod';
import { defineCommand } from '../../src/bot/command.ts';
import { NEXT, PROJECT } from '../../src/words/project.ts';
import { START_ASK } from '../../src/words/project-problems.ts';
import { atDesk } from './parts/at-desk.ts';
import { projectReply } from './parts/reply.ts';

export default defineCommand({
  group: 'project',
  name: 'list',
  summary: 'All your projects, archived and lately deleted ones too',
  options: z.object({}),
  examples: [{ ask: 'project list', headline: '2 projects.' }],
  run: (_options, context) =>
    atDesk(context, async (desk) => {
      const [mine, inUse] = [await desk.mine(), await desk.inUse()];
      if (mine.length === 0) {
        const actions = [{ label: NEXT.start, ask: START_ASK }];
        return projectReply(context, { headline: PROJECT.none, actions });
      }
      const rows = mine.map(({ id, name, rooms, kept, state }) => [
        name,
        String(rooms.length),
        String(kept.length),
        id === inUse?.id ? PROJECT.use : PROJECT.states[state.kind],
      ]);
      const others = mine.filter(({ id, state }) => id !== inUse?.id && state.kind !== 'deleted');
      return projectReply(context, {
        headline: PROJECT.several(mine.length),
        blocks: [{ kind: 'table', title: PROJECT.projects, columns: PROJECT.projectColumns, rows }],
        actions: [
          ...others.map(({ name }) => ({ label: NEXT.use(name), ask: `project use ${name}` })),
          ...mine
            .filter(({ state }) => state.kind === 'deleted')
            .map(({ name }) => ({ label: NEXT.restore(name), ask: `project restore ${name}` })),
        ].slice(0, 5),
      });
    }),
});
