/** Text about whole homes, herringbone floors and floors already begun. Figures arrive already formatted. */

import { byUnits } from './answer-text.ts';
import { counted } from './floor-text.ts';

const HOLD_AS_DRAWN = `Hold each board in front of you the way it lies on the plan, with its left end on your left: pieces are measured from the left end. “${byUnits('5" long side (edge away), 2" short side', '120 mm long side (edge away), 50 mm short side')}, 45°” is marked on both edges from the uncut end and cut from mark to mark; “corners at ${byUnits('3" × 2"', '80 mm × 50 mm')}” are measured along the board × across it, from the edge near you.`;

export const HOME_TAKEN = {
  wall: (doorway: string, room: string, wall: number) =>
    `doorway ${doorway}: assuming wall ${wall} of ${room}, its longest wall that faces the other room`,
  middle: (doorway: string, room: string, wall: number) =>
    `doorway ${doorway}: assuming the middle of wall ${wall} of ${room}; add “${byUnits('12 in', '300 mm')} from the left of wall ${wall} of ${room}” where it is not`,
  turned: (room: string, angle: number) =>
    `${room}: turned ${angle === 180 ? 'half round' : `a quarter to the ${angle === 90 ? 'left' : 'right'}`} from how you gave it, so that its doorway meets the other one`,
  unplaced: (doorway: string, room: string) =>
    `doorway ${doorway}: its wall in ${room} isn’t known, so the floor in it is not counted there`,
} as const;

export const HOME = {
  doorways: 'Doorways',
  runsOn: (rooms: string, width: string) => `${rooms} ${width}: the floor runs on`,
  stops: (rooms: string, width: string, gap: string) =>
    `${rooms} ${width}: stops at a transition, gap ${gap} on each side`,
  transitions: 'Transition strips',
  strips: (count: number, lengths: string) => `${counted(count, 'piece')}: ${lengths}`,
  areas: 'Area, room by room',
  between: 'in doorways',
  standing: 'Planks go round',
  keepTitle: 'Offcuts to keep from room to room',
  order: (names: readonly string[], most: number) =>
    `Lay in this order: ${names.join(', then ')}. At most ${counted(most, 'offcut')} wait${most === 1 ? 's' : ''} for a later room.`,
  keep: (length: string, end: string, plank: number, from: string, room: string, row: string) =>
    `From ${from}: keep the ${length} ${end} of plank ${plank} for ${room} row ${row}.`,
  left: 'left end',
  right: 'right end',
  middle: 'rest',
  leftTitle: 'What is left at the end',
  leftWhole: 'Whole planks',
  leftWholeOf: (planks: number) => `${counted(planks, 'plank')}, if nothing goes wrong`,
  leftOffcuts: `Offcuts of ${byUnits('8 in', '200 mm')} and more`,
  leftOffcutsMetric: 'Offcuts of 200 mm and more',
  leftOf: (count: number, list: string) => `${count}: ${list}`,
  leftNone: 'none',
  times: (count: number, said: string) => `${count} × ${said}`,
  shorter: (count: number) => `${count} shorter`,
  leftRips: 'Strips',
  stripOf: (count: number, width: string, length: string) => `${count} of ${width} wide, ${length} in all`,
} as const;

// Herringbone answers.

export interface BoughtBoards {
  readonly cartons: number;
  readonly perCarton: number;
  readonly boards: number;
  readonly mistakes: number;
  readonly spares: number;
  readonly left: number;
  /** Cartons of each hand, for boards sold as A and B. */
  readonly hands?: { readonly A: number; readonly B: number };
}

export function boardsHeadline(
  { cartons, perCarton, boards, mistakes, spares, left, hands }: BoughtBoards,
  cost: string | undefined,
): string {
  const parts = [`${boards} to lay`];
  if (mistakes > 0) parts.push(`${mistakes} for mistakes`);
  if (spares > 0) parts.push(`${spares} spare`);
  if (left > 0) parts.push(`${left} left over`);
  const which = hands ? `${counted(hands.A, 'carton')} of A and ${hands.B} of B` : counted(cartons, 'carton');
  return `Buy ${which} (${counted(cartons * perCarton, 'board')}): ${parts.join(', ')}.${cost === undefined ? '' : ` ${cost}.`}`;
}

