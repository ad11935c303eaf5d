/** Text about projects: headlines, changes in words, autofill, saved answers, notes, measuring, and what can be done next. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { capital, quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';

/** The longest quote of a user's text in a change. */
const LONGEST = 60;

function brief(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1).replace(/[\uD800-\uDBFF]$/, '')}…` : text;
}

/** Changes, as listed and undone. */
export const CHANGED = {
  renamed: (from: string, to: string) => `“${from}” renamed to “${to}”`,
  archived: 'archived',
  unarchived: 'back from the archive',
  deleted: 'deleted',
  restored: 'brought back',
  roomAdded: (name: string, text: string) => `${name} added: ${brief(text)}`,
  roomShape: (name: string, from: string, to: string) => `${name}: ${brief(from)} is now ${brief(to)}`,
  roomRemoved: (name: string) => `${name} removed`,
  roomRenamed: (from: string, to: string) => `${from} is now called ${to}`,
  roomFact: (name: string, what: string, text: string) => `${name}: ${what} ${brief(text)}`,
  noteGone: (name: string, text: string) => `${name}: note removed: ${brief(text)}`,
  notesGone: (name: string) => `${name}: notes removed`,
  roomFactGone: (name: string, what: string) => `${name}: ${what} cleared`,
  scopeOut: (name: string) => `${name} is not part of the job`,
  scopeIn: (name: string) => `${name} is part of the job`,
  pick: (option: string, text: string) => `${option}: ${brief(text)}`,
  pickChanged: (option: string, from: string, to: string) => `${option}: ${brief(from)} is now ${brief(to)}`,
  pickGone: (option: string) => `${option} cleared`,
  kept: (headline: string) => `saved: ${brief(headline)}`,
  unkept: (headline: string) => `no longer saved: ${brief(headline)}`,
} as const;

export const PROJECT = {
  started: (name: string) => `“${name}” is started. Your questions now use its rooms and choices.`,
  copied: (name: string, from: string) => `“${name}” is started with the rooms and choices of “${from}”.`,
  none: 'You have no projects yet.',
  several: (count: number) => `${counted(count, 'project')}.`,
  inUse: (name: string) => `Your questions now use “${name}”.`,
  notInUse: 'No project is open: answers use only what you type.',
  renamed: (name: string) => `It’s now called “${name}”.`,
  archived: (name: string) => `“${name}” is archived. It stays as it is; “project use ${name}” brings it back.`,
  deleted: (name: string, days: number) =>
    `“${name}” is deleted. For ${counted(days, 'day')} “project restore ${name}” brings it back.`,
  restored: (name: string) => `“${name}” is back. Your questions now use its rooms and choices.`,
  shown: (name: string, rooms: number, out: number) =>
    `${name}: ${rooms === 0 ? 'no rooms yet' : counted(rooms, 'room')}${out > 0 ? `, ${out} left as ${out === 1 ? 'it is' : 'they are'}` : ''}.`,
  done: (said: readonly string[]) => `${capital(said.join('; '))}.`,
  keptIn: (headline: string) => `Saved: ${headline}`,
  alsoKept: 'Also saved',
  nothingChanged: 'That is already how it is.',
  rooms: 'Rooms',
  roomColumns: ['Room', 'Shape', 'Floor now', 'Doors', 'Notes'],
  roomOut: (name: string) => `${name} (not part of the job)`,
  picks: 'Picks',
  changes: 'Changes, the latest first',
  projects: 'Projects',
  projectColumns: ['Project', 'Rooms', 'Saved answers', 'State'],
  states: { active: 'active', archived: 'archived', deleted: 'deleted' },
  use: 'in use',
  undone: (said: string) => `Undone: ${said}.`,
  redone: (said: string) => `Redone: ${said}.`,
  nothingToUndo: 'There is no change to undo.',
  nothingToRedo: 'There is nothing to redo.',
  undoCount: (count: number) => `${counted(count, 'change')} can be undone.`,
  keptStays: (option: string, text: string) => `your choice stays: ${option} ${text}`,
  roomStays: (name: string) => `${name} stays as your project has it`,
  noPicks: 'No choices yet.',
  picked: (count: number) => `${counted(count, 'pick')}.`,
} as const;

export const NEXT = {
  show: 'Show the project',
  list: 'All my projects',
  planks: 'How many cartons?',
  start: 'Start a project',
  addRoom: 'Add a room',
  pick: 'Pick a plank',
  example: 'Try with an example plank',
  shopping: 'What to buy',
  remove: 'Remove',
  progress: 'What comes next?',
  copyOut: 'Download my data',
  undoList: 'Changes so far',
  undo: 'Undo',
  redo: 'Redo',
  use: (name: string) => `Use ${name}`,
  restore: (name: string) => `Bring back ${name}`,
} as const;

export const SETTINGS = {
  title: 'Your settings',
  headline: 'Your settings.',
  changed: (parts: readonly string[]) => `${capital(parts.join('; '))}.`,
  names: { '.': 'point', ',': 'comma' },
  ofPlatform: (value: string) => `${value} (not set here)`,
  notSet: 'not set here',
  noCountry: 'not set: the US where sizes are in feet, elsewhere in metric',
  unitsOfText: 'a size you give with a unit is answered in that unit, and sizes you already saved stay as they are',
  set: (name: string, value: string) => `${name} ${value}`,
  cleared: (name: string) => `${name} no longer set`,
} as const;

export const MYDATA = {
  headline: (projects: number) =>
    projects === 0
      ? 'Nothing of yours is stored here.'
      : `Everything stored about you: ${counted(projects, 'project')}.`,
  settingsOnly: 'Everything stored about you: your settings.',
  how: 'Keep this code: “project mydata import: …” with the code after the colon brings the projects back, as new ones.',
  all: 'Everything, to read:',
  sure: (projects: number) =>
    `This would delete ${projects === 0 ? 'everything stored about you' : `${counted(projects, 'project')} and everything else stored about you`}, for good. Nothing is deleted yet.`,
  confirm: 'Type this to go on',
  forgotten: 'Everything stored about you is deleted.',
  imported: (names: readonly string[]) => `Imported: ${names.map((name) => `“${name}”`).join(', ')}.`,
} as const;

export const SETTING_EXPECTED = {
  units: 'Units are imperial or metric.',
  decimal: 'The decimal mark is a point or a comma.',
  currency: 'A currency is a code of three letters, such as USD, EUR or GBP.',
  country: 'A country is US, Canada, UK, Australia, or the name of another.',
} as const;

/** The action that every quick answer offers. */
export const KEEP_LABEL = 'Keep in project';

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

/** Notes on what was filled in don't concern people the answer is handed to. */
export function isFillNote(note: string): boolean {
  return [FROM_PROJECT, FROM_SETTINGS, NOT_USED].some((start) => note.startsWith(start));
}

export function roomsPart(names: readonly string[]): string {
  return `${names.length === 1 ? 'room' : 'rooms'} ${names.join(', ')}`;
}

export function optionPart(option: string, text: string): string {
  return `${option.replaceAll('-', ' ')} ${text}`;
}

export function readAsNote(line: string): string {
  return `read as “${line}”`;
}

export function roomByName(
  project: string,
  rooms: readonly { readonly name: string; readonly text: string }[],
): string {
  return `${FROM_PROJECT}${project}”: ${rooms.map(({ name, text }) => `${name} is ${text}`).join('; ')}`;
}

export function unreadableNote(): string {
  return 'your project can’t be read just now, so this uses what you typed; nothing is lost';
}

export function pickUnread(project: string, option: string, text: string): string {
  return `${NOT_USED}${project}”: ${option} ${quoted(text)}, which I can’t read here`;
}

export function pickElsewhere(project: string, option: string): string {
  return `${NOT_USED}${project}”: ${option.replaceAll('-', ' ')} in rooms that are not part of this`;
}

export function floorsDiffer(floors: readonly (readonly [room: string, floor: string])[], fix: string): Problem {
  return {
    option: 'ask',
    got: quoted(floors.map(([room, floor]) => `${room}: ${floor}`).join('; ')),
    expected: 'The rooms of your project have different floors on them: ask about those of one floor at a time.',
    fix,
  };
}

export function takenBack(said: string): string {
  return `undone: ${said}`;
}

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

export function tooMany(what: string, most: number, fix: string): Problem {
  return { option: 'ask', got: what, expected: `A project has at most ${most} ${what}: remove one first.`, fix };
}

export function noSuchPlace(got: string, most: number, fix: string): Problem {
  return {
    option: 'do',
    got: quoted(got),
    expected: most === 0 ? 'There is nothing in the list yet.' : `Give a number from the list: 1 to ${most}.`,
    fix,
  };
}

// Saved answers: shown as they were, and how today's answer differs.

const which = (no: number, day: string): string => `saved answer ${no} (${day})`;

export const SAVED = {
  title: 'Saved answers, as they were',
  columns: ['No.', 'Day', 'Answer', 'Request'],
  differs: (no: number, day: string, today: string) => `${capital(which(no, day))} is different today: ${today}`,
  unanswered: (no: number, day: string, why: string) =>
    `${capital(which(no, day))} can't be worked out again today: ${why}`,
  gone: (no: number, day: string) =>
    `${capital(which(no, day))} isn't about the rooms of this job as they are now: it's in no list and no total.`,
  unread: (no: number, day: string) =>
    `${capital(which(no, day))} can't be read any more: it's in no list and no total.`,
  show: 'Saved answers',
  button: (no: number) => `Today's answer for no. ${no}`,
  /** In lists: saved answers that differ from the list. */
  lists: (saved: readonly (readonly [no: number, day: string])[]) =>
    `worked out from your rooms and choices as they are now; ${saved.map(([no, day]) => which(no, day)).join(', ')} ${saved.length === 1 ? 'differs' : 'differ'}`,
  /** After a change of rooms or picks. */
  stay: (count: number) =>
    `${counted(count, 'saved answer')} ${count === 1 ? 'stays as it was' : 'stay as they were'}; lists and totals use your rooms and choices as they are now`,
  use: (option: string) => `Use its ${option.replace(/^\S+ (?=\S)/, '').replaceAll('-', ' ')}`,
  outside: 'it was worked out for sizes of its own, not for your rooms, so it is in no list and no total',
  addRoom: 'Add its room to the project',
  inRoom: (headline: string, room: string) => `“${headline}” is about ${room}`,
} as const;

