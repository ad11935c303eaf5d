/** Text on sheets to hand on (PDF pages, spreadsheet headings, summaries) and about a project's progress. */

import type { SheetKey } from '../reply/job-sheet.ts';
import type { Stage } from '../reply/need.ts';
import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';

/** A stage's name inside a sentence. */
export const STAGE_IN: Readonly<Record<Stage, string>> = {
  clear: 'clear the room',
  'tear-out': 'tear-out',
  subfloor: 'squeaks and patches',
  flat: 'flatness',
  dry: 'moisture',
  acclimate: 'cartons in the room',
  lay: 'laying the floor',
  transitions: 'transitions',
  baseboards: 'baseboards',
  caulk: 'caulk and filler',
  paint: 'paint',
};

export const PROGRESS = {
  headline: (done: number, all: number, next: string | undefined) =>
    next === undefined
      ? `All ${counted(all, 'stage')} done.`
      : `${done} of ${counted(all, 'stage')} done. Next: ${next}.`,
  next: (room: string, stage: Stage) => `${STAGE_IN[stage]} in ${room}`,
  nextIs: (stage: Stage) => STAGE_IN[stage],
  finished: 'finished',
  title: 'Room by room',
  columns: ['Room', 'Done', 'Next', 'Waits for'],
  doneOf: (done: number, all: number) => `${done} of ${all}`,
  todoTitle: (room: string, stage: Stage) => `${room}: ${STAGE_IN[stage]}`,
  waiting: (stage: Stage, until: string, left: string) => `${STAGE_IN[stage]} until ${until} (${left} left)`,
  waitingOn: (stage: Stage) => `${STAGE_IN[stage]}, no end given`,
  over: (stage: Stage) => `${STAGE_IN[stage]}: the wait is over, check it and tick it off`,
  blocked: (stage: Stage) =>
    stage === 'flat' ? 'not flat' : stage === 'dry' ? 'not dry' : `${STAGE_IN[stage]} is blocked`,
  unchecked: (stage: Stage) => (stage === 'acclimate' ? 'cartons in the room' : `${STAGE_IN[stage]} not checked`),
  laterTitle: 'Waiting or not right for later stages',
  behindTitle: 'Skipped so far',
  behind: (room: string, stages: readonly Stage[]) => `${room}: ${stages.map((stage) => STAGE_IN[stage]).join(', ')}`,
  dueTitle: 'Waits that are over',
  due: (room: string, stage: Stage, since: string) =>
    stage === 'acclimate'
      ? `${room}: the cartons have had their time (since ${since}). Check that the subfloor is flat and dry, then lay.`
      : `${room}: ${STAGE_IN[stage]} has had its time (since ${since}). Check it, then tick it off.`,
  change: (rooms: readonly string[], stages: readonly Stage[], state: string, when: string) =>
    `${rooms.join(', ')}: ${stages.map((stage) => STAGE_IN[stage]).join(', ')} ${state}${when}.`,
  states: { done: 'done', waiting: 'under way', blocked: 'not right yet', skipped: 'left out', open: 'open again' },
  until: (since: string, until: string) => ` from ${since} until ${until}`,
  hours: (hours: number) =>
    hours >= 48
      ? `${Math.floor(hours / 24)} d ${Math.round(hours % 24)} h`
      : hours >= 1
        ? `${Math.round(hours)} h`
        : `${Math.max(1, Math.round(hours * 60))} min`,
  zone: (zone: string) => `all times are in the bot’s time zone, ${zone}`,
  taken: (hours: number) =>
    `${hours} h for the cartons is the longest any maker is reported to want; give yours, “for 24 h”`,
  nextTaken: (stage: Stage) => `assuming ${STAGE_IN[stage]}, since it comes next`,
  tick: (room: string, stage: Stage) => `Done: ${STAGE_IN[stage]}, ${room}`,
  among: 'Tick off',
} as const;

