/** Text on sheets that are handed on: PDF pages, spreadsheet headings and summaries. */

import type { SheetKey } from '../reply/job-sheet.ts';
import { counted } from './floor-text.ts';

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
  none: (project: string) => `${project}: nothing to hand on yet.`,
  title: 'Sheets',
  columns: ['Sheet', 'What it tells'],
  missing: 'Not on the sheets',
  helper: (no: string) => `helper ${no}`,
  refusal: 'Leave this to a professional',
  call: (who: string) => `Call: ${who.replace(/\.$/, '')}.`,
} as const;

/** Sheets of answers on repairs and finishing, by command, in the order of the job. */
export const REPAIR_TITLES: Readonly<Record<string, string>> = {
  'prep patch': 'Subfloor patch',
  'prep squeaks': 'Squeaks',
  'prep level': 'Flatness',
  'prep moisture': 'Moisture',
  'trim reset': 'Trim put back',
  'trim finish': 'Caulk, filler and paint',
};

/** Names of files, and what is said of them. */
export const FILES = {
  all: 'job sheets',
  /** Where a project's name has no letter for a file's name. */
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

// The heads of lists for spreadsheets.

export const CSV = {
  yes: 'yes',
  no: 'no',
  /** Cells of a row of the laying guide. */
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

// The words on printed sheets that are on no answer.

export const PAPER = {
  all: 'job sheets',
  title: (project: string, sheet: string) => `${project}: ${sheet}`,
  page: (no: number, all: number) => `${no} of ${all}`,
  pageHead: 'Page',
  none: 'Nothing to print yet.',
} as const;

// The words of an answer written to a file.

export const SHEET = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  text: 'Everything',
} as const;

// The words of a summary to hand on: short enough for one message.

export const HANDOFF = {
  title: (project: string, day: string) => `${project}, ${day}`,
  files: (project: string, count: number) => `${project}: ${counted(count, 'file')} to hand on.`,
  noFiles: (project: string) => `${project}: there is nothing to put into a file yet.`,
  labels: {
    call: 'Call first',
    care: 'Take care',
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
  moreCalls: (count: number) => `and ${count} more: “project found” tells of each`,
  boxed: 'letters that the font of the PDF lacks are printed as □; spreadsheets, data and the page have them',
  actions: { pdf: 'As a PDF to print', csv: 'As spreadsheets', json: 'As data', share: 'Share it by a link' },
} as const;

/** What can hurt, in a few words each; a topic without them is told whole. */
export const SHORT_CAUTIONS: Readonly<Record<string, string>> = {
  asbestos: 'an old floor below may hold asbestos: have it tested before it is disturbed',
  lead: 'paint from before 1978 (elsewhere before about 1997) may hold lead: test before cutting or sanding',
  'leak-water': 'leak: water off, circuit off; sewage is for a company',
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
  mould: 'mould over 10 sq ft: a professional',
  tetanus: 'wounds: tetanus',
};
