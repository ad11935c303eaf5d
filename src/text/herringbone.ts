/** The words of a herringbone answer. Figures come in already said. */

import { counted } from './floor.ts';

export interface BoughtBoards {
  readonly cartons: number;
  readonly perCarton: number;
  readonly boards: number;
  readonly mistakes: number;
  readonly spares: number;
  readonly left: number;
  /** Cartons of each hand, for boards that come as A and B. */
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
  /** `bound` is undefined when the count is proven least. */
  counted: (boards: number, whole: number, pieces: number, reused: number, bound: number | undefined) =>
    `${boards}: ${whole} whole, ${counted(pieces, 'piece')} cut at the walls${reused > 0 ? `, ${counted(reused, 'board')} cut to serve twice or more` : ''} (${bound === undefined ? 'no layout needs fewer' : `no layout needs fewer than ${bound}, by area`})`,
  hands: 'Of each make',
  perHand: (a: number, b: number) => `A ${a}, B ${b}`,
  byArea: 'By area + 15 % (rule of thumb)',
  pattern: 'Pattern',
  field: (width: string, length: string, border: number) =>
    `herringbone of ${width} × ${length} boards${border > 0 ? `, a border of ${counted(border, 'board')} along the walls, mitred at the corners` : ''}`,
  way: (room: string, degrees: string) => `${room}: the zigzags run ${degrees}`,
  along: 'along the long side; every board lies at 45° to it',
  across: 'along the short side; every board lies at 45° to it',
  diagonal: 'diagonally; the boards lie along and across the room',
  turned: (degrees: number) => `at ${degrees}° to the side across the plan`,
  fit: 'Length to width',
  aligned: (times: number) => `a board is ${times} widths long: board ends fall on board edges from zigzag to zigzag`,
  unaligned: (width: string, rest: string) =>
    `a board is no whole number of widths long (${rest} over): the field still closes without gaps, but the ends of one zigzag do not fall on the edges of the next; a length that is a whole multiple of ${width} would`,
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
    'Hold each board across before you as it lies on the plan, its left end to your left: pieces are told along it from its left end. “5" long side (edge away), 2" short side, 45°” is marked on both edges from the uncut end and cut from mark to mark; “corners at 3" × 2"” are places along the board × across it from the edge towards you.',
  ],
  handed: [
    'Snap a line through the middle of the room the way the zigzags run: the plan is laid out from the middle so that both sides are alike.',
    'A boards lie one way, B boards the other. If the first two do not lock, swap the two: makers do not agree on which is which.',
    'Work outwards from the first zigzag, all whole boards first; check every few boards that the points stay on a straight line.',
    'Cut the pieces at the walls last: mark each in place, for walls wander; the cut edge faces the wall, the locks face the field. A cut A board gives A pieces only.',
    'Hold each board across before you as it lies on the plan, its left end to your left: pieces are told along it from its left end. “5" long side (edge away), 2" short side, 45°” is marked on both edges from the uncut end and cut from mark to mark; “corners at 3" × 2"” are places along the board × across it from the edge towards you.',
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
