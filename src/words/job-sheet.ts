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
  call: (who: string) => `Call: ${who}.`,
} as const;
