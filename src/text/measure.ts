/** The words of measuring back: what is asked, what was told, and what it changes. */

import type { Problem } from '../reply/reply.ts';
import { capital, quoted } from './asks.ts';
import { counted } from './floor.ts';

type Place = { readonly room: string; readonly wall?: number | undefined; readonly what?: string | undefined };

/** What is asked about: “wall 3 of bedroom”, “ceiling height of bedroom”. */
export function sayPlace({ room, wall, what }: Place): string {
  return wall === undefined ? `${what ?? 'a length'} of ${room}` : `wall ${wall} of ${room}`;
}

export const MEASURE = {
  question: (place: Place) =>
    place.wall === undefined ? `${capital(sayPlace(place))}?` : `How long is ${sayPlace(place)}?`,
  asked: (place: Place, kept: string | undefined) =>
    `Asked: ${sayPlace(place)}${kept === undefined ? '' : `, kept as ${kept}`}. Whoever measures sees it with their next answer.`,
  already: (place: Place) => `It is asked already: ${sayPlace(place)}.`,
  nobody: 'nobody else measures for this project yet: “project share” lets somebody',
  none: 'Nothing is asked to be measured.',
  open: (count: number) => `${counted(count, 'length')} asked to be measured.`,
  openTitle: 'To measure',
  columns: ['No.', 'What', 'Kept as', 'Type when measured'],
  tell: (place: Place, example: string) => `project measure ${sayPlace(place)} is ${example}`,
  item: (place: Place, kept: string | undefined, tell: string) =>
    `${capital(sayPlace(place))}${kept === undefined ? '' : ` (kept as ${kept})`}. Type: ${tell}`,
  inProject: (project: string, question: string) => `${project}: ${question}`,
  withdrawn: (places: readonly Place[]) => `No longer asked: ${places.map(sayPlace).join('; ')}.`,
  same: (place: Place, length: string) => `${capital(sayPlace(place))} is ${length}, as kept. Nothing changes.`,
  noted: (place: Place, length: string) => `${capital(sayPlace(place))}: ${length}. It is noted with the room.`,
  changed: (place: Place, from: string, to: string, figures: readonly string[]) =>
    `${capital(sayPlace(place))}: ${from} is now ${to}${figures.length === 0 ? '' : `: ${figures.join(', ')}`}.`,
  saidChanged: (place: Place, from: string, to: string, figures: readonly string[]) =>
    `${sayPlace(place)}: ${from} is now ${to}${figures.length === 0 ? '' : ` (${figures.join(', ')})`}`,
  saidSame: (place: Place, length: string) => `${sayPlace(place)} measured: ${length}, as kept`,
  saidKept: (place: Place, length: string) =>
    `${sayPlace(place)} measured: ${length}; it does not fit the other walls yet`,
  saidAsked: (place: Place) => `asked to measure ${sayPlace(place)}`,
  saidWithdrawn: (place: Place) => `no longer asked: ${sayPlace(place)}`,
  saidNoted: (place: Place, length: string) => `${sayPlace(place)} measured: ${length}`,
  misses: (place: Place, length: string, miss: string, again: readonly number[]) =>
    `${capital(sayPlace(place))} is kept as told, ${length}, and the room as it was: with it the walls miss each other by ${miss}. ${measureAgain(again)}`,
  unsure: (place: Place, length: string, again: readonly number[]) =>
    `${capital(sayPlace(place))} is kept as told, ${length}, and the room as it was: more than one wall may be the reason. ${measureAgain(again)}`,
  figure: (label: string, from: string, to: string) => `${label} ${from} → ${to}`,
  planksLabel: 'Planks',
  planks: (from: string, to: string) => `${from} → ${to} planks`,
  cartons: (from: string, to: string) => `${from} → ${to}`,
  sameLists: 'the lists stay as they were',
  figuresTitle: 'What changes',
  figureColumns: ['What', 'Before', 'Now'],
  walls: 'Plan with wall numbers',
  numbered: 'walls are numbered against the clock from the lower left corner, as in the drawings',
  eased: (by: string) => `the walls missed each other by ${by}, as tapes do: the longest wall not told takes it`,
} as const;

function measureAgain(again: readonly number[]): string {
  if (again.length === 0) return 'Tell the room anew with “project room”.';
  const list = again.length === 1 ? `wall ${again[0]}` : `walls ${again.slice(0, -1).join(', ')} and ${again.at(-1)}`;
  return `Measure ${list} again.`;
}

function ask(got: string, expected: string, fix?: string): Problem {
  return { option: 'ask', got: quoted(got), expected, fix };
}

export const MEASURE_PROBLEMS = {
  unread: (got: string, room: string) =>
    ask(
      got,
      'Ask for a wall, such as “wall 3 of bedroom”, or tell how long it is, such as “wall 3 of bedroom is 11\' 6 1/4"”.',
      `project measure wall 1 of ${room}`,
    ),
  noRooms: (got: string) => ask(got, 'The project has no rooms to measure yet.'),
  whichRoom: (got: string, wall: number, rooms: readonly string[], rest: string) =>
    ask(
      got,
      `Of which room? There are ${rooms.join(', ')}.`,
      `project measure wall ${wall} of ${rooms[0] ?? ''}${rest}`,
    ),
  noWall: (wall: number, room: string, walls: number) =>
    ask(
      `wall ${wall} of ${room}`,
      `${room} has walls 1 to ${walls}, numbered against the clock from the lower left corner.`,
      `project measure wall ${walls} of ${room}`,
    ),
  unreadable: (room: string) => ask(room, `The shape of ${room} cannot be read: tell it anew.`),
  whichQuestion: (got: string, lines: readonly string[]) =>
    ask(got, 'Several lengths are asked: say which one this is.', lines[0] ?? 'project measure'),
  noQuestion: (got: string, room: string) =>
    ask(got, 'Nothing is asked to be measured: say which wall this is.', `project measure wall 1 of ${room} is ${got}`),
  unknownQuestion: (got: string) =>
    ask(got, 'There is no such open question: it was answered or withdrawn.', 'project measure'),
  tooMany: (most: number) =>
    ask('', `At most ${most} lengths are asked at once: withdraw one first.`, 'project measure'),
  tooLong: (what: string, most: number) =>
    ask(
      what,
      `What is to be measured is told in at most ${most} characters.`,
      'project measure ceiling height of bedroom',
    ),
  moved: () =>
    ask('', 'The room was changed by others again and again just now. Tell it once more.', 'project measure'),
} as const;