export const HERRING = {
  boards: 'Boards to lay',
  /** `bound` is undefined if the count is the proven minimum. */
  counted: (boards: number, whole: number, pieces: number, reused: number, bound: number | undefined) =>
    `${boards}: ${whole} whole, ${counted(pieces, 'piece')} cut at the walls${reused > 0 ? `, ${counted(reused, 'board')} cut into two or more pieces` : ''} (${bound === undefined ? 'no layout needs fewer' : `no layout needs fewer than ${bound}, by area`})`,
  hands: 'Of each make',
  perHand: (a: number, b: number) => `A ${a}, B ${b}`,
  byArea: 'By area + 15% (rule of thumb)',
  pattern: 'Pattern',
  field: (width: string, length: string, border: number) =>
    `herringbone of ${width} × ${length} boards${border > 0 ? `, a border of ${counted(border, 'board')} along the walls, mitered at the corners` : ''}`,
  way: (room: string, degrees: string) => `${room}: the zigzags run ${degrees}`,
  along: 'along the long side; every board lies at 45° to it',
  across: 'along the short side; every board lies at 45° to it',
  diagonal: 'diagonally; the boards lie along and across the room',
  turned: (degrees: number) => `at ${degrees}° to the side across the plan`,
  fit: 'Length to width',
  aligned: (times: number) => `a board is ${times} widths long: board ends fall on board edges from zigzag to zigzag`,
  unaligned: (width: string, rest: string) =>
    `a board isn’t a whole number of widths long (${rest} over). The field still closes without gaps, but the zigzags don’t line up. A length that is a whole multiple of ${width} would line up`,
  rules: 'Gap and kerf',
  kept: (gap: string, kerf: string) => `gap ${gap} at every wall, kerf ${kerf}`,
  cutsTitle: (room: string) => `Pieces to cut: ${room}`,
  columns: ['Piece', 'Make', 'How many'],
  more: (kinds: number) => `${counted(kinds, 'more kind')}, fitted in place`,
  handsRead: 'A and B boards come in cartons of their own, and mistakes and spares are shared between them',
  actions: {
    border: 'With a border of 1 board',
    plain: 'Without a border',
    diagonal: 'Boards along the walls',
    along: 'Zigzags along the room',
  },
} as const;

export const HERRING_STEPS = {
  title: 'How to lay it',
  none: [
    'Snap a line through the middle of the room the way the zigzags run, and one square to it: the plan is laid out from the middle so that both sides are alike.',
    'Lay the first two boards as on the plan, the end of one against the side of the other, in a square; check them against the line before anything else, for every later board follows them.',
    'Work outwards from the first zigzag, all whole boards first; check every few boards that the points stay on a straight line.',
    'Cut the pieces at the walls last: mark each in place, for walls wander; the cut edge faces the wall. Where a board gives two pieces, a kerf lies between them.',
    HOLD_AS_DRAWN,
  ],
  handed: [
    'Snap a line through the middle of the room the way the zigzags run: the plan is laid out from the middle so that both sides are alike.',
    'A boards lie one way, B boards the other. If the first two do not lock, swap the two: makers do not agree on which is which.',
    'Work outwards from the first zigzag, all whole boards first; check every few boards that the points stay on a straight line.',
    'Cut the pieces at the walls last: mark each in place, for walls wander; the cut edge faces the wall, the locks face the field. A cut A board gives A pieces only.',
    HOLD_AS_DRAWN,
  ],
} as const;

export const HERRING_DRAWING = {
  title: (room: string) => `${room}: herringbone plan`,
  headline: (room: string, boards: number, pieces: number) =>
    `${room}: ${counted(boards, 'board')}, ${counted(pieces, 'piece')} to cut.`,
  facts: (size: string, boards: number, pieces: number) =>
    `${size} · ${counted(boards, 'new board')} · ${counted(pieces, 'piece')} cut`,
  alt: (room: string, size: string, boards: number, pieces: number, border: number) =>
    `Plan of ${room}, ${size}, in herringbone${border > 0 ? ` with a border of ${counted(border, 'board')}` : ''}: ${counted(boards, 'board')} begun here, ${counted(pieces, 'piece')} cut at the walls.`,
  whole: 'whole board',
  cut: 'cut from a new board',
  kept: 'cut from a new board whose rest is laid too',
  reused: 'cut from the rest of another',
  start: 'Begin at the point in the middle and work outwards.',
} as const;

// A floor already begun.