/** What must be true before each stage. */
export const STAGE_ITEMS: Readonly<Record<Stage, readonly string[]>> = {
  clear: [
    'Rooms empty, dust shut in, cartons ordered or their date sure.',
    'Photograph the rooms and what is damaged.',
  ],
  'tear-out': [
    'First: what lies below is known; nothing old, black or papery.',
    'Section by section: strips, pad, staples, tack strip; sweep, then vacuum.',
  ],
  subfloor: [
    'First: every staple and nail is out, the floor is vacuumed.',
    'Mark squeaks and soft spots, screw down, cut out what is rotten (“squeaks”, “patch”).',
  ],
  flat: [
    'First: the subfloor does not move.',
    `A ${byUnits('10 ft', '3 m')} straightedge every way (“level”); let the leveler dry as its bag says.`,
  ],
  dry: ['First: no leak, no wet spot.', 'Measure moisture (“moisture”).'],
  acclimate: [
    'First: wet work is dry, the room is heated as you live in it.',
    'Cartons flat in the room as the maker says.',
  ],
  lay: [
    'First: flat, dry, clean, quiet; all cartons of one lot.',
    'Undercut casings, keep the gap at every wall (“layout”).',
  ],
  transitions: ['First: the last row is in, the spacers are out.', 'Tracks go into the subfloor, doors back on.'],
  baseboards: ['First: the gap lies under the trim everywhere.', 'Nail to the wall, never to the floor (“list”).'],
  caulk: ['First: all trim is nailed, nails are set.', 'Fill, caulk the top edge only (“finish”).'],
  paint: ['First: filler and caulk are dry.', 'Paint; wait between coats as the label says.'],
};

export const PROGRESS_PROBLEMS = {
  unread: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected:
      'Say what is done or waiting, and in which room: “done tear-out bedroom”, “not flat hall”, “acclimating bedroom since Friday 18:00 for 48 h”.',
    fix,
  }),
  whichRoom: (got: string, rooms: readonly string[], fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `In which room: ${rooms.join(', ')}, or everywhere?`,
    fix,
  }),
  noRooms: (): Problem => ({
    option: 'ask',
    got: '',
    expected: 'The project has no rooms yet: add them first.',
  }),
  howLong: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'For how long, or until when? Look on the bag, the can or the carton.',
    fix,
  }),
  finished: (got: string, room: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `Everything is done in ${room}.`,
    fix: 'list',
  }),
  backwards: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'It ends before it begins.',
    fix,
  }),
} as const;

export const GUIDES = {
  headline: (rooms: readonly string[]) => `Laying guides: ${rooms.join(', ')}.`,
} as const;

export const SHEETS = {
  titles: {
    shopping: 'Shopping list',
    tearout: 'Tear-out',
    repairs: 'Repairs and finishing',
    checklist: 'Checklist',
    guide: 'Laying guide',
    cuts: 'Cuts',
  } satisfies Readonly<Record<SheetKey, string>>,
  of: (title: string, rooms: string) => `${title}: ${rooms}`,
  headline: (project: string, count: number) => `${project}: ${counted(count, 'sheet')}.`,
  none: (project: string) => `${project}: nothing to hand out yet.`,
  title: 'Sheets',
  columns: ['Sheet', 'What it shows'],
  missing: 'Not on the sheets',
  helper: (no: string) => `helper ${no}`,
  refusal: 'Leave this to a professional',
  call: (who: string) => `Call: ${who.replace(/\.$/, '')}.`,
} as const;

/** Titles for answers on repairs and finishing, by command, in the order of the job. */
export const REPAIR_TITLES: Readonly<Record<string, string>> = {
  'prep patch': 'Subfloor patch',
  'prep squeaks': 'Squeaks',
  'prep level': 'Flatness',
  'prep moisture': 'Moisture',
  'trim reset': 'Trim put back',
  'trim finish': 'Caulk, filler and paint',
};

export const FILES = {
  all: 'job sheets',
  /** For a project whose name has no letters. */
  stem: 'project',
  lists: { shopping: 'shopping list', cuts: 'cut list', rows: 'rows', pieces: 'pieces', checklist: 'checklist' },
  title: (project: string, what: string) => `${project}: ${what}`,
  alt: (titles: readonly string[]) => `To print: ${titles.join('; ')}.`,
  listAlt: (what: string) => `A table for a spreadsheet: ${what}.`,
  saved: (path: string) => `File: ${path}`,
  notSaved: (folder: string, why: string) => `The file could not be saved in ${folder}: ${why}`,
  notMade: (title: string) => `“${title}” could not be made. Ask again for it.`,
  gone: 'The files went to whoever asked; “project handoff as: pdf” makes them again.',
  attached: (names: readonly string[]) => `Files: ${names.join(', ')}`,
} as const;

