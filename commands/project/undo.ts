/** `project undo`: undoes the last change to the project in use, or redoes it. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { choice } from '../../src/input/options.ts';
import { redone, undone } from '../../src/project/history.ts';
import { NEXT, PROJECT, sayAgo } from '../../src/text/project-text.ts';
import { doneOr, inProject, projectReply } from './project-command.ts';

export default defineCommand({
  group: 'project',
  name: 'undo',
  summary: 'Undo the last change to your project, one at a time; or “redo”, or “list”',
  phrases: [
    'undo',
    'undo that',
    'go back',
    'no wait cancel that',
    'i made a mistake take it back',
    'revert the last change',
    'that was wrong, change it back',
    'delete the last thing i said',
    'oops undo last',
    'put it back how it was',
    'scratch that',
    'never mind that last one',
    'reverse that',
    'remove what i just added',
    'take back the last entry',
    'i didnt mean to do that',
    'unmark that',
    'restore previous',
    'undo the room i added',
    'cancel the last one',
    'undo that last one',
    'oops wrong room, take that back',
    'put it back to how it was before i changed the hall size',
    "no no i didn't mean to mark the whole bedroom finished, reverse that please",
    'go back one step',
    'the number i just gave you was for a different room, so undo it',
    'cancel what i entered',
    'i added the 62 dollars twice, pull the last one back out',
    'revert',
    'my kid got hold of the phone, undo whatever he just typed in there',
    'change it back please',
    'that last change was a mistake, can you roll it back',
    "un-mark the kitchen, it isn't done",
    "i fat fingered the width and it's saved wrong, undo",
    'take back the room i added',
    'delete the last note i made, it was meant for somebody else entirely',
    'undo twice',
    'forget what i just set for the plank and go back to the one i had',
    'whoops',
    'reverse the last thing',
    "i hit the wrong button and now the closet's gone, bring it back how it was",
    'never mind that one, remove it',
    'get rid of the change i made a minute ago to the doors in bedroom 2',
    'back out of that',
    'can you undo the note',
    "that wasn't supposed to be saved, put things back the way they were five minutes ago",
    'restore what i had before this last change',
    'redo it, i mean undo it',
    'nope undo',
    "ah crap i checked off the caulk but i haven't bought it, undo that",
    'the last entry is wrong',
    'please take off what i just put on the shopping list, wrong project',
    'return to previous',
    "i changed the waste to 5 and didn't like it so set it back to before",
    'unsave that',
    'take out that last thing you recorded about the money, it was a personal purchase',
    'roll back',
    'undo my last update',
  ],
  options: z.object({
    what: choice(['last', 'redo', 'list'], { summary: 'last, redo, or list to see the changes', standard: 'last' }),
  }),
  examples: [
    { ask: 'project undo', headline: 'Undone: gap: 1/4 in.' },
    { ask: 'project undo list', headline: '2 changes can be undone.' },
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
        // A helper can undo only their own changes.
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