export const RESUME = {
  enough: (planks: string, offcuts: string, spare: number) =>
    `Yes: ${planks} and ${offcuts} lay the rest, ${spare === 0 ? 'none to spare' : `${counted(spare, 'plank')} to spare`}.`,
  short: (planks: number, cartons: number) =>
    `Not enough: ${counted(planks, 'plank')} short. Buy ${counted(cartons, 'carton')} more.`,
  planks: (count: number) => counted(count, 'plank'),
  offcuts: (count: number) => counted(count, 'offcut'),
  title: 'What is there, and what the rest takes',
  laid: 'Laid',
  laidRows: (room: string, rows: number, of: number) =>
    `${room} ${rows} of ${counted(of, 'row')}${of > rows ? `, ${of - rows} to go` : ''}`,
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
    'Offcuts are numbered in the order you gave them: write the numbers on them. A left end makes the last piece of a row, a right end its first one.',
    'Rows and walls are numbered as in the plan of the whole floor; a row starts at its left end as you stand with your back to the starting wall.',
    'Measure each end piece in place before you cut it.',
  ],
} as const;

export const RESUME_NOTES = {
  asPlanned: (room: string, row: number) =>
    `${room} row ${row}: assuming its pieces are as planned; if not, say “row ${row} ended at …”`,
  endMeant: (room: string, row: number) => `${room} row ${row}: what it ended at is the length of its last piece`,
  taken: (room: string) => `assuming rows without a room are in ${room}`,
  leftPlanned: (left: number) =>
    `Assuming ${left} planks left, from the cartons planned, the rows laid and what broke: count them`,
  noOffcuts: 'Assuming no offcuts: say which you have',
  brokenGiven: 'Assuming what is left was counted after the breakage',
} as const;

export const TALLY = {
  item: 'A count, a price or both: “7 boxes at $64.99”, with “;” between several.',
  offer: 'A price and what it covers: “$54.99 for 20 sq ft”, with “;” between several.',
  done: 'How much of how much: “8 of 20 rows”.',
  used: 'What is used: “6 boxes”.',
  count: (count: number, unit: string) =>
    count === 1 ? `1 ${unit === 'boxes' ? 'box' : unit.slice(0, -1)}` : `${count} ${unit}`,
  nth: (i: number) => ['First', 'Second', 'Third', 'Fourth'][i] ?? `Number ${i + 1}`,
  bySquare: (money: string, metric: boolean) => `${money} a ${metric ? 'm²' : 'sq ft'}`,
  one: (price: string) => `That is ${price}.`,
  even: (price: string) => `They cost the same: ${price}.`,
  cheaper: (best: number, price: string, others: readonly string[]) =>
    others.length === 1
      ? `The ${['first', 'second'][best] ?? 'other'} is cheaper: ${price}, the ${['second', 'first'][best] ?? 'other'} ${others[0]}.`
      : `Number ${best + 1} is cheapest: ${price}; the others ${others.join(', ')}.`,
  rate: (rest: number, all: number, unit: string, more: number, whole: number, what: string) =>
    `${rest} of ${all} ${unit} left: at this rate ${more} ${what} more, ${whole} in all.`,
  rateHow: 'First and last rows need more cuts, so keep one more at hand.',
  left: (rest: number, all: number, unit: string, share: string) => `${rest} of ${all} ${unit} left: ${share}.`,
  saidUsed: 'Say what you have used so far, and I’ll work out what is still needed.',
  unused: (rest: number, all: number, unit: string) => `${rest} of ${all} ${unit} left.`,
  over: (used: number, all: number, unit: string) => `That is more than I counted: ${used} used of ${all} ${unit}.`,
  yes: (what: string, parts: readonly string[]) =>
    parts.length > 1 ? `Yes, ${what}: ${parts.join(' + ')}.` : `Yes, ${what}.`,
  no: (what: string, apart: string, more: boolean, said: string) =>
    more ? `${what} will do: ${said} is ${apart} more.` : `No: ${said} is ${apart} short of the ${what} I count.`,
  parts: (parts: readonly string[]) => `${parts.join(' + ')}.`,
  tax: (money: string) => `${money} tax`,
  money: (whole: string, what: readonly string[], share: string | undefined) =>
    `${whole}${what.length === 0 ? ' in all' : ` for ${what.join(' and ')}`}${share === undefined ? '' : `, with ${share} tax`}.`,
  yours: (mine: string, whole: string, theirs: string) =>
    `You pay ${mine}: ${whole} less ${theirs} that is paid for you.`,
  more: 'Say “plus 8% tax”, or what an insurer pays, and I’ll work that in.',
  covers: (count: string, area: string) => `${count} ${count.startsWith('1 ') ? 'covers' : 'cover'} ${area}.`,
  saidRoom: 'Say the room’s length and width, and I’ll tell you whether that is enough.',
  inAll: (count: string, parts: readonly string[]) =>
    parts.length > 1 ? `${count} in all: ${parts.join(' + ')}.` : `${count} in all.`,
  saidPrice: 'Say what one costs for the sum in money.',
} as const;
