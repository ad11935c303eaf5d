/** The work that saved answers make part of the job: which command, in which rooms as they are now, with which options of its own. */

import type { Command, Context } from '../../../src/chat/command.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import type { KeptAsk, Project } from '../../../src/project/project.ts';
import { inScope, type Rooms, sameName } from '../../../src/project/project-room.ts';

/** Work at places: each saved answer is a place of its own. All others are sums over the rooms of the job. */
export const OF_PLACES: readonly string[] = ['prep squeaks', 'prep patch', 'prep level', 'prep moisture'];

export interface Work {
  readonly saved: KeptAsk;
  /** The command's full name. */
  readonly name: string;
  /** Options of its own, as they were given. */
  readonly own: ReadonlyMap<string, string>;
  /** The rooms of the job that it is about, as they are now; undefined for all, or where none is given. */
  readonly rooms: Rooms | undefined;
  /** Whether its command is asked by room. */
  readonly byRoom: boolean;
}

/** The work of each saved answer that can still be read and is part of the job: one whose rooms are gone, or stay as they are, is none. */
export function savedWork(
  project: Project,
  { commands, habits }: Pick<Context, 'commands' | 'habits'>,
): readonly Work[] {
  return project.kept.flatMap((saved) => {
    const work = workOf(saved, project, commands, habits);
    return typeof work === 'string' ? [] : [work];
  });
}

/** `gone`: none of its rooms is part of the job; `unread`: its request can't be read any more. */
export function workOf(
  saved: KeptAsk,
  { rooms }: Project,
  commands: readonly Command[],
  habits: Context['habits'],
): Work | 'gone' | 'unread' {
  const parsed = parseLine(saved.ask, commands, habits);
  if (!parsed.ok) return 'unread';
  const about = saved.rooms && inScope(rooms).filter(({ name }) => saved.rooms?.some((one) => sameName(one, name)));
  if (about?.length === 0) return 'gone';
  const name = fullName(parsed.command);
  const byRoom = 'room' in parsed.command.options.shape && (!OF_PLACES.includes(name) || parsed.told.has('room'));
  const own = new Map([...parsed.told].filter(([option]) => saved.own.includes(option)));
  return { saved, name, own, rooms: about, byRoom };
}

/** A line that begins with its command's whole name, whatever was typed. */
export function requestLine(name: string, options: ReadonlyMap<string, string>): string {
  return `${name} ${[...options].map(([option, text]) => `${option}: ${text}`).join(', ')}`.trimEnd();
}

/** The work as it is asked for today: its own options, everything else from the project. */
export function todaysLine({ name, own, rooms, byRoom }: Work): string {
  return requestLine(name, new Map([...(rooms && byRoom ? [['room', namesOf(rooms)] as const] : []), ...own]));
}

export function namesOf(rooms: Rooms): string {
  return rooms.map(({ name }) => name).join('; ');
}
