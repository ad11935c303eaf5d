/** Problems with projects: what isn't there, what is full, what could not be read, and what to type instead. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';

export const START_ASK = 'project new';

/** A line requested on someone's behalf that would change saved data. */
export function notForKeeping(line: string): Problem {
  return ask(line, 'Only answers with figures can be saved, such as planks or a tear-out.', 'project show');
}

/** The press that answers from somebody's project, to them alone. */
export const OWN_PROJECT = 'Use my project';

/** A sentence about somebody's own project, where everybody reads the answer. */
export function ownProject(text: string): Problem {
  return ask(text, 'That is about your own project, and everybody here would read it. Press, and I answer just you.');
}

function ask(got: string, expected: string, fix?: string): Problem {
  return { option: 'ask', got: quoted(got), expected, fix };
}

/** An example plank isn't for buying. */
export function exampleKept(got: string): Problem {
  return ask(got, 'An example plank isn’t saved. Give the size and box of yours, and it will be.');
}

export function nothingKeptHere(got: string): Problem {
  return ask(got, 'Projects can’t be saved here: whoever runs this hasn’t given it a place for them.', 'help');
}

/** `other`: the project they most likely mean, to open or restore. */
export function noProject(got: string, other?: { readonly name: string; readonly deleted: boolean }): Problem {
  if (!other) return ask(got, 'No project is open. Start one: type “project new” and its name.', START_ASK);
  return other.deleted
    ? ask(
        got,
        `No project is open; “${other.name}” is deleted. Bring it back with “project restore ${other.name}”, or start another.`,
        `project restore ${other.name}`,
      )
    : ask(
        got,
        `No project is open. Open one with “project use ${other.name}”, or start another.`,
        `project use ${other.name}`,
      );
}

export function notAllowed(got: string): Problem {
  return ask(got, 'This project is shared with you. Only its owner can do this.', 'project show');
}

/** Says the same whether or not someone else has a project of that name. */
export function projectUnknown(got: string, near: string | undefined, command: string): Problem {
  return near === undefined
    ? ask(got, `You have no project “${quoted(got)}”.`, 'project list')
    : ask(got, `You have no project “${quoted(got)}”; the nearest is “${near}”.`, `project ${command} ${near}`);
}

/** A project that is already in this state, or can't leave it this way. */
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
    `You already have a project “${name}”. Open it, or give the new one another name.`,
    `project use ${name}`,
  );
}

export function nameDeleted(name: string): Problem {
  return ask(
    name,
    `You deleted a project “${name}” recently. Bring it back, or give the new one another name.`,
    `project restore ${name}`,
  );
}

export function tooManyProjects(name: string, most: number, oldest: string): Problem {
  return ask(name, `You have ${most} projects, and that is the most. Delete one first.`, `project delete ${oldest}`);
}

/** Recently deleted projects still count. */
export function tooManyDeleted(name: string, most: number, days: number): Problem {
  return ask(
    name,
    `With those deleted in the last ${days} days you have ${most} projects, and that is the most. Bring one back and change it, or wait until one is gone for good.`,
    'project list',
  );
}

export function tooManyRoomsKept(got: string, most: number): Problem {
  return ask(got, `A project has at most ${most} rooms: remove one, or start another project.`, 'project room list');
}

export function roomTooLong(name: string, most: number): Problem {
  return ask(name, `A room has at most ${most} characters: make its shape shorter, or give it as two rooms.`);
}

export function roomsTooLong(most: number): Problem {
  return ask(
    '',
    `All rooms together have at most ${most} characters: leave some out, or start another project.`,
    'project room list',
  );
}

export function roomUnknown(got: string, names: readonly string[], fix: string | undefined): Problem {
  const known = names.length === 0 ? 'It has no rooms yet' : `It has ${names.slice(0, 12).join(', ')}`;
  return ask(got, `The project has no room “${quoted(got)}”. ${known}.`, fix);
}

export function roomNameTaken(name: string): Problem {
  return ask(name, `There’s already a room “${name}”.`, `project room ${name}`);
}

export function roomNotRead(got: string): Problem {
  return ask(
    got,
    'Give a room’s name, length and width; or say what to do with one: remove, floor, doors, note, out of scope.',
  );
}

export function tooManyNotes(name: string, most: number): Problem {
  return ask(name, `A room has at most ${most} notes: remove one first.`, `project room ${name} remove note 1`);
}

export function noteUnknown(name: string, number: number, count: number): Problem {
  return ask(
    String(number),
    count === 0 ? `${name} has no notes.` : `The notes of ${name} are numbered 1 to ${count}.`,
    count === 0 ? `project room ${name}` : `project room ${name} remove note ${count}`,
  );
}

export function noteTooLong(got: string, most: number, fix: string): Problem {
  return ask(got, `At most ${most} characters are kept here.`, fix);
}

/** `fix` is the corrected pick if a similar name is known. */
export function pickUnknown(
  got: string,
  near: { name: string; text: string } | undefined,
  names: readonly string[],
): Problem {
  return near === undefined
    ? ask(got, `Give an option’s name and what you chose for it. Options: ${names.join(', ')}.`)
    : ask(
        got,
        `There’s no option “${quoted(got)}”; the nearest is “${near.name}”.`,
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
  return ask(got, `At most ${most} choices are saved: clear one first.`, 'project pick');
}

export function pickTooLong(option: string, most: number): Problem {
  return ask(option, `At most ${most} characters are kept for ${option}.`, 'project pick');
}

export function nothingToKeep(): Problem {
  return ask('', 'There’s no answer to save yet. Ask something first.');
}

export function tooManyKept(most: number): Problem {
  return ask('', `A project keeps at most ${most} answers: remove one first.`, 'project keep remove 1');
}

export function keptUnknown(got: string, count: number): Problem {
  return ask(
    got,
    count === 0 ? 'No answers are saved yet.' : `Saved answers are numbered 1 to ${count}.`,
    'project show',
  );
}

export function refusedAsk(why: string): Problem {
  return ask('', `This has no answer yet, so there is nothing to save: ${why}`, 'project show');
}

export function settingUnread(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function importUnread(got: string): Problem {
  return ask(got, 'This isn’t what “project mydata” gives, or part of it is missing.', 'project mydata');
}

export function importTooMany(most: number): Problem {
  return ask('', `With these you would have more than ${most} projects: delete some first.`, 'project list');
}