export const LOG = {
  headline: (notes: number, shown: number) =>
    notes === 0
      ? 'No notes yet.'
      : shown < notes
        ? `${counted(notes, 'note')}, the last ${shown} shown.`
        : `${counted(notes, 'note')}.`,
  added: (no: number) => `Noted, number ${no}.`,
  spare: (cartons: number, planks: number, broken: number) =>
    broken > planks
      ? `${counted(cartons, 'carton')} won’t do: get ${counted(broken - planks, 'plank')} more of the same lot.`
      : `${counted(cartons, 'carton')} still do: ${planks - broken} of ${counted(planks, 'spare plank')} left.`,
  removed: (text: string) => `Removed: ${quoted(text)}`,
  hits: (count: number, words: string) => `${counted(count, 'note')} with ${quoted(words)}.`,
  title: 'Notes',
  columns: ['No.', 'When', 'Note'],
  said: (text: string) => `note: ${text}`,
  saidRemoved: (text: string) => `note removed: ${text}`,
  remove: (no: number) => `Remove note ${no}`,
} as const;

export const LOG_PROBLEMS = {
  empty: (): Problem => ({
    option: 'do',
    got: '',
    expected: 'Type the note, or “search” and a word, or “remove” and a number.',
    fix: 'note found water stain by the bay',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A note has at most ${most} characters: make it two notes.`,
    fix,
  }),
} as const;

// Measuring: what is asked, what was answered, and what that changes.

type Place = { readonly room: string; readonly wall?: number | undefined; readonly what?: string | undefined };

/** “wall 3 of bedroom”, “ceiling height of bedroom”. */
function sayPlace({ room, wall, what }: Place): string {
  return wall === undefined ? `${what ?? 'a length'} of ${room}` : `wall ${wall} of ${room}`;
}

export const MEASURE = {
  question: (place: Place) =>
    place.wall === undefined ? `${capital(sayPlace(place))}?` : `How long is ${sayPlace(place)}?`,
  requested: (place: Place, kept: string | undefined) =>
    `Asked: ${sayPlace(place)}${kept === undefined ? '' : `, kept as ${kept}`}. Whoever measures will see it with their next answer.`,
  already: (place: Place) => `Already asked: ${sayPlace(place)}.`,
  nobody: 'nobody else can measure for this project yet: “project share” lets them',
  none: 'Nothing is waiting to be measured.',
  open: (count: number) => `${counted(count, 'length')} waiting to be measured.`,
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
  saidRequested: (place: Place) => `asked to measure ${sayPlace(place)}`,
  saidWithdrawn: (place: Place) => `no longer asked: ${sayPlace(place)}`,
  saidNoted: (place: Place, length: string) => `${sayPlace(place)} measured: ${length}`,
  misses: (place: Place, length: string, miss: string, again: readonly number[]) =>
    `${capital(sayPlace(place))} is saved as ${length}, but the room stays as it was: with it the walls miss each other by ${miss}. ${measureAgain(again)}`,
  unsure: (place: Place, length: string, again: readonly number[]) =>
    `${capital(sayPlace(place))} is saved as ${length}, but the room stays as it was: more than one wall may be off. ${measureAgain(again)}`,
  figure: (label: string, from: string, to: string) => `${label} ${from} → ${to}`,
  planksLabel: 'Planks',
  planks: (from: string, to: string) => `${from} → ${to} planks`,
  cartons: (from: string, to: string) => `${from} → ${to}`,
  sameLists: 'the lists stay the same',
  figuresTitle: 'What changes',
  figureColumns: ['What', 'Before', 'Now'],
  walls: 'Plan with wall numbers',
  numbered: 'walls are numbered counterclockwise from the lower left corner, as in the drawings',
  eased: (by: string) =>
    `the walls missed each other by ${by}, as tapes do: the longest wall you didn’t give makes up for it`,
} as const;

function measureAgain(again: readonly number[]): string {
  if (again.length === 0) return 'Give the room again with “project room”.';
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
      `Ask for a wall, such as “wall 3 of bedroom”, or give its length, such as “wall 3 of bedroom is ${byUnits(`11' 6 1/4"`, '3.51 m')}”.`,
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
      `${room} has walls 1 to ${walls}, numbered counterclockwise from the lower left corner.`,
      `project measure wall ${walls} of ${room}`,
    ),
  unreadable: (room: string) => ask(room, `I can’t read the shape of ${room}: give it again.`),
  whichQuestion: (got: string, lines: readonly string[]) =>
    ask(got, 'Several lengths are waiting: say which one this is.', lines[0] ?? 'project measure'),
  noQuestion: (got: string, room: string) =>
    ask(
      got,
      'Nothing is waiting to be measured: say which wall this is.',
      `project measure wall 1 of ${room} is ${got}`,
    ),
  unknownQuestion: (got: string) =>
    ask(got, 'That one isn’t waiting anymore: it was answered or withdrawn.', 'project measure'),
  tooMany: (most: number) =>
    ask('', `At most ${most} lengths can wait at once: withdraw one first.`, 'project measure'),
  tooLong: (what: string, most: number) =>
    ask(what, `What to measure has at most ${most} characters.`, 'project measure ceiling height of bedroom'),
  moved: () => ask('', 'Others kept changing the room just now. Send it once more.', 'project measure'),
} as const;
