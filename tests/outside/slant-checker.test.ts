/** A legal floor at a slant is found legal, and every fault planted in it is caught. */

import { describe, expect, it } from 'vitest';
import type { Pattern } from '../../src/layout/floor.ts';
import { checkFloor } from './floor-checker.ts';
import { type FloorData, type PieceData, readFloor } from './floor-checker-data.ts';
import { benchRules, laid, plank, region } from './laid.ts';
import { areaOf, distance, groundOf } from './slant-checker-shape.ts';
import { coverBetween } from './slant-checker-sweep.ts';

const INCH = 8128;
const board = plank(7, 48);

/** 10 ft by 12 ft with two corners cut off at 45°, rows at 45° too: some cuts square, most slanted. */
function slantedFloor(angle = 45, name: Pattern['name'] = 'offcut-first'): FloorData {
  const [x, y, cut] = [120 * INCH, 144 * INCH, 24 * INCH];
  const outline: [number, number][] = [
    [0, 0],
    [x, 0],
    [x, y - cut],
    [x - cut, y],
    [cut, y],
    [0, y - cut],
  ];
  const read = readFloor(laid([region('den', outline)], angle, board, benchRules(board, name)).data);
  if ('faults' in read) throw new Error(read.faults.join('; '));
  return read.floor;
}

function piecesOf(floor: FloorData): PieceData[] {
  return floor.regions.flatMap(({ rows }) => rows.flatMap(({ pieces }) => pieces));
}

function found(floor: FloorData, wanted: (piece: PieceData) => boolean): PieceData {
  const piece = piecesOf(floor).find(wanted);
  if (!piece) throw new Error('no such piece');
  return piece;
}

type Case = [name: string, change: (floor: FloorData) => void, fault: RegExp];

const cases: Case[] = [
  ['a missing piece', (floor) => floor.regions[0]?.rows[8]?.pieces.splice(1, 1), /square ticks are bare/],
  [
    'a slanted piece left uncut',
    (floor) => {
      const piece = found(floor, ({ left }) => left !== undefined);
      delete piece.shape;
      delete piece.left;
      delete piece.right;
    },
    /laid in the gap or beyond/,
  ],
  [
    'a wider gap asked',
    (floor) => void Object.assign(floor.rules, { gap: floor.rules.gap + INCH / 8 }),
    /laid in the gap or beyond/,
  ],
  ['a narrower gap asked', (floor) => void Object.assign(floor.rules, { gap: floor.rules.gap - INCH / 8 }), /are bare/],
  [
    'an end and a start that do not nest',
    (floor) => {
      const end = found(floor, ({ part, length }) => part === 'end' && length > 30 * INCH);
      const start = found(
        floor,
        ({ part, length, plank: other }) => part === 'start' && length > 30 * INCH && other !== end.plank,
      );
      for (const piece of piecesOf(floor)) if (piece.plank === start.plank && piece !== start) piece.plank = 900;
      for (const piece of piecesOf(floor)) if (piece.plank === end.plank && piece !== end) piece.plank = 901;
      start.plank = end.plank;
    },
    /do not fit it/,
  ],
  [
    'a kerf of two inches where cuts were nested for an eighth',
    (floor) => void Object.assign(floor.rules, { kerf: 2 * INCH }),
    /do not fit it/,
  ],
  [
    'two starts from one plank',
    (floor) => {
      const [one, other] = piecesOf(floor).filter(({ part }) => part === 'start');
      if (one && other) other.plank = one.plank;
    },
    /gives a start and more/,
  ],
  [
    'a cut told at another angle',
    (floor) => void Object.assign(found(floor, ({ left }) => left !== undefined).left ?? {}, { degrees: 40 }),
    /cut that is not its shape's/,
  ],
  [
    'a cut marked elsewhere',
    (floor) => void Object.assign(found(floor, ({ right }) => right !== undefined).right ?? {}, { far: 9, near: 8 }),
    /cut that is not its shape's/,
  ],
  [
    'a cut end in a joint',
    (floor) =>
      void Object.assign(
        found(floor, ({ part }) => part === 'end'),
        { part: 'start' },
      ),
    /cut end at its joint/,
  ],
  [
    'a piece moved along',
    (floor) => void found(floor, ({ part }) => part === 'start').u--,
    /not its shape's|beyond its rectangle|cut end|not told/,
  ],
  [
    'a joint too near, not told',
    (floor) => void Object.assign(floor.rules, { stagger: 20 * INCH }),
    /stagger in row .* broken and not told/,
  ],
  [
    'a short end, not told',
    (floor) => void Object.assign(floor.rules, { minEnd: 30 * INCH }),
    /minEnd in row .* broken and not told/,
  ],
  [
    'a strip told narrow that is not',
    (floor) => void floor.broken.push({ rule: 'minRip', region: 'den', row: 0, at: 4 }),
    /minRip is told broken at 4 and is not/,
  ],
  [
    'a pattern left, not told',
    (floor) => void Object.assign(floor.rules, { pattern: { name: 'half' } }),
    /leave the pattern/,
  ],
  [
    'a rule told broken that is kept',
    (floor) => void floor.broken.push({ rule: 'minEnd', region: 'den', row: 3, at: 4 }),
    /told broken and kept/,
  ],
  [
    'a proof that is none',
    (floor) => void Object.assign(floor.bound, { proven: !floor.bound.proven }),
    /proven is told/,
  ],
  [
    'a bound by rows',
    (floor) => void Object.assign(floor.bound, { row: floor.bound.area + 1 }),
    /slanted cuts do not prove/,
  ],
  [
    'a bound by area too high',
    (floor) => void Object.assign(floor.bound, { area: floor.bound.area + 1 }),
    /planks by area told/,
  ],
  ['a plank too few counted', (floor) => void floor.count.planks--, /planks told/],
  [
    'a room turned by a degree',
    (floor) => void Object.assign(floor.regions[0]?.frame ?? {}, { angle: 46 }),
    /are bare/,
  ],
];

