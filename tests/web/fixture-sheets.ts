/** Sheets of a small upstairs flat for tests of the page: replies of the real commands, ticks and pieces made by hand. */

import type { JobSheet, SawEnd, SawPiece, Sheets, Tick } from '../../src/reply/job-sheet.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { replyTo } from '../chat/asked.ts';

const PLANK = 'plank: 7 x 48 in, 10 per carton';

export const SQUARE: SawEnd = { cut: 'square', degrees: 0, said: 'square' };
export const INSIDE: SawEnd = {
  cut: 'mitre',
  degrees: 45,
  corner: 'inside',
  long: 'back',
  said: 'inside miter 45°',
};
export const OUTSIDE: SawEnd = {
  cut: 'mitre',
  degrees: 22.5,
  corner: 'outside',
  long: 'face',
  said: 'outside miter 22.5°',
};

export const PIECES: readonly SawPiece[] = [
  {
    no: 1,
    of: 'trim',
    room: 'bedroom',
    place: 'bedroom 1a',
    what: 'baseboard',
    length: '80 3/16"',
    ticks: 651_764,
    left: INSIDE,
    right: { cut: 'scarf', degrees: 30, long: 'back', said: 'scarf 30°' },
    from: 'stick 1, 8 ft',
    note: 'The joint lies on the stud 80 in from the left corner.',
  },
  {
    no: 2,
    of: 'trim',
    room: 'bedroom',
    place: 'bedroom 2a',
    what: 'baseboard',
    length: '52"',
    ticks: 422_656,
    left: OUTSIDE,
    right: SQUARE,
    from: 'stick 2, 8 ft',
  },
  {
    no: 3,
    of: 'plank',
    room: 'bedroom',
    place: 'Row 3, last',
    what: 'right end of the row',
    length: '41 3/8"',
    ticks: 336_296,
    width: '3 1/2"',
    widthTicks: 28_448,
    left: { cut: 'factory', degrees: 0, said: 'as it comes' },
    right: { cut: 'slant', degrees: 30, long: 'far', said: 'cut at 30°' },
    from: 'plank 7',
  },
];

export function tick(key: string, label: string, group: string, ticked = false): Tick {
  return {
    key,
    label,
    group,
    ticked,
    ask: `project shopping bought all ${key}`,
    undo: `project shopping return ${key}`,
  };
}

/** A reply with nothing but its headline and what can hurt. */
export function bareReply(headline: string, caution = 'Utility knife: cut away from yourself.'): Reply {
  return {
    headline,
    blocks: [],
    assumed: [],
    cautions: [{ topic: 'knife', text: caution }],
    sources: [{ title: 'Common practice of the trade', standing: 'common practice' }],
    actions: [{ label: 'Not for guests', ask: 'project delete' }],
    audience: 'asker',
    data: { kind: 'any' },
  };
}

/** The flat's sheets; `name` is what its owner called it, `room` its bedroom. */
export async function flatSheets(name = 'Upstairs flat', room = 'bedroom'): Promise<Sheets> {
  const [guide, tearout, trim] = await Promise.all([
    replyTo(`layout room: bedroom 11' x 12'6", ${PLANK}`),
    replyTo(`tearout room: bedroom 11' x 12'6", floor: carpet`),
    replyTo(`trim list room: bedroom 11' x 12'6", stock: 8 ft $7.98`),
  ]);
  const shopping: Reply = {
    ...bareReply('3 things left to buy: $312.40.'),
    blocks: [
      { kind: 'checklist', title: 'Tear-out', items: ['Contractor bags: 4 bags', 'Ask the shop for boxes'] },
      { kind: 'table', title: 'Bought', columns: ['What', 'Lot'], rows: [['Planks 7" × 48"', 'B7']] },
    ],
  };
  const sheets: readonly JobSheet[] = [
    {
      key: 'shopping',
      title: 'Shopping list',
      reply: shopping,
      ticks: [
        tick('bags', 'Contractor bags: 4 bags', 'Tear-out'),
        tick('planks', 'Planks 7" × 48": 6 cartons of 10', 'Lay the floor', true),
        tick('caulk', 'Caulk: 2 tubes', 'Caulk'),
      ],
    },
    { key: 'tearout', title: 'Tear-out', reply: tearout },
    { key: 'repairs', title: 'Squeaks', reply: bareReply('24 screws.') },
    {
      key: 'checklist',
      title: 'Checklist',
      reply: bareReply('1 of 44 stages done.'),
      ticks: [tick('clear bedroom', 'clear the room', room), tick('tear-out bedroom', 'tear-out', room)],
    },
    { key: 'guide', room, title: 'Laying guide', reply: guide },
    { key: 'cuts', room, title: 'Cuts', reply: { ...trim, blocks: [] }, pieces: PIECES },
  ];
  return { kind: 'sheets', project: name, made: Date.UTC(2026, 10, 21, 12), units: 'imperial', zone: 'UTC', sheets };
}
