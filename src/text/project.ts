/** What is said of projects: headlines, the changes in words, and what can be done next. */

import { capital } from './asks.ts';
import { counted } from './floor.ts';

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
  toldUnits: 'what you tell with a unit is answered in that unit, and sizes already kept stay as they are',
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
