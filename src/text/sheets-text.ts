/** Text on sheets to hand on: PDF pages, spreadsheet headings and summaries. */

import type { SheetKey } from '../reply/job-sheet.ts';
import { counted } from './floor-text.ts';
import { byUnits } from './units-text.ts';

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
