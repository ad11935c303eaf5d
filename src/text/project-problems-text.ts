/** Problems with projects: what isn't there, what is full, what could not be read, and what to type instead. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';

/** An ask that starts a project. */
export const START_ASK = 'project new';

/** A line asked on somebody's behalf that would change what they keep. */
export function notForKeeping(line: string): Problem {
  return ask(line, 'Only answers that are worked out can be kept, such as planks or a tear-out.', 'project show');
}

function ask(got: string, expected: string, fix?: string): Problem {
  return { option: 'ask', got: quoted(got), expected, fix };
}

/** A plank of ours is nobody's to buy. */
export function exampleKept(got: string): Problem {
  return ask(got, 'An example plank is not kept: give the size and carton of yours, and it is.');
}

export function nothingKeptHere(got: string): Problem {
  return ask(got, 'Projects are not kept here: whoever runs this has given it no place to keep them.', 'help');
}

/** `other`: the project of theirs that is meant most likely, to be taken into use or brought back. */
export function noProject(got: string, other?: { readonly name: string; readonly deleted: boolean }): Problem {
  if (!other)
    return ask(got, 'You have no project in use. Start one: type “project new” and what you call it.', START_ASK);
  return other.deleted
    ? ask(
        got,
        `You have no project in use; “${other.name}” is deleted. Bring it back with “project restore ${other.name}”, or start another.`,
        `project restore ${other.name}`,
      )
    : ask(
        got,
        `You have no project in use. Take one into use with “project use ${other.name}”, or start another.`,
        `project use ${other.name}`,
      );
}

export function notAllowed(got: string): Problem {
  return ask(got, 'This project is shared with you, and this is for its owner to do.', 'project show');
}

/** Whether or not there is such a project of somebody else's. */
export function projectUnknown(got: string, near: string | undefined, command: string): Problem {
  return near === undefined
    ? ask(got, `You have no project “${quoted(got)}”.`, 'project list')
    : ask(got, `You have no project “${quoted(got)}”; the nearest is “${near}”.`, `project ${command} ${near}`);
}

/** A project that is in this state, or cannot leave it this way. */
export function stateAlready(name: string, state: 'active' | 'archived' | 'deleted'): Problem {
  return ask(
    name,
    state === 'active' ? `“${name}” is not deleted.` : `“${name}” is ${state} already.`,
    state === 'deleted' ? `project restore ${name}` : `project use ${name}`,
  );
}

export function nameTaken(name: string): Problem {
  return ask(
    name,
    `You have a project “${name}” already. Take it into use, or give the new one another name.`,
    `project use ${name}`,
  );
}

export function nameDeleted(name: string): Problem {
  return ask(
    name,
    `You deleted a project “${name}” lately. Bring it back, or give the new one another name.`,
    `project restore ${name}`,
  );
}

export function tooManyProjects(name: string, most: number, oldest: string): Problem {
  return ask(
    name,
    `You have ${most} projects, which is the most that are kept. Delete one first.`,
    `project delete ${oldest}`,
  );
}

/** Those that were deleted lately are still kept. */
export function tooManyDeleted(name: string, most: number, days: number): Problem {
  return ask(
    name,
    `With those deleted in the last ${days} days you have ${most} projects, which is the most that are kept. Bring one back and change it, or wait until one is gone for good.`,
    'project list',
  );
}

export function tooManyRoomsKept(got: string, most: number): Problem {
  return ask(got, `A project has at most ${most} rooms: remove one, or start another project.`, 'project room list');
}

export function roomTooLong(name: string, most: number): Problem {
  return ask(name, `A room is told in at most ${most} characters: tell its shape shorter, or as two rooms.`);
}

export function roomsTooLong(most: number): Problem {
  return ask(
    '',
    `All rooms together are told in at most ${most} characters: leave some as they are, or start another project.`,
    'project room list',
  );
}

export function roomUnknown(got: string, names: readonly string[], fix: string | undefined): Problem {
  const known = names.length === 0 ? 'It has no rooms yet' : `It has ${names.slice(0, 12).join(', ')}`;
  return ask(got, `The project has no room “${quoted(got)}”. ${known}.`, fix);
}

export function roomNameTaken(name: string): Problem {
  return ask(name, `There is a room “${name}” already.`, `project room ${name}`);
}

export function roomNotRead(got: string): Problem {
  return ask(
    got,
    'Tell a room by its name and its two sides; or what to do with one: remove, floor, doors, note, out of scope.',
  );
}

export function tooManyNotes(name: string, most: number): Problem {
  return ask(name, `A room has at most ${most} notes: remove one first.`, `project room ${name} remove note 1`);
}

export function noteUnknown(name: string, number: number, count: number): Problem {
  return ask(
    String(number),
    count === 0 ? `There are no notes of ${name}.` : `The notes of ${name} have the numbers 1 to ${count}.`,
    count === 0 ? `project room ${name}` : `project room ${name} remove note ${count}`,
  );
}

export function noteTooLong(got: string, most: number, fix: string): Problem {
  return ask(got, `At most ${most} characters are kept here.`, fix);
}

/** `fix` is the pick as it was meant, where a near name is known. */
export function pickUnknown(
  got: string,
  near: { name: string; text: string } | undefined,
  names: readonly string[],
): Problem {
  return near === undefined
    ? ask(got, `A pick is the name of an option and what you chose for it. Options: ${names.join(', ')}.`)
    : ask(
        got,
        `There is no option “${quoted(got)}”; the nearest is “${near.name}”.`,
        `project pick ${near.name}: ${near.text}`,
      );
}

export function pickAmbiguous(
  option: string,
  text: string,
  meanings: readonly { readonly command: string; readonly summary: string }[],
): Problem {
  const said = meanings.map(({ command, summary }) => `“${command} ${option}” (${summary})`).join(', or ');
  return ask(
    `${option}: ${text}`,
    `“${option}” means several things: say ${said}.`,
    `project pick ${meanings[0]?.command ?? ''} ${option}: ${text}`,
  );
}

export function tooManyPicks(got: string, most: number): Problem {
  return ask(got, `At most ${most} picks are kept: clear one first.`, 'project pick');
}

export function pickTooLong(option: string, most: number): Problem {
  return ask(option, `At most ${most} characters are kept for ${option}.`, 'project pick');
}

export function nothingToKeep(): Problem {
  return ask('', 'There is no last answer to keep. Ask something first, or tell the ask to keep.');
}

export function tooManyKept(most: number): Problem {
  return ask('', `A project keeps at most ${most} answers: remove one first.`, 'project keep remove 1');
}

export function keptUnknown(got: string, count: number): Problem {
  return ask(
    got,
    count === 0 ? 'No answers are kept yet.' : `Kept answers have the numbers 1 to ${count}.`,
    'project show',
  );
}

export function refusedAsk(why: string): Problem {
  return ask('', `This is not worked out, so there is nothing to keep: ${why}`, 'project show');
}

export function settingUnread(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function importUnread(got: string): Problem {
  return ask(got, 'This is not what “project mydata” gives, or a part of it is missing.', 'project mydata');
}

export function importTooMany(most: number): Problem {
  return ask('', `With these you would have more than ${most} projects: delete some first.`, 'project list');
}
