/** `project undo`: takes back the last change of the project in use, or makes it again. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice } from '../../src/input/options.ts';
import { redone, undone } from '../../src/project/history.ts';
import { NEXT, PROJECT, sayAgo } from '../../src/text/project-text.ts';
import { doneOr, inProject, projectReply } from './project-command.ts';

export default defineCommand({
  group: 'project',
  name: 'undo',
  summary: 'Takes back the last change of your project, one at a time; or “redo”, or “list”',
  options: z.object({
    what: choice(['last', 'redo', 'list'], { summary: 'last, redo, or list to see the changes', standard: 'last' }),
  }),
  examples: [
    { ask: 'project undo', headline: 'Taken back: gap: 1/4 in.' },
    { ask: 'project undo list', headline: '2 changes can be taken back.' },
  ],
  run: ({ what }, context) =>
    inProject(context, async (project, access) => {
      const undo = { label: NEXT.undo, ask: 'project undo' };
      const redo = { label: NEXT.redo, ask: 'project undo redo' };
      if (what === 'list') {
        const facts = project.history
          .toReversed()
          .map(({ at, said }) => ({ label: sayAgo(access.now() - at), value: said }));
        return projectReply(context, {
          headline: facts.length === 0 ? PROJECT.nothingToUndo : PROJECT.undoCount(facts.length),
          blocks: facts.length === 0 ? [] : [{ kind: 'facts', title: PROJECT.changes, facts }],
          actions: [...(facts.length === 0 ? [] : [undo]), ...(project.undone.length === 0 ? [] : [redo])],
          project,
        });
      }
      const done = await access.turn('tick', (before, stamp) => {
        const turned = what === 'redo' ? redone(before, stamp) : undone(before, stamp);
        // A helper takes back their own changes only.
        if (turned && turned.change.by !== stamp.by && before.owner !== stamp.by) return undefined;
        return turned && { project: turned.project, result: turned.change.said };
      });
      return doneOr(context, done, (said, after) => {
        const nothing = what === 'redo' ? PROJECT.nothingToRedo : PROJECT.nothingToUndo;
        const words = what === 'redo' ? PROJECT.redone : PROJECT.undone;
        const list = { label: NEXT.undoList, ask: 'project undo list' };
        const actions = [what === 'redo' ? undo : redo, ...(after.history.length > 0 ? [list] : [])];
        return projectReply(context, {
          headline: said === undefined ? nothing : words(said),
          actions: said === undefined ? [] : actions,
          project: after,
        });
      });
    }),
});
