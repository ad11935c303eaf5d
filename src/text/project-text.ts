/** Text about projects: headlines, changes in words, autofill, saved answers, notes, measuring, and what can be done next. */

import type { Problem } from '../reply/reply.ts';
import { capital, quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';

/** The longest stretch of somebody's text that a change is told with. */
const LONGEST = 60;

function brief(text: string): string {
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1).replace(/[\uD800-\uDBFF]$/, '')}…` : text;
}

/** Changes, as they are listed and taken back. */
export const CHANGED = {
  renamed: (from: string, to: string) => `“${from}” renamed to “${to}”`,
  archived: 'archived',
  unarchived: 'taken out of the archive',
  deleted: 'deleted',
  restored: 'brought back',
  roomAdded: (name: string, text: string) => `${name} added: ${brief(text)}`,
  roomShape: (name: string, from: string, to: string) => `${name}: ${brief(from)} is now ${brief(to)}`,
  roomRemoved: (name: string) => `${name} removed`,
  roomRenamed: (from: string, to: string) => `${from} is now called ${to}`,
  roomFact: (name: string, what: string, text: string) => `${name}: ${what} ${brief(text)}`,
  noteGone: (name: string, text: string) => `${name}: no longer noted: ${brief(text)}`,
  notesGone: (name: string) => `${name}: notes removed`,
  roomFactGone: (name: string, what: string) => `${name}: ${what} no longer told`,
  scopeOut: (name: string) => `${name} left as it is`,
  scopeIn: (name: string) => `${name} is part of the job`,
  pick: (option: string, text: string) => `${option}: ${brief(text)}`,
  pickChanged: (option: string, from: string, to: string) => `${option}: ${brief(from)} is now ${brief(to)}`,
  pickGone: (option: string) => `${option} no longer picked`,
  kept: (headline: string) => `kept: ${brief(headline)}`,
  unkept: (headline: string) => `no longer kept: ${brief(headline)}`,
} as const;

export const PROJECT = {
  started: (name: string) => `“${name}” is started, and your asks are filled from it.`,
  copied: (name: string, from: string) => `“${name}” is started with the rooms and picks of “${from}”.`,
  none: 'You have no projects yet.',
  several: (count: number) => `${counted(count, 'project')}.`,
  inUse: (name: string) => `Your asks are filled from “${name}” now.`,
  notInUse: 'No project is in use: your asks are answered from what you type.',
  renamed: (name: string) => `It is called “${name}” now.`,
  archived: (name: string) => `“${name}” is archived. It stays as it is; “project use ${name}” takes it out again.`,
  deleted: (name: string, days: number) =>
    `“${name}” is deleted. For ${counted(days, 'day')} “project restore ${name}” brings it back.`,
  restored: (name: string) => `“${name}” is back, and your asks are filled from it.`,
  shown: (name: string, rooms: number, out: number) =>
    `${name}: ${rooms === 0 ? 'no rooms yet' : counted(rooms, 'room')}${out > 0 ? `, ${out} left as ${out === 1 ? 'it is' : 'they are'}` : ''}.`,
  done: (said: readonly string[]) => `${capital(said.join('; '))}.`,
  keptIn: (headline: string) => `Kept: ${headline}`,
  alsoKept: 'Kept with it',
  nothingChanged: 'Nothing is changed: it was so already.',
  rooms: 'Rooms',
  roomColumns: ['Room', 'Shape', 'Floor now', 'Doors', 'Notes'],
  roomOut: (name: string) => `${name} (left as it is)`,
  picks: 'Picks',
  changes: 'Changes, the latest first',
  projects: 'Projects',
  projectColumns: ['Project', 'Rooms', 'Kept answers', 'State'],
  states: { active: 'active', archived: 'archived', deleted: 'deleted' },
  use: 'in use',
  undone: (said: string) => `Taken back: ${said}.`,
  redone: (said: string) => `Made again: ${said}.`,
  nothingToUndo: 'There is no change to take back.',
  nothingToRedo: 'Nothing was taken back that could be made again.',
  undoCount: (count: number) => `${counted(count, 'change')} can be taken back.`,
  keptStays: (option: string, text: string) => `your pick stays: ${option} ${text}`,
  roomStays: (name: string) => `${name} stays as your project has it`,
  noPicks: 'Nothing is picked yet.',
  picked: (count: number) => `${counted(count, 'pick')}.`,
} as const;

/** Labels of the next asks. */
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
  copyOut: 'Take my data out',
  undoList: 'Changes so far',
  undo: 'Take it back',
  redo: 'Make it again',
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
  unitsOfText: 'what you tell with a unit is answered in that unit, and sizes already kept stay as they are',
  set: (name: string, value: string) => `${name} ${value}`,
  cleared: (name: string) => `${name} no longer set`,
} as const;

export const MYDATA = {
  headline: (projects: number) =>
    projects === 0 ? 'Nothing of yours is kept here.' : `Everything kept of you: ${counted(projects, 'project')}.`,
  settingsOnly: 'Everything kept of you: your settings.',
  how: 'Keep this code: “project mydata import: …” with it behind the colon brings the projects back, as new ones.',
  all: 'Everything, to read:',
  sure: (projects: number) =>
    `This would delete ${projects === 0 ? 'everything kept of you' : `${counted(projects, 'project')} and everything else kept of you`}, for good. Nothing is deleted yet.`,
  confirm: 'Type this to go on',
  forgotten: 'Everything kept of you is deleted.',
  imported: (names: readonly string[]) => `Brought in: ${names.map((name) => `“${name}”`).join(', ')}.`,
} as const;

/** What each setting takes. */
export const SETTING_EXPECTED = {
  units: 'Units are imperial or metric.',
  decimal: 'The decimal mark is a point or a comma.',
  currency: 'A currency is a code of three letters, such as USD, EUR or GBP.',
  country: 'A country is US, Canada, UK, Australia, or the name of another.',
} as const;

// What is said of an ask that was filled from a project, and of what became of the project meanwhile.

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

// The words where a list of a project is full, or has no such place.

/** Something that is full. */
export function tooMany(what: string, most: number, fix: string): Problem {
  return { option: 'ask', got: what, expected: `A project keeps ${most} ${what} at most: remove one first.`, fix };
}

/** A place in a list that is not there. */
export function noSuchPlace(got: string, most: number, fix: string): Problem {
  return {
    option: 'do',
    got: quoted(got),
    expected: most === 0 ? 'There is nothing in the list yet.' : `Tell a number from the list: 1 to ${most}.`,
    fix,
  };
}

// The words of saved answers: shown as they were, and how today's answer differs.

/** One saved answer, by its number in the list and its day. */
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
  /** In lists: which saved answers are not what the lists say. */
  lists: (saved: readonly (readonly [no: number, day: string])[]) =>
    `worked out from your rooms and choices as they are now; ${saved.map(([no, day]) => which(no, day)).join(', ')} ${saved.length === 1 ? 'differs' : 'differ'}`,
  /** Behind a change of rooms or picks. */
  stay: (count: number) =>
    `${counted(count, 'saved answer')} ${count === 1 ? 'stays as it was' : 'stay as they were'}; lists and totals use your rooms and choices as they are now`,
  use: (option: string) => `Use its ${option.replace(/^\S+ (?=\S)/, '').replaceAll('-', ' ')}`,
  outside: 'it was worked out for sizes of its own, not for your rooms, so it is in no list and no total',
  addRoom: 'Add its room to the project',
  inRoom: (headline: string, room: string) => `“${headline}” is about ${room}`,
} as const;

// The words of a project's notes.

export const LOG = {
  headline: (notes: number, shown: number) =>
    notes === 0
      ? 'No notes yet.'
      : shown < notes
        ? `${counted(notes, 'note')}, the last ${shown} shown.`
        : `${counted(notes, 'note')}.`,
  added: (no: number) => `Noted, number ${no}.`,
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
    expected: 'Tell the note, or “search” and a word, or “remove” and a number.',
    fix: 'note found water stain by the bay',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A note has at most ${most} characters: tell it in two.`,
    fix,
  }),
} as const;

// The words of measuring back: what is asked, what was told, and what it changes.

type Place = { readonly room: string; readonly wall?: number | undefined; readonly what?: string | undefined };

/** What is asked about: “wall 3 of bedroom”, “ceiling height of bedroom”. */
function sayPlace({ room, wall, what }: Place): string {
  return wall === undefined ? `${what ?? 'a length'} of ${room}` : `wall ${wall} of ${room}`;
}

export const MEASURE = {
  question: (place: Place) =>
    place.wall === undefined ? `${capital(sayPlace(place))}?` : `How long is ${sayPlace(place)}?`,
  requested: (place: Place, kept: string | undefined) =>
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
  saidRequested: (place: Place) => `asked to measure ${sayPlace(place)}`,
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