export const CSV = {
  yes: 'yes',
  no: 'no',
  rowCells: 5,
  columns: (length: string) => ({
    shopping: [
      'Thing',
      'Stage',
      'Needed',
      'Unit',
      'Packages needed',
      'Bought',
      'Packages left to buy',
      'Left to buy',
      'Packages that can go back',
    ],
    cuts: [
      'Room',
      'No.',
      'Of',
      'Place',
      'Piece',
      'How many',
      `Length (${length})`,
      `Rip to (${length})`,
      'Left end',
      'Left end (degrees)',
      'Right end',
      'Right end (degrees)',
      'Cut from',
      'Note',
    ],
    rows: ['Room', 'Row', 'Start', 'Whole', 'End', 'Cut from'],
    pieces: [
      'Room',
      'Row',
      'Plank',
      'Part',
      'Edge',
      `From left (${length})`,
      `From starting wall (${length})`,
      `Length (${length})`,
      `Width (${length})`,
    ],
    checklist: ['Room', 'Stage', 'Done', 'By', 'Day'],
  }),
} as const;

export const PAPER = {
  all: 'job sheets',
  title: (project: string, sheet: string) => `${project}: ${sheet}`,
  page: (no: number, all: number) => `${no} of ${all}`,
  pageHead: 'Page',
  none: 'Nothing to print yet.',
  everyRoom: 'every room',
  once: 'Read this once: it holds for every room.',
  care: (briefs: readonly string[], page: number | undefined) =>
    `Caution: ${briefs.join(' ')}${page === undefined ? '' : ` The steps: page ${page}.`}`,
} as const;

export const SHEET = {
  assumed: 'How it was read',
  cautions: 'Safety',
  sources: 'Sources',
  text: 'Everything',
} as const;

// Summaries to hand on, each short enough for one message.

export const HANDOFF = {
  title: (project: string, day: string) => `${project}, ${day}`,
  files: (project: string, count: number) => `${project}: ${counted(count, 'file')} to hand out.`,
  noFiles: (project: string) => `${project}: there is nothing to put into a file yet.`,
  labels: {
    call: 'Call first',
    care: 'Safety',
    rooms: 'Rooms',
    floor: 'Floor',
    rows: 'Rows',
    tearout: 'Old floor',
    found: 'Found',
    trim: 'Trim',
    stage: 'Stage',
    waits: 'Waits',
    open: 'Still open',
    missing: 'Could not be worked out',
    left: 'Left out here, for length',
  },
  room: (name: string, area: string) => `${name} ${area}`,
  all: (area: string) => `together ${area}`,
  floor: (size: string, pattern: string, cartons: number, perCarton: number, planks: number) =>
    `${size} planks, ${pattern}, ${counted(cartons, 'carton')} of ${perCarton}, ${planks} planks to lay`,
  rows: (room: string, rows: number) => `${room} ${counted(rows, 'row')}`,
  wait: (room: string, stage: string, until: string) => `${room}: ${stage} until ${until}`,
  more: (count: number) => `and ${count} more`,
  moreCalls: (count: number) => `and ${count} more: “project found” lists them all`,
  boxed: 'letters that the font of the PDF lacks are printed as □; spreadsheets, data and the page have them',
  actions: { pdf: 'As a PDF to print', csv: 'As spreadsheets', json: 'As data', share: 'Share it by a link' },
} as const;

/** Short forms; a topic without one is shown in full. */
export const SHORT_CAUTIONS: Readonly<Record<string, string>> = {
  asbestos: 'an old floor below may hold asbestos: have it tested before it is disturbed',
  lead: 'paint from before 1978 (elsewhere before about 1997) may hold lead: test before cutting or sanding',
  'leak-water': 'leak: water off, circuit off; sewage is a job for a company',
  'hidden-lines': 'cables and pipes in walls and floors: find them first',
  'tack-strip': 'tack strip nails',
  blade: 'knife blades',
  saw: 'saw: guard on',
  'nail-gun': 'nail gun: full sequential trigger',
  dust: 'dust: N95 mask',
  silica: 'silica in concrete dust: never grind dry',
  fumes: 'fumes: windows open, no flame',
  noise: 'noise: ears covered',
  knees: 'knee pads',
  lifting: 'heavy cartons: two people',
  mould: `mold over ${byUnits('10 sq ft', '1 m²')}: a professional`,
  tetanus: 'wounds: tetanus',
};
