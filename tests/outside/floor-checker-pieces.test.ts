/** Faults planted in rows, pieces and planks are each caught for their own reason. */

import { expect, it } from 'vitest';
import { checkFloor } from './floor-checker.ts';
import type { Change } from './floor-checker-plans.ts';
import { handLaidFloor, pieceOf, pieces, regionOf, rowOf, set } from './floor-checker-plans.ts';

/** What is planted, and every fault that must be told of it, in any order. */
type Case = [name: string, change: Change, faults: string[]];

const covers = (region: string, some: number, all: number): string =>
  `${region}: pieces cover ${some} of ${all} square ticks`;

const cases: Case[] = [
  [
    'a piece cut short',
    (f) => set(pieceOf(f, 0, 0, 2), { length: 21 }),
    [
      covers('living', 1194, 1200),
      'living, row 0: no piece from 100 to 101',
      'living, row 0: the end at 79 does not finish at a wall',
    ],
  ],
  [
    'a piece cut long',
    (f) => set(pieceOf(f, 0, 0, 2), { length: 23 }),
    ['living, row 0: the piece at 79 does not lie within a run', 'living, row 0: no piece from 79 to 101'],
  ],
  [
    'a piece laid over the next',
    (f) => set(pieceOf(f, 0, 0, 0), { length: 31 }),
    [covers('living', 1206, 1200), 'living, row 0: the piece at 31 overlaps the one before, which ends at 32'],
  ],
  [
    'a piece beyond the floor',
    (f) => rowOf(f, 0, 0).pieces.push(...pieces('full', [150, 10, 2, 'any'])),
    [
      'plank 2: its pieces and kerfs take 59 of 48',
      'count: 2 reused planks told, 3 in the rows',
      'living, row 0: the piece at 150 lies on no floor',
      'living, row 0: the piece at 150 does not lie within a run',
    ],
  ],
  [
    'a missing piece',
    (f) => rowOf(f, 1, 1).pieces.pop(),
    [covers('closet', 100, 220), 'closet, row 1: no piece from 0 to 20'],
  ],
  [
    'a plank too short for its pieces',
    (f) => set(pieceOf(f, 0, 1, 2), { plank: 1 }),
    [
      'plank 1: its pieces and kerfs take 68 of 48',
      'count: 6 planks told, 5 in the rows',
      'count: 2 reused planks told, 3 in the rows',
    ],
  ],
  [
    'a kerf forgotten',
    (f) => set(f.rules, { kerf: 12 }),
    ['plank 3: its pieces and kerfs take 49 of 48', 'plank 6: its pieces and kerfs take 84 of 48'],
  ],
  ['two starts from one plank', (f) => set(pieceOf(f, 0, 1, 0), { plank: 1 }), ['plank 1: gives more than one start']],
  [
    'two ends from one plank',
    (f) => {
      set(pieceOf(f, 0, 1, 0), { plank: 1, length: 30 });
      set(pieceOf(f, 0, 1, 1), { u: 31 });
      set(pieceOf(f, 0, 1, 2), { u: 79, length: 22, plank: 3 });
      f.rules.stagger = 0;
    },
    [
      'plank 1: its pieces and kerfs take 61 of 48',
      'plank 1: gives more than one start',
      'plank 3: gives more than one end',
      'count: 6 planks told, 5 in the rows',
      'count: 2 reused planks told, 3 in the rows',
    ],
  ],
  [
    'rips too wide to share a plank',
    (f) => {
      rowOf(f, 1, 2).height = 4;
      set(regionOf(f, 1), {
        outline: [
          [187, -1],
          [201, -1],
          [201, 21],
          [187, 21],
        ],
      });
    },
    ['plank 6: its pieces and kerfs take 62 of 48'],
  ],
  [
    'both rips on the same edge',
    (f) => set(pieceOf(f, 1, 2, 0), { edge: 'near' }),
    [
      'plank 6: its pieces and kerfs take 62 of 48',
      'closet, row 2: the piece at 0 lost the edge that locks to the row before',
    ],
  ],
  [
    'a first row that lost its locking edge',
    (f) => set(pieceOf(f, 1, 0, 0), { edge: 'far', plank: 7 }),
    ['count: 6 planks told, 7 in the rows', 'closet, row 0: the piece at 0 lost the edge that locks to the next row'],
  ],
  [
    'a ripped piece called full',
    (f) => set(pieceOf(f, 1, 0, 0), { edge: 'full', plank: 7 }),
    ['count: 6 planks told, 7 in the rows', 'closet, row 0: the piece at 0 is called full in a ripped row'],
  ],
  [
    'a full piece called ripped',
    (f) => set(pieceOf(f, 0, 0, 0), { edge: 'near' }),
    ['living, row 0: the piece at 1 is called near in a row of full width'],
  ],
  [
    'a start called any',
    (f) => set(pieceOf(f, 0, 0, 0), { part: 'any' }),
    [
      'living, row 0: the piece at 1 comes from any part and has an end at no wall',
      'living, row 0: the joint at 31 has a cut end (any to whole)',
    ],
  ],
  [
    'an end at the left wall',
    (f) => set(pieceOf(f, 0, 0, 0), { part: 'end' }),
    [
      'living, row 0: the end at 1 does not finish at a wall',
      'living, row 0: the joint at 31 has a cut end (end to whole)',
    ],
  ],
  [
    'a start amid the run',
    (f) => set(pieceOf(f, 0, 0, 2), { part: 'start' }),
    [
      'plank 3: gives more than one start',
      'living, row 0: the joint at 79 has a cut end (whole to start)',
      'living, row 0: the start at 79 does not begin at a wall',
    ],
  ],
  [
    'a cut piece called whole',
    (f) => set(pieceOf(f, 0, 0, 0), { part: 'whole' }),
    ['living, row 0: the piece at 1 is called whole and is not a plank long'],
  ],
  [
    'a row off the one before',
    (f) => set(rowOf(f, 0, 1), { v: 8 }),
    [
      'living, row 1: starts at v 8, not on the row before',
      'living: the last row ends at v 14, the floor at 13',
      covers('living', 1100, 1200),
    ],
  ],
  [
    'a floor pushed into the wall',
    (f) =>
      void regionOf(f, 0).rows.forEach((one) => {
        one.v -= 1;
      }),
    [
      'living: the first row starts at v 0, the floor at 1',
      'living: the last row ends at v 12, the floor at 13',
      covers('living', 1100, 1200),
    ],
  ],
  [
    'a ripped row amid the floor',
    (f) => {
      set(rowOf(f, 1, 1), { height: 5 });
      set(rowOf(f, 1, 2), { v: 7, height: 4 });
      pieceOf(f, 1, 1, 0).plank = 7;
      pieceOf(f, 1, 2, 0).plank = 7;
    },
    [
      'count: 6 planks told, 7 in the rows',
      'closet, row 1: a ripped row amid the floor',
      'closet, row 1: the piece at 0 is called full in a ripped row',
    ],
  ],
  [
    'rows higher than a plank is wide',
    (f) => {
      set(rowOf(f, 0, 0), { height: 12 });
      regionOf(f, 0).rows.pop();
    },
    [
      'count: 6 planks told, 4 in the rows',
      'count: 2 reused planks told, 1 in the rows',
      'living, row 0: higher than a plank is wide',
      'living, row 0: the piece at 1 is called full in a ripped row',
      'living, row 0: the piece at 31 is called full in a ripped row',
      'living, row 0: the piece at 79 is called full in a ripped row',
      'bound: 6 planks by row told, at most 4 follow',
    ],
  ],
  [
    'a region left bare',
    (f) => set(regionOf(f, 1), { rows: [] }),
    [
      'count: 6 planks told, 5 in the rows',
      'count: 2 reused planks told, 1 in the rows',
      'closet: no rows',
      covers('closet', 0, 220),
      'bound: 6 planks by row told, at most 5 follow',
    ],
  ],
];

it.each(cases)('%s is caught', (_, change, faults) => {
  const floor = handLaidFloor();
  change(floor);
  expect(checkFloor(floor).sort()).toEqual([...faults].sort());
});
