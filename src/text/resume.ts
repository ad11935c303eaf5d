/** The words of the answer for a floor begun. Figures come in already said. */

import { counted } from './floor.ts';

export const RESUME = {
  enough: (planks: string, offcuts: string, spare: number) =>
    `Yes: ${planks} and ${offcuts} lay the rest, ${spare === 0 ? 'none to spare' : `${counted(spare, 'plank')} to spare`}.`,
  short: (planks: number, cartons: number) =>
    `Not enough: ${counted(planks, 'plank')} short. Buy ${counted(cartons, 'carton')} more.`,
  planks: (count: number) => counted(count, 'plank'),
  offcuts: (count: number) => counted(count, 'offcut'),
  title: 'What is there, and what the rest takes',
  laid: 'Laid',
  laidRows: (room: string, rows: number, of: number) => `${room} ${rows} of ${counted(of, 'row')}`,
  last: 'Last row as it lies',
  lastRow: (room: string, row: number, pieces: string) => `${room} row ${row}: ${pieces}`,
  left: 'Whole planks left',
  broken: 'Broken so far',
  kept: 'Offcuts at hand',
  none: 'none',
  offcut: (number: number, length: string, end: string) => `${number}: ${length}${end === 'any' ? '' : ` ${end} end`}`,
  takes: 'The rest takes',
  takesOf: (planks: number, offcuts: number, bound: number) =>
    `${counted(planks, 'whole plank')}${offcuts === 0 ? '' : ` and ${counted(offcuts, 'offcut')}`}${planks === bound ? ' (no way of laying these rows takes fewer)' : ` (no way of laying these rows takes fewer than ${bound})`}`,
  verdict: 'Enough?',
  yes: (spare: number) =>
    spare === 0
      ? 'just enough: one more broken plank would be one too few'
      : `enough; ${spare === 1 ? 'one more may break' : `${spare} more may break`}`,
  no: (short: number, cartons: number, perCarton: number) =>
    `${counted(short, 'plank')} short: ${counted(cartons, 'carton')} of ${perCarton} more, of the same lot if you can`,
  guide: (room: string) => `The rest: ${room}`,
  fromOffcut: (piece: string, offcut: number) => `${piece} offcut ${offcut}`,
  read: 'How to read it',
  steps: [
    'Offcuts are numbered as you told them: write the numbers on them. A left end makes the last piece of a row, a right end its first one.',
    'Rows and walls are numbered as in the plan of the whole floor; a row starts at its left end as you stand with your back to the starting wall.',
    'Measure each end piece in place before you cut it.',
  ],
} as const;

export const RESUME_NOTES = {
  asPlanned: (room: string, row: number) =>
    `${room} row ${row}: its pieces taken as the plan has them; tell “row ${row} ended at …” where they are not`,
  endMeant: (room: string, row: number) => `${room} row ${row}: what it ended at is the length of its last piece`,
  taken: (room: string) => `rows told without a room are taken to be of ${room}`,
  leftPlanned: (left: number) =>
    `planks left were not told: ${left}, as the plan’s cartons, the rows laid and what broke leave them; count them`,
  noOffcuts: 'offcuts at hand were not told: none is counted',
  brokenTold: 'what is left is taken as counted after the breakage',
} as const;
