/** What is said of an ask that was filled from a project, and of what became of the project meanwhile. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

/** The label of the action that every quick answer offers. */
export const KEEP_LABEL = 'Keep in project';

/** The title over what others changed. */
export const NEWS_TITLE = 'Changed since you last looked';

const FROM_PROJECT = 'from your project “';
const FROM_SETTINGS = 'from your settings: ';
const NOT_USED = 'not used from your project “';

export function filledNote(project: string, parts: readonly string[]): string {
  return `${FROM_PROJECT}${project}”: ${parts.join('; ')}`;
}

export function standardsNote(parts: readonly string[]): string {
  return `${FROM_SETTINGS}${parts.join('; ')}`;
}

/** Whether a note tells what an ask was filled from: nothing for those whom its answer is handed to. */
export function isFillNote(note: string): boolean {
  return [FROM_PROJECT, FROM_SETTINGS, NOT_USED].some((start) => note.startsWith(start));
}

export function roomsPart(names: readonly string[]): string {
  return `${names.length === 1 ? 'room' : 'rooms'} ${names.join(', ')}`;
}

export function optionPart(option: string, text: string): string {
  return `${option.replaceAll('-', ' ')} ${text}`;
}

/** A sentence about a project, as the line it was taken for. */
export function readAsNote(line: string): string {
  return `read as “${line}”`;
}

/** A room told by its name. */
export function roomByName(
  project: string,
  rooms: readonly { readonly name: string; readonly text: string }[],
): string {
  return `${FROM_PROJECT}${project}”: ${rooms.map(({ name, text }) => `${name} is ${text}`).join('; ')}`;
}

export function unreadableNote(): string {
  return 'your project could not be read just now: this is worked out from what you typed, and nothing of yours is lost';
}

/** A pick that this command cannot read. */
export function pickUnread(project: string, option: string, text: string): string {
  return `${NOT_USED}${project}”: ${option} ${quoted(text)}, which cannot be read here`;
}

/** A pick for places in rooms that an answer is not about. */
export function pickElsewhere(project: string, option: string): string {
  return `${NOT_USED}${project}”: ${option.replaceAll('-', ' ')} in rooms that are not part of this`;
}

/** Rooms whose floors differ, where one floor is asked about. */
export function floorsDiffer(floors: readonly (readonly [room: string, floor: string])[], fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(floors.map(([room, floor]) => `${room}: ${floor}`).join('; ')),
    expected: 'The rooms of your project have different floors on them: ask about those of one floor at a time.',
    fix,
  };
}

export function takenBack(said: string): string {
  return `taken back: ${said}`;
}

/** How long ago something was, in words. */
export function sayAgo(milliseconds: number): string {
  const minutes = Math.max(0, Math.floor(milliseconds / 60_000));
  if (minutes < 1) return 'just now';
  const [count, unit] =
    minutes < 60
      ? [minutes, 'minute']
      : minutes < 48 * 60
        ? [Math.floor(minutes / 60), 'hour']
        : [Math.floor(minutes / 1440), 'day'];
  return `${count} ${unit}${count === 1 ? '' : 's'} ago`;
}
