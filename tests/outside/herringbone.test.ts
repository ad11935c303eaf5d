/** Herringbone floors: whole and fit to cut by the outside checker, which catches every fault planted; counts worked by hand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { herringResult } from '../../commands/floor/floor-herringbone.ts';
import { layHerringbone } from '../../src/layout/herringbone-lay.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { slantedRooms } from '../bench/slanted-rooms.ts';
import { checkHerringbone, type HerringData, readHerringbone } from './herringbone-checker.ts';
import { plank, region } from './laid.ts';

const INCH = 8128;

interface ReadLine {
  readonly width?: number;
  readonly length?: number;
  readonly handed?: boolean;
  readonly border?: number;
  readonly angle?: number;
  readonly kerf?: number;
  readonly holes?: readonly Outline[];
}

/** A floor as result data; undefined where its border does not fit. */
function laidHerringbone(
  outline: Outline,
  { width = 3, length = 18, handed = false, border = 0, angle = 0, kerf = 0.125, holes = [] }: ReadLine = {},
): HerringData | undefined {
  const board = plank(width, length, handed ? 'click' : 'none');
  const rules = { gap: inches(0.25), kerf: inches(kerf), minEnd: inches(4), border, handed };
  const plan = layHerringbone([{ region: region('den', outline, holes), angle }], board, rules);
  if ('why' in plan) return undefined;
  const cartons = plan.hands
    ? Math.ceil(plan.hands.A / 10) + Math.ceil(plan.hands.B / 10)
    : Math.ceil(plan.planks / 10);
  const result = herringResult(plan, { cartons, boards: plan.planks, mistakes: 0, spares: 0, left: 0 }, undefined);
  return readHerringbone(JSON.parse(JSON.stringify(result)));
}

function rectangle(x: number, y: number): Outline {
  return [
    [0, 0],
    [x * INCH, 0],
    [x * INCH, y * INCH],
    [0, y * INCH],
  ];
}

function found(floor: HerringData | undefined): HerringData {
  if (!floor) throw new Error('no floor');
  return floor;
}

describe('any herringbone floor', () => {
  it('is whole, on its pattern and cut from its boards', () => {
    const asks = fc.record({
      seed: fc.integer({ min: 1, max: 1e6 }),
      slanted: fc.boolean(),
      board: fc.constantFrom([4, 24], [5, 23], [6, 30], [8, 20]),
      handed: fc.boolean(),
      border: fc.integer({ min: 0, max: 2 }),
      angle: fc.constantFrom(0, 45, 90, 135, 30),
    });
    fc.assert(
      fc.property(asks, ({ seed, slanted, board: [width, length], handed, border, angle }) => {
        const [room] = slanted ? slantedRooms(seed, 1) : randomRooms(seed, 1);
        const floor = laidHerringbone(room?.outline ?? [], {
          width,
          length,
          handed,
          angle,
          border: handed ? 0 : border,
        });
        if (floor) expect(checkHerringbone(floor)).toEqual([]);
        else expect(border).toBeGreaterThan(0);
      }),
      { numRuns: 12 },
    );
  });

  it('goes round a post', () => {
    const post: Outline = [
      [40, 50],
      [40, 60],
      [52, 60],
      [52, 50],
    ].map(([x = 0, y = 0]) => [x * INCH, y * INCH] as const);
    expect(checkHerringbone(laidHerringbone(rectangle(100, 120), { holes: [post], border: 1 }))).toEqual([]);
    const near: Outline = post.map(([x, y]) => [x - 36 * INCH, y]);
    expect(laidHerringbone(rectangle(100, 120), { holes: [near], border: 2 })).toBeUndefined();
  });
});

