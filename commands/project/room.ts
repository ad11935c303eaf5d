/** `project room`: adds, changes and removes the rooms of a project, and what is known of each. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { PROJECT, SAVED } from '../../src/text/project-text.ts';
import { doneOr, inProject, projectProblem, projectReply, TAKE_BACK } from './project-command.ts';
import { nextProjectRequests, roomTable } from './project-shown.ts';
import { ROOM_NOT_GIVEN, type RoomAsk, roomActions, roomOptions, roomSteps, type Steps } from './room-change.ts';

// Rooms of a project changed as they are told, and what is said of it.

/** A room of the project in use under another name. */
export function renameRoom(from: string, to: string, context: Context): Promise<Outcome> {
  const others = {
    size: ROOM_NOT_GIVEN,
    floor: ROOM_NOT_GIVEN,
    doors: ROOM_NOT_GIVEN,
    note: ROOM_NOT_GIVEN,
    name: ROOM_NOT_GIVEN,
  } as const;
  return answerRoom({ room: `rename ${from} to ${to}`, ...others, scope: ROOM_NOT_GIVEN }, context);
}

function answerRoom(given: RoomAsk, context: Context): Promise<Outcome> {
  return inProject(context, async (project, access) => {
    const permissions = roomActions(given, project.rooms);
    if ('problem' in permissions) return projectProblem(permissions.problem);
    const done = await access.change<Steps>('measure', (before) => {
      const after = roomSteps(before, permissions.permissions, context.preferences);
      if ('problem' in after) return { result: after };
      return after.said.length === 0
        ? { result: after }
        : { parts: after.parts, said: after.said.join('; '), result: after };
    });
    return doneOr(context, done, (result, after) => {
      if ('problem' in result) return projectProblem(result.problem);
      const changed = result.said.length > 0;
      const shapes = changed && permissions.permissions.some((permission) => permission.do !== 'fact');
      const [only, ...more] = permissions.permissions;
      const shown =
        only?.do === 'show' && more.length === 0 ? after.rooms.filter(({ name }) => name === only.name) : after.rooms;
      return projectReply(context, {
        headline: changed
          ? PROJECT.done(result.said)
          : permissions.requested
            ? PROJECT.shown(after.name, after.rooms.length, after.rooms.filter((room) => !room.inScope).length)
            : PROJECT.nothingChanged,
        blocks: roomTable(shown),
        assumed: [...result.notes, ...(shapes && after.kept.length > 0 ? [SAVED.stay(after.kept.length)] : [])],
        actions: [...(changed ? [TAKE_BACK] : []), ...nextProjectRequests(after)],
        project: after,
      });
    });
  });
}

export default defineCommand({
  group: 'project',
  name: 'room',
  summary: 'Adds or changes a room: its shape, floor, doors, notes, or leaves it as it is',
  options: z.object(roomOptions),
  examples: [
    { ask: `project room study 9'6" x 10'`, headline: `Study added: 9'6" x 10'.` },
    { ask: 'project room bath out of scope', headline: 'Nothing is changed: it was so already.' },
    {
      ask: 'project room bedroom, floor: laminate, doors: 30 in on wall 1',
      headline: 'Bedroom: floor now laminate; bedroom: doors 30 in on wall 1.',
    },
    { ask: 'project room remove closet', headline: 'Closet removed.' },
  ],
  run: (given, context) => answerRoom(given, context),
});
