/** Faults planted in rules, counts and bounds are each caught for their own reason. */

import { expect, it } from 'vitest';
import { checkFloor } from './floor-checker.ts';
import type { Change } from './floor-checker-plans.ts';
import { handLaidFloor, regionOf, set } from './floor-checker-plans.ts';

/** What is planted, and every fault that must be told of it, in any order. */
type Case = [name: string, change: Change, faults: string[]];

const cases: Case[] = [
  [
    'a stagger break not told',
    (f) => set(f.rules, { stagger: 16 }),
    ['living, row 1: stagger is broken at 16 and not told', 'living, row 1: stagger is broken at 64 and not told'],
  ],
  [
    'a stagger break told where there is none',
    (f) => f.broken.push({ rule: 'stagger', region: 'living', row: 1, at: 16 }),
    ['living, row 1: stagger is told broken at 16 and is not'],
  ],
  ['a short end not told', (f) => set(f.rules, { minEnd: 16 }), ['living, row 1: minEnd is broken at 1 and not told']],
  [
    'a short end told of a closet, where any length may lie',
    (f) => f.broken.push({ rule: 'minEnd', region: 'closet', row: 1, at: 0 }),
    ['closet, row 1: minEnd is told broken at 0 and is not'],
  ],
  ['a thin rip not told', (f) => set(f.rules, { minRip: 3 }), ['closet, row 0: minRip is broken at 0 and not told']],
  [
    'a pattern left and not told',
    (f) => set(f.rules, { pattern: { name: 'half' } }),
    ['living: rows [1] leave the pattern and [] are told'],
  ],
  [
    'a pattern told broken that is kept',
    (f) => {
      set(f.rules, { pattern: { name: 'stair-step', step: 33, rows: 2 } });
      f.broken.push({ rule: 'pattern', region: 'closet', row: 1, at: 3 });
    },
    ['closet: rows [] leave the pattern and [1] are told'],
  ],
  [
    'a break told in a row that is not there',
    (f) => f.broken.push({ rule: 'minRip', region: 'hall', row: 0, at: 0 }),
    ['hall, row 0: minRip is told broken where there is no such row'],
  ],
  [
    'a wrong count of planks',
    (f) => set(f.count, { planks: 7 }),
    ['count: 7 planks told, 6 in the rows', 'count: 2 cartons told, 3 needed', 'bound: proven is told to be true'],
  ],
  ['a wrong count of cartons', (f) => set(f.count, { spares: 2 }), ['count: 2 cartons told, 3 needed']],
  ['a wrong bound by area', (f) => set(f.bound, { area: 4 }), ['bound: 4 planks by area told, 5 follow']],
  ['a proof that is none', (f) => set(f.bound, { row: 5, best: 5 }), ['bound: proven is told to be true']],
  [
    'a bound no row gives',
    (f) => set(f.bound, { row: 7, best: 7, proven: false }),
    ['bound: 7 planks by row told, at most 6 follow', 'bound: 7 planks needed, they say, and 6 are used'],
  ],
  [
    'a best bound that is neither',
    (f) => set(f.bound, { best: 5, proven: false }),
    ['bound: the best is not the greatest of them'],
  ],
  ['two regions of one name', (f) => set(regionOf(f, 1), { name: 'living' }), ['living: two regions have this name']],
  [
    'an opening in no wall',
    (f) => regionOf(f, 0).openings.push({ from: [5, 5], to: [5, 9] }),
    ['living: the opening at 5, 5 is not in one wall'],
  ],
  [
    'a pattern told broken where none was asked',
    (f) => f.broken.push({ rule: 'pattern', region: 'living', row: 0, at: 31 }),
    ['living, row 0: pattern is told broken and none was asked'],
  ],
  [
    'a pattern break told outside its row',
    (f) => {
      set(f.rules, { pattern: { name: 'half' } });
      f.broken.push({ rule: 'pattern', region: 'living', row: 1, at: 102 });
    },
    ['living, row 1: pattern is told broken at 102, outside the row'],
  ],
  [
    'a wrong count of reused planks',
    (f) => set(f.count, { reused: 1 }),
    ['count: 1 reused planks told, 2 in the rows'],
  ],
];

it.each(cases)('%s is caught', (_, change, faults) => {
  const floor = handLaidFloor();
  change(floor);
  expect(checkFloor(floor).sort()).toEqual([...faults].sort());
});
