/** Laws of rooms and walks: random rooms written down are read back, and no text breaks the reader. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { doubleArea, isRectilinear } from '../../src/units/geometry.ts';
import { FEET, FT, given, IN, kept, METRES } from './room-typed.ts';

type Corner = readonly [x: number, y: number];

/** Columns in sixteenths of an inch: each overlaps its neighbour, so that they make one room; its area is Σ width × height. */
const columns = fc
  .array(
    fc.record({
      width: fc.integer({ min: 16, max: 800 }),
      low: fc.nat(300),
      high: fc.integer({ min: 600, max: 1500 }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .filter((all) =>
    all.every(({ low, high }, i) =>
      [0, 16].every((least) => {
        const next = all[i + 1];
        return !next || [low - next.low, high - next.high].every((step) => Math.abs(step) > least);
      }),
    ),
  );

function outlineOf(all: readonly { width: number; low: number; high: number }[]): Corner[] {
  const near: Corner[] = [];
  const far: Corner[] = [];
  let x = 0;
  for (const { width, low, high } of all) {
    near.push([x, low], [x + width, low]);
    far.push([x, high], [x + width, high]);
    x += width;
  }
  return [...near, ...far.reverse()];
}

/** The walls from corner `first` on, counter-clockwise or not, as a walk. */
function walkOf(
  corners: readonly Corner[],
  first: number,
  reversed: boolean,
  leftOut: number,
  wording: Wording,
): string {
  const ring = [...corners.slice(first), ...corners.slice(0, first)];
  const path = reversed ? [...ring].reverse() : ring;
  const steps = path.map(([x, y], i): Corner => {
    const [nx, ny] = path[(i + 1) % path.length] ?? [0, 0];
    return [nx - x, ny - y];
  });
  return `walk ${steps
    .slice(0, steps.length - leftOut)
    .map(([dx, dy], i) => {
      const [nx, ny] = steps[(i + 1) % steps.length] ?? [0, 0];
      return `${wording.wall(Math.abs(dx + dy))} ${dx * ny - dy * nx > 0 ? wording.left : wording.right}`;
    })
    .join(wording.joint)}`;
}

interface Wording {
  readonly wall: (sixteenths: number) => string;
  readonly left: string;
  readonly right: string;
  readonly joint: string;
}

/** Sixteenths of an inch as inches, without a fraction when there is none. */
function inchesOf(n: number, joint: string): string {
  return n % 16 === 0 ? `${n / 16}` : `${Math.floor(n / 16)}${joint}${n % 16}/16`;
}

const wordings: readonly Wording[] = [
  { wall: (n) => `${Math.floor(n / 192)}' ${inchesOf(n % 192, ' ')}"`, left: 'left', right: 'right', joint: ' ' },
  { wall: (n) => `${n / 16} in`, left: 'L', right: 'R', joint: ', ' },
  { wall: (n) => `${inchesOf(n, '-')}”`, left: 'turn left', right: 'turn right', joint: ' → ' },
];

describe('walks', () => {
  it('of random rooms have the area of their columns, in any wording, from any corner, either way round', () => {
    fc.assert(
      fc.property(
        columns,
        fc.nat(),
        fc.boolean(),
        fc.nat(1),
        fc.constantFrom(...wordings),
        (all, first, reversed, leftOut, wording) => {
          const corners = outlineOf(all);
          const text = walkOf(corners, first % corners.length, reversed, leftOut, wording);
          const outline = given(readRooms, text).value.rooms[0]?.outline ?? [];
          const sixteenths = all.reduce((sum, { width, low, high }) => sum + BigInt(width * (high - low)), 0n);
          expect(doubleArea(outline), text).toBe(2n * sixteenths * BigInt(IN / 16) ** 2n);
          expect(outline).toHaveLength(corners.length);
          expect(isRectilinear(outline)).toBe(true);
          expect([0, 1].map((axis) => Math.min(...outline.map((corner) => corner[axis] ?? -1)))).toEqual([0, 0]);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('with one wall changed are refused, and how far they are off is told', () => {
    fc.assert(
      fc.property(columns, fc.nat(), fc.integer({ min: 2, max: 40 }), (all, which, more) => {
        const corners = outlineOf(all);
        const [wording] = wordings;
        if (!wording) throw new Error('no wording');
        const walls = walkOf(corners, 0, false, 0, { ...wording, joint: ';' })
          .slice(5)
          .split(';');
        const changed = which % walls.length;
        const wrong = walls.map((wall, i) =>
          i === changed ? wall.replace(/^\d+/, (ft) => String(Number(ft) + more)) : wall,
        );
        const result = readRooms(`walk ${wrong.join(' ')}`, kept('room', FEET));
        expect(result.ok).toBe(false);
        // No wall is made up: what does not close is told, with how far it is off.
        if (!result.ok) expect(result.problems[0].expected).toMatch(/do not close|cross or touch|closes/);
      }),
      { numRuns: 60 },
    );
  });
});

it('reads any rectangle with a corner left out to its area', () => {
  const inches = fc.integer({ min: 2, max: 900 });
  fc.assert(
    fc.property(inches, inches, fc.nat(), fc.nat(), (x, y, w, h) => {
      const [cutX, cutY] = [1 + (w % (x - 1)), 1 + (h % (y - 1))];
      const { rooms } = given(readRooms, `den ${x} x ${y} in - ${cutX}" x ${cutY}"`).value;
      expect(doubleArea(rooms[0]?.outline ?? [])).toBe(2n * BigInt(x * y - cutX * cutY) * BigInt(IN) ** 2n);
    }),
  );
  expect(FT).toBe(12 * IN);
});

describe('any text', () => {
  const scraps = fc.constantFrom(
    '12',
    '3,8',
    '1/2',
    '½',
    "'",
    '"',
    ' ft ',
    ' m',
    'x',
    ' by ',
    '+',
    '-',
    ' minus ',
    ' and ',
    ',',
    ';',
    '\n',
    ':',
    '=',
    '(',
    ')',
    'walk ',
    ' right ',
    ' l ',
    'living ',
    'sq ft',
    ' square ',
    '.',
    '–',
    '’',
    '”',
    '\u00a0',
    '\u0007',
    '\ud800',
    '\u202e',
    '🙂',
    '0',
    '12x14',
    '3 x 4 m',
    '12\'6"',
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(scraps, { maxLength: 14 }).map((parts) => parts.join('')),
    fc
      .tuple(fc.constantFrom('walk 12 r 10 r 12 r ', '12x14 ', '12x14 - '), fc.array(scraps, { maxLength: 6 }))
      .map(([head, tail]) => head + tail.join('')),
  );

  it.each([FEET, METRES])('is read or comes back with fixes that are read ($units)', (preferences) => {
    let unreadable = 0;
    fc.assert(
      fc.property(texts, (text) => {
        const reading = kept('room', preferences);
        const result = readRooms(text, reading);
        if (result.ok) {
          expect(result.value.rooms.length).toBeGreaterThan(0);
          for (const { outline } of result.value.rooms) expect(doubleArea(outline) > 0n).toBe(true);
          return;
        }
        unreadable++;
        for (const { option, expected, fix } of result.problems) {
          expect(option).toBe('room');
          expect(expected.length).toBeGreaterThan(10);
          if (fix !== undefined) expect(readRooms(fix, kept('room', preferences)), fix).toMatchObject({ ok: true });
        }
      }),
      { numRuns: 1500 },
    );
    expect(unreadable).toBeGreaterThan(100);
  });
});
