/** The texts about a floor begun that cannot be read, or cannot lie as told. */

import type { Problem } from '../reply/reply.ts';
import { type Got, problem } from './got.ts';

export const SO_FAR_NOTES = {
  unused: (words: string) => `not used of what was told so far: “${words}”`,
  noEnd: (length: string) =>
    `offcut ${length}: which end of its plank was not told, so it is used between two walls only; add “left” or “right”`,
} as const;

export function soFarUnread(read: Got, metric: boolean): Problem {
  const example = metric
    ? 'row 7 ended at 800 mm, broke one, 22 planks left, offcuts: 450 mm left, 780 mm right'
    : 'row 7 ended at 31 1/4 in, broke one, 22 planks left, offcuts: 18 in left, 31 in right';
  return problem(
    read,
    `Tell how far it is laid and what is left: “${example}”. An offcut is told with the end of its plank that it has, left or right as you look along the row.`,
    example,
  );
}

export function noSuchRow(got: string, room: string, rows: number, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `${room} has rows 1 to ${rows} in this plan, numbered from the starting wall.`,
    fix,
  );
}

export function noSuchRoomSoFar(got: string, names: readonly string[], fix: string): Problem {
  return problem({ option: 'so-far', got }, `Rows are told of one of the rooms: ${names.join(', ')}.`, fix);
}

export function rowMisfits(got: string, run: string, planned: string, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `That row runs ${run} from wall to wall; with pieces as told it would not come out. The plan ends it with ${planned}. Measure its last piece again, or check the sides of the room.`,
    fix,
  );
}

export function allLaid(got: string, fix: string): Problem {
  return problem({ option: 'so-far', got }, 'Then every row is laid: nothing is left to plan.', fix);
}

export function slantedNotResumed(option: 'room' | 'direction', got: string, fix: string): Problem {
  return problem(
    { option, got },
    `The rest of a floor is worked out for rooms of right angles with rows along a wall; here ${option === 'room' ? 'walls' : 'rows'} lie at a slant. Measure the part that is left and ask for it as a room of its own with “floor planks”.`,
    fix,
  );
}

export function oneFloor(got: string, floor: string, fix: string): Problem {
  return problem(
    { option: 'so-far', got },
    `${got} lies in one floor with other rooms (${floor}), whose rows go on: tell the last row that is laid, “${got} row 7 is laid”.`,
    fix,
  );
}