describe('counts that can be worked by hand', () => {
  it('take every board of a border whole where the sides are whole boards, but for the mitres', () => {
    // Inside the gap 54 by 36: the outer course is 3 + 2 + 3 + 2 boards of 18 and their corners are mitred; inside it 48 by 30.
    const floor = found(laidHerringbone(rectangle(54.5, 36.5), { border: 1, kerf: 0 }));
    const border = floor.regions[0]?.boards.filter(({ course }) => course === 1) ?? [];
    expect(border).toHaveLength(10);
    expect(border.filter(({ shape }) => shape)).toHaveLength(8);
    const area = border.reduce(
      (sum, { length, shape }) => sum + length * 3 * INCH - (shape ? (3 * INCH) ** 2 / 2 : 0),
      0,
    );
    expect(area / INCH ** 2).toBeCloseTo(54 * 36 - 48 * 30, 2);
  });

  it('need no fewer boards than the area holds, and by area 15% more would do', () => {
    const floor = found(laidHerringbone(rectangle(144, 120)));
    expect(floor.bound.area).toBe(Math.ceil((143.5 * 119.5) / 54));
    expect(floor.count.planks).toBeLessThan(1.15 * floor.bound.area);
  });

  it('hold A and B boards, about half each, and no board of both', () => {
    const { count } = found(laidHerringbone(rectangle(120, 120), { width: 5, length: 25, handed: true }));
    expect(Math.abs((count.A ?? 0) - (count.B ?? 0))).toBeLessThan(count.planks / 4);
    expect((count.A ?? 0) + (count.B ?? 0)).toBe(count.planks);
  });
});

describe('a planted fault', () => {
  type Case = [name: string, change: (floor: HerringData) => unknown, fault: RegExp];
  const boards = (floor: HerringData) => floor.regions[0]?.boards ?? [];
  const one = (floor: HerringData, wanted: (board: HerringData['regions'][number]['boards'][number]) => boolean) => {
    const board = boards(floor).find(wanted);
    if (!board) throw new Error('no such board');
    return board;
  };
  const cases: Case[] = [
    ['a missing board', (floor) => boards(floor).splice(20, 1), /are bare/],
    [
      'a board laid twice',
      (floor) => boards(floor).push({ ...one(floor, ({ part, shape }) => part === 'whole' && !shape) }),
      /overlap/,
    ],
    [
      'a board off the pattern',
      (floor) => {
        const board = one(floor, ({ part, shape }) => part === 'whole' && !shape);
        board.at = [board.at[0] + 3000, board.at[1]];
      },
      /off the pattern/,
    ],
    [
      'a cut board left whole',
      (floor) => {
        delete one(floor, ({ shape }) => shape !== undefined).shape;
      },
      /in the gap or beyond/,
    ],
    [
      'two starts from one board',
      (floor) => {
        const [a, b] = boards(floor).filter(({ part, hand }) => hand === 'A' && part === 'start');
        if (a && b) b.plank = a.plank;
      },
      /do not fit it/,
    ],
    ['a kerf forgotten', (floor) => Object.assign(floor.rules, { kerf: 4 * INCH }), /do not fit it/],
    [
      'an A board from a B board',
      (floor) => {
        one(floor, ({ hand, part }) => hand === 'A' && part === 'start').plank = one(
          floor,
          ({ hand, part }) => hand === 'B' && part === 'end',
        ).plank;
      },
      /both hands/,
    ],
    [
      'hands swapped',
      (floor) => {
        one(floor, ({ hand }) => hand === 'A').hand = 'B';
      },
      /wrong hand/,
    ],
    [
      'an end that lost its lock',
      (floor) => {
        one(floor, ({ part }) => part === 'start').part = 'end';
      },
      /lost its own end/,
    ],
    ['a board too few', (floor) => floor.count.planks--, /planks told/],
    ['a wrong count of A', (floor) => Object.assign(floor.count, { A: 3 }), /of A told/],
    [
      'a bound too high',
      (floor) => Object.assign(floor.bound, { area: floor.bound.area + 2, best: floor.bound.best + 2 }),
      /follow/,
    ],
    ['a proof that is none', (floor) => Object.assign(floor.bound, { proven: !floor.bound.proven }), /proven/],
    ['a border that is not there', (floor) => Object.assign(floor.rules.pattern, { border: 1 }), /courses of border/],
  ];

  it.each(cases)('%s is caught', (_, change, fault) => {
    const floor = found(laidHerringbone(rectangle(90, 80), { handed: true }));
    expect(checkHerringbone(floor)).toEqual([]);
    change(floor);
    expect(checkHerringbone(floor).join('\n')).toMatch(fault);
  });
});
