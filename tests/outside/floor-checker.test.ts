/** The floor checker accepts floors laid by hand and refuses outlines and data that are no floor. */

import { describe, expect, it } from 'vitest';
import { checkFloor } from './floor-checker.ts';
import type { FloorData } from './floor-checker-data.ts';
import type { Change } from './floor-checker-plans.ts';
import { handLaidFloor, handLaidNook, handLaidPost, pieceOf, regionOf, set } from './floor-checker-plans.ts';

const faultsAfter = (floor: FloorData, change: Change): string[] => {
  change(floor);
  return checkFloor(floor);
};

describe('floors laid by hand', () => {
  it.each([
    ['a room and a closet', handLaidFloor],
    ['a U', handLaidNook],
    ['a row round a post', handLaidPost],
  ])('%s: legal', (_, plan) => {
    expect(checkFloor(plan())).toEqual([]);
  });

  const legal: [string, Change][] = [
    [
      'a broken stagger that is told',
      (f) => {
        f.rules.stagger = 16;
        for (const at of [16, 64]) f.broken.push({ rule: 'stagger', region: 'living', row: 1, at });
      },
    ],
    [
      'a short end that is told',
      (f) => {
        f.rules.minEnd = 16;
        f.broken.push({ rule: 'minEnd', region: 'living', row: 1, at: 1 });
      },
    ],
    ['a pattern that both rows keep', (f) => set(f.rules, { pattern: { name: 'stair-step', step: 15, rows: 2 } })],
    [
      'a pattern that a told row leaves',
      (f) => {
        set(f.rules, { pattern: { name: 'half' } });
        f.broken.push({ rule: 'pattern', region: 'living', row: 1, at: 16 });
      },
    ],
    [
      'any way round and cut joints where ends do not lock',
      (f) => {
        f.plank.lock = 'none';
        for (const one of f.regions.flatMap((region) => region.rows).flatMap(({ pieces: its }) => its)) {
          if (one.part !== 'whole') one.part = 'any';
        }
        // Two rights of one plank: 30 + 1 + 15 ≤ 48.
        pieceOf(f, 0, 1, 0).plank = 1;
      },
    ],
  ];
  it.each(legal)('%s is legal', (_, change) => {
    expect(faultsAfter(handLaidFloor(), change)).toEqual([]);
  });
});

describe('ground', () => {
  it('a wall that moves makes its strip too thin', () => {
    const thin = faultsAfter(handLaidNook(), (f) =>
      set(regionOf(f, 0), {
        outline: [
          [-1, -1],
          [41, -1],
          [41, 19],
          [24, 19],
          [24, 8],
          [16, 8],
          [16, 19],
          [-1, 19],
        ],
      }),
    );
    expect(thin).toEqual(['nook, row 1: minRip is broken at 6 and not told']);
  });

  it('strips beside a hole are strips too', () => {
    expect(faultsAfter(handLaidPost(), (f) => f.broken.pop())).toEqual([
      'post, row 0: minRip is broken at 5 and not told',
    ]);
  });

  it('a plank is notched round what is shorter than the shortest end piece: no strip lies there', () => {
    const narrower = faultsAfter(handLaidPost(), (f) =>
      set(regionOf(f, 0), {
        holes: [
          [
            [18, 2],
            [18, 4],
            [23, 4],
            [23, 2],
          ],
        ],
      }),
    );
    expect(narrower).toEqual([
      'post, row 0: minRip is told broken at 1 and is not',
      'post, row 0: minRip is told broken at 5 and is not',
    ]);
  });

  it.each<[string, [number, number][], string]>([
    [
      'counter-clockwise',
      [
        [19, 2],
        [21, 2],
        [21, 4],
        [19, 4],
      ],
      'post: a hole is not clockwise',
    ],
    [
      'outside',
      [
        [59, 2],
        [59, 4],
        [61, 4],
        [61, 2],
      ],
      'post: the outline crosses itself, or a hole is not inside it',
    ],
  ])('a hole %s', (_, corners, fault) => {
    expect(faultsAfter(handLaidPost(), (f) => set(regionOf(f, 0), { holes: [corners] }))).toContain(fault);
  });

  it('a closet that the gap leaves nothing of takes no rows', () => {
    const shrunk = faultsAfter(handLaidPost(), (f) => set(f.rules, { gap: 4 }));
    expect(shrunk).toContain('post: rows where the gap leaves no floor');
    const bare = faultsAfter(handLaidPost(), (f) => {
      set(f.rules, { gap: 4 });
      set(regionOf(f, 0), { rows: [] });
      set(f, {
        broken: [],
        count: { planks: 0, reused: 0, mistakes: 0, spares: 0, cartons: 0 },
        bound: { area: 0, row: 0, best: 0, proven: true },
      });
    });
    expect(bare).toEqual([]);
  });

  it.each<[string, [number, number][], string]>([
    [
      'clockwise',
      [
        [0, 14],
        [102, 14],
        [102, 0],
        [0, 0],
      ],
      'living: the outline is not counter-clockwise',
    ],
    [
      'slanted',
      [
        [0, 0],
        [102, 0],
        [101, 14],
        [0, 14],
      ],
      'living: a wall runs neither along nor across the rows',
    ],
    [
      'crossing itself',
      [
        [0, 0],
        [30, 0],
        [30, 20],
        [20, 20],
        [20, 10],
        [40, 10],
        [40, 30],
        [0, 30],
      ],
      'living: the outline crosses itself, or a hole is not inside it',
    ],
  ])('an outline %s', (_, corners, fault) => {
    expect(faultsAfter(handLaidFloor(), (f) => set(regionOf(f, 0), { outline: corners }))).toContain(fault);
  });

  it.each<[string, unknown, RegExp]>([
    ['nothing', undefined, /^data at the top/],
    ['another kind', { ...handLaidFloor(), kind: 'trim' }, /^data at kind/],
    ['half a tick', { ...handLaidFloor(), plank: { ...handLaidFloor().plank, width: 5.5 } }, /^data at plank\.width/],
    ['no regions', { ...handLaidFloor(), regions: [] }, /^data at regions/],
  ])('data of %s', (_, data, fault) => {
    const faults = checkFloor(data);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(fault);
  });
});
