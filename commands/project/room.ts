/** `project room`: adds, changes and removes the rooms of a project, and what's known about each. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { PROJECT, SAVED } from '../../src/text/project-text.ts';
import { doneOr, inProject, projectProblem, projectReply, TAKE_BACK } from './project-command.ts';
import { nextProjectRequests, roomTable } from './project-shown.ts';
import { ROOM_NOT_GIVEN, type RoomAsk, roomActions, roomOptions, roomSteps, type Steps } from './room-change.ts';

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
  summary: 'Add or change a room: its shape, floor, doors and notes, or leave it out of the job',
  phrases: [
    'add a bedroom 11x12',
    'my living room is 14x18',
    'the kitchen is 10x12 actually',
    'change the hall to 3x16',
    'rename bedroom 2 to office',
    'the closet is 2 by 6 with a 60 in door',
    'new room den 12 x 13',
    'remove the office from the project',
    'master is 13\'4" by 15\'8"',
    'put in a bathroom 5x8',
    'rooms are bedroom 10x11 and study 9x10',
    "bedroom was measured wrong its 12x12'6",
    'the den has two doors',
    'study floor is concrete',
    'add closet to the bedroom',
    'set the ceiling room to 11 by 11',
    'the nursery is carpet now',
    'this room is L shaped 12x14 with a 3x4 notch',
    'update the living room size',
    'there is also a hallway 42 in wide 17 ft long',
    'living room is 14\'6" by 18\'2", put that in',
    'change the hall to 3x17',
    'the den should be 12x13 not 12x12',
    "add a closet to bedroom 2, it's 2x6",
    'put in a kitchen 10 by 14 with an island 3x6',
    'my rooms are bed 10x11, bath 5x8 and office 9x12',
    "i remeasured the dining room and it's 11'4\" x 13'1\"",
    'add room',
    'rename bedroom 3 to nursery',
    "take the bathroom out, we're not doing that one",
    'new room: landing 1.1 by 3.4 metres',
    'the family room is l shaped, 15x20 less a 5x7 corner',
    'laundry is concrete underneath, the rest is plywood',
    'add doors to the den, two at 32 inches',
    'get rid of the garage room i put in',
    "master's got a bay, main part 13x16",
    'the office is carpet right now, mark that down for the room',
    'update study width to 9 ft 10',
    'set bedroom to 12x12',
    'i forgot a room, sunroom 8x15',
    "there's also a hallway, 40 in wide and 22 ft long, goes from the kitchen to the bath",
    "correct the lounge size, it's 4.85 m long",
    'closet opening is 60 inches not 48, fix it on the guest room',
    "put the mudroom in too please, 6'3\" by 8'",
    'add three bedrooms all 10x11',
    'switch the floor type for the basement room to concrete',
    'the kitchen measures 128 by 165 inches',
    'bed 1 has one door, bed 2 has two',
    'add a pantry 4x5 off the kitchen',
    'room: foyer 6 x 7',
    "edit the playroom, ceiling's irrelevant but length is 17 ft",
    "the wall behind the stove is out, so kitchen's now 13 ft wide",
    'drop the upstairs bath from the list of rooms',
    'rec room 22x27 with two posts',
    'could you enter the box room at 2.2 by 2.6 and the airing cupboard at 0.8 by 0.9',
    'call the second bedroom office from now on',
    'den has a hearth sticking out 5 ft by 18 in, change it',
    'i gave you the wrong numbers for hall, should be 3\'5" x 19\'8"',
    'one more room, guest bath, 5 by 7 and a half',
  ],
  options: z.object(roomOptions),
  examples: [
    { ask: `project room study 9'6" x 10'`, headline: `Study added: 9'6" x 10'.` },
    { ask: 'project room bath out of scope', headline: 'That is already how it is.' },
    {
      ask: 'project room bedroom, floor: laminate, doors: 30 in on wall 1',
      headline: 'Bedroom: floor now laminate; bedroom: doors 30 in on wall 1.',
    },
    { ask: 'project room remove closet', headline: 'Closet removed.' },
  ],
  run: (given, context) => answerRoom(given, context),
});