describe('the check of slanted floors', () => {
  it.each([0, 45, 90, 20])('finds a floor laid at %s° legal', (angle) => {
    expect(checkFloor(slantedFloor(angle))).toEqual([]);
  });

  it.each(cases)('catches %s', (_, change, fault) => {
    const floor = slantedFloor();
    change(floor);
    expect(checkFloor(floor).join('\n')).toMatch(fault);
  });

  it('catches a strip too narrow along a wall that runs with the rows, not told', () => {
    const floor = slantedFloor(0);
    // 144 in less two gaps of 3/8 are 20 rows of 7 in and one of 3 1/4.
    expect(floor.regions[0]?.rows.at(-1)?.height).toBe(3.25 * INCH);
    Object.assign(floor.rules, { minRip: 4 * INCH });
    expect(checkFloor(floor)).toEqual([expect.stringMatching(/^den, row 20: minRip is broken at \d+ and not told$/)]);
  });
});

describe('its polygons', () => {
  const triangle = {
    name: 'nook',
    outline: [
      [0, 0],
      [300, 0],
      [0, 400],
    ] as [number, number][],
    holes: [],
    openings: [],
    frame: { origin: [0, 0] as [number, number], angle: 0 },
    rows: [],
  };

  it('leave of a 3-4-5 triangle what its inscribed circle says: sides shrink by 1 − gap ÷ radius', () => {
    // Radius of the inscribed circle (300 + 400 − 500) ÷ 2 = 100 (Euclid's Elements IV.4); a gap of 20 leaves (80 ÷ 100)² of 60,000.
    expect(areaOf(groundOf(triangle, 20))).toBeCloseTo(38_400, -2);
  });

  it('are summed where shapes cross: two squares of 10 on one, a corner of 4 × 5 shared, a strip of the ground bare', () => {
    const square = (u: number, v: number): [number, number][] => [
      [u, v],
      [u + 10, v],
      [u + 10, v + 10],
      [u, v + 10],
    ];
    const ground = { loops: [square(0, 0), square(30, 0)], bands: [] };
    const cover = coverBetween(ground, [[square(0, 1)], [square(6, 6)]], [0, 20]);
    // 100; 10 × 1 below the first; 10 × 1 of the first and 100 − 4 × 4 of the second beyond; 4 × 5 of both.
    expect(cover).toEqual({ ground: 100, bare: 10, beyond: 10 + 84 - 4, twice: 20 });
    const slope: [number, number][] = [
      [0, 0],
      [20, 10],
      [0, 10],
    ];
    expect(coverBetween({ loops: [square(0, 0)], bands: [[slope]] }, [], [0, 10]).ground).toBeCloseTo(25, 9);
  });

  it('tell how far a corner lies from a slanted side', () => {
    // The side from (300, 0) to (0, 400): the origin lies 300 · 400 ÷ 500 = 240 from it.
    const far = distance(
      [
        [
          [300, 0],
          [300, 400],
          [0, 400],
        ],
      ],
      [
        [
          [-10, -10],
          [0, -10],
          [0, 0],
          [-10, 0],
        ],
      ],
    );
    expect(far).toBeCloseTo(240, 6);
    expect(
      distance(
        [
          [
            [0, 0],
            [10, 0],
            [10, 10],
          ],
        ],
        [
          [
            [5, 2],
            [20, 2],
            [20, 3],
          ],
        ],
      ),
    ).toBe(0);
  });
});
