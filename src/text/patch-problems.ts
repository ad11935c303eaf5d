/** The texts about a damage, a part of a floor, a sheet or a tube that cannot be read, and how doubtful ones were. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { type Got, problem } from './got.ts';

export function sizeMissing(got: Got): Problem {
  return problem(got, 'How large is the damage? Two sides, across and up, with x between them.');
}

export function placeMissing(got: Got): Problem {
  return problem(got, 'Where is the damage? Tell how far it is from the left wall and from the bottom wall.');
}

/** A hole and a notch in one joist, and nothing told of where they stand. */
export function holeApartUntold(least: string): Problem {
  return {
    option: 'hole-apart',
    got: '',
    expected: `How far is the hole from the notch, and from any other hole? Code wants ${least} at least between them.`,
    fix: undefined,
  };
}

export function placeSide(got: Got): Problem {
  return problem(
    got,
    'Distances run from the left and the bottom wall: measure from those, or look at the room the other way round.',
  );
}

/** A length in it that could not be read; `expected` says why. */
export function lengthFalse(got: Got, expected: string): Problem {
  return problem(got, expected);
}

export function placeRead(left: string, bottom: string): string {
  return `at ${left}, ${bottom} read as ${left} from the left wall and ${bottom} from the bottom wall`;
}

export function notAPart(got: Got, line: boolean): Problem {
  return problem(
    got,
    `A part of the floor is its two sides with x between them, or its area${line ? ', or one length' : ''}.`,
  );
}

export function partReadIn(typed: string, unit: string): string {
  return `${typed} read as ${unit}`;
}

export function notASheet(got: Got): Problem {
  return problem(got, 'A sheet is its two sides, each from 1 to 16 ft (0.3 to 4.9 m).');
}

export function notATube(got: Got): Problem {
  return problem(got, 'A tube is what is printed on it: from 1 to 100 fl oz, or 30 to 3000 ml.');
}

export function tubeRead(typed: string): string {
  return `${typed} read as ${typed} fl oz`;
}

export function damageTooLarge(got: string, most: string): Problem {
  return {
    option: 'damage',
    got,
    expected: `A patch is at most ${most} each way: beyond that the floor is laid anew, sheet by sheet.`,
    fix: undefined,
  };
}

export function damageBeyond(got: string, room: string): Problem {
  return { option: 'damage', got, expected: `The damage reaches beyond the room of ${room}.`, fix: undefined };
}

export function severalRooms(option: string, got: string): Problem {
  return { option, got: quoted(got), expected: 'Tell the one room that the damage lies in.', fix: undefined };
}

export function sheetTooSmall(got: string): Problem {
  return {
    option: 'sheet',
    got: quoted(got),
    expected: 'A sheet reaches over three bays between joists and is at least 24 in (610 mm) wide.',
    fix: undefined,
  };
}
