/** The words of sheets to be handed on. */

import type { SheetKey } from '../reply/job-sheet.ts';
import { counted } from './floor.ts';

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
  refusal: 'Not for you to do',
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
