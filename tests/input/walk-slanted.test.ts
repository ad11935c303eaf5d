/** Walks with walls at any angle, corners cut off at a slant and bays: the outlines they make, and what is told of those that make none. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDirection } from '../../src/input/parse-layout.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { inUnits } from '../../src/text/answer-text.ts';
import { doubleArea } from '../../src/units/geometry.ts';
import { cornersOf, FEET, FT, given, IN, kept, METRES, MM, problemsIn } from './room-typed.ts';

/** 10 wide, 8 deep, and a bay on the far wall: 3 from the left, sides 2 by 2, its front 2. Drawn by hand. */
const BAY = [
  [0, 0],
  [10, 0],
  [10, 8],
  [8, 8],
  [6, 10],
  [5, 10],
  [3, 8],
  [0, 8],
];

/** A length along the diagonal of two equal offsets in feet, as a tape shows it to a sixteenth. */
function diagonal(feet: number): string {
  const sixteenths = Math.round(feet * Math.SQRT2 * 12 * 16);
  return `${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16"`;
}

describe('a walk with slanted walls', () => {
  it.each([
    `walk 8' right 3' left 45° ${diagonal(2)} right 45° 1' right 45° ${diagonal(2)} left 45° 2' right 8' right 10'`,
    `walk 8' right 3' left 45 ${diagonal(2)} right 45 1' right 45 ${diagonal(2)} left 45 2' right 8' right 10'`,
    `Walk 8’, right 3’, left 45 degrees ${diagonal(2)}, right 45º 1’, turn right 45 deg ${diagonal(2)}, left 45° 2’, right 8’`,
    `walk 8' right 3' 45° left ${diagonal(2)} 45° right 1' 45° right ${diagonal(2)} 45° left 2' right 8' right 10' right`,
  ])('%s', (text) => {
    const { rooms } = given(readRooms, text).value;
    const [room] = rooms;
    expect(room?.outline).toHaveLength(8);
    room?.outline.forEach(([x, y], i) => {
      const [wantX = 0, wantY = 0] = BAY[i] ?? [];
      // Two diagonals to a sixteenth, and what the longest walls took up: within a quarter inch.
      expect(Math.abs(x / FT - wantX) * 12).toBeLessThan(0.25);
      expect(Math.abs(y / FT - wantY) * 12).toBeLessThan(0.25);
    });
  });

  it('keeps walls along x and y exactly so when the difference is taken up', () => {
    const { value, notes } = given(
      readRooms,
      `walk 8' right 3' left 45° ${diagonal(2)} right 45° 1' right 45° ${diagonal(2)} left 45° 2' right 8' right 10'`,
    );
    const outline = value.rooms[0]?.outline ?? [];
    expect(outline[0]?.[1]).toBe(outline[1]?.[1]);
    expect(outline[1]?.[0]).toBe(outline[2]?.[0]);
    expect(outline[2]?.[1]).toBe(outline[3]?.[1]);
    expect(outline[4]?.[1]).toBe(outline[5]?.[1]);
    expect(notes.join()).toContain('took up the difference');
  });

  it('takes a slanted wall by its two offsets, exactly', () => {
    expect(cornersOf("walk 6' right diagonal 2' x 2' 8' right 8' right 10'", FT)).toEqual({
      room: [
        [0, 0],
        [10, 0],
        [10, 8],
        [2, 8],
        [0, 6],
      ],
    });
    expect(
      cornersOf('living walk 3 m, right, 4 m, right diagonal 50 cm x 1 m, 2 m, right; hall 3x12', MM, METRES),
    ).toMatchObject({
      living: [
        [0, 0],
        [4500, 0],
        [4500, 2000],
        [4000, 3000],
        [0, 3000],
      ],
    });
  });

  it('tells the wall left out, whatever its angle', () => {
    // Right isosceles triangle, sides 10: the wall left out is the diagonal.
    const { value, notes } = given(readRooms, "walk 10' right 135° 14' 1 11/16\" right 135°");
    expect(value.rooms[0]?.outline).toHaveLength(3);
    expect(notes.join('\n')).toContain("the wall left out is 10'");
  });

  it('of a regular hexagon covers what Euclid says: 3√3/2 times the side squared', () => {
    const side = `right 60° 6'`.repeat(5);
    const [room] = given(readRooms, `walk 6' ${side}`).value.rooms;
    expect(Number(doubleArea(room?.outline ?? [])) / 2 / FT ** 2).toBeCloseTo((3 * Math.sqrt(3) * 36) / 2, 3);
  });

  it('of any whole outline told to a sixteenth makes that outline', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 9 }),
        fc.integer({ min: 40, max: 120 }),
        fc.boolean(),
        (corners, side, mirrored) => {
          const turn = `${mirrored ? 'left' : 'right'} ${Math.round(36_000 / corners) / 100}°`;
          const text = `walk ${`${side}" ${turn} `.repeat(corners)}`;
          const [room] = given(readRooms, text).value.rooms;
          const area = (corners * side ** 2) / (4 * Math.tan(Math.PI / corners));
          expect(room?.outline).toHaveLength(corners);
          expect(Number(doubleArea(room?.outline ?? [])) / 2 / IN ** 2 / area).toBeCloseTo(1, 2);
        },
      ),
    );
  });
});

describe('a slanted walk that cannot be', () => {
  it('says by how much it does not close, and makes up no wall', () => {
    const [problem] = problemsIn(
      readRooms,
      "walk 8' right 3' left 45° 2'10\" right 45° 1' right 45° 2'10\" left 45° 3' right 8' right 10'",
    );
    expect(problem?.expected).toMatch(/walls do not close: .* ends 1' 1\/16" right of the start/);
    expect(problem?.fix).toBeUndefined();
  });

  it.each([
    ["walk 8' 45° 3' right 8' right 10'", /needs a side/],
    ["walk 8' turn 135° 3' right 8' right 10'", /needs a side/],
    ["walk 8' turn 45 3' right 8' right 10'", /needs a side/],
    ["walk 8' right 200° 3' right 8' right 10'", /from 1° to 179°/],
    ["walk 8' right 0° 3' right 8' right 10'", /from 1° to 179°/],
    ["walk 6' diagonal 2' x 2' 8' right 8' right 10'", /diagonal wall, give the side/],
    ["walk 8' right 45° 3' 4' right 8' right 10'", /no turn between/],
    ["walk 8' right 45° sofa 3' right 8' right 10'", /“sofa” is neither/],
    ["walk 8' right 45° left 3' right 8' right 10'", /Two turns have no wall/],
    ["walk 10' right 135° 10' right 135° 10' right 135° 10' right 135° 10'", /do not close|meets itself/],
    ["walk 8' right 45° 3'", /at least 3 walls/],
  ])('%s', (text, expected) => {
    const problems = problemsIn(readRooms, text);
    expect(problems.map((problem) => inUnits(problem.expected, 'imperial')).join('\n')).toMatch(expected);
  });
});

describe('a corner cut off at a slant', () => {
  it.each([
    '12x14 less a 2x2 corner cut diagonally',
    '12 x 14 minus 2x2 clipped',
    "12' x 14' - 2' x 2' diagonal corner",
    '12x14 less 2x2 corner at 45°',
    '12 × 14 less a 2x2 angled corner',
    '12x14 less a 2x2 corner cut diagonaly',
    '12x14 with a clipped corner 2x2',
    '12x14 with a 2x2 corner cut diagonally',
    '12x14 with a 2x2 diagonal corner',
  ])('%s', (text) => {
    expect(cornersOf(text, FT)).toEqual({
      room: [
        [0, 0],
        [12, 0],
        [12, 12],
        [10, 14],
        [0, 14],
      ],
    });
  });

  it('stands beside square ones, and is told', () => {
    const { value, notes } = given(readRooms, 'den 12x14 less 3x4 less a 2x1 clipped corner');
    expect(value.rooms[0]?.outline.map((p) => p.map((x) => x / FT))).toEqual([
      [0, 0],
      [12, 0],
      [12, 10],
      [9, 10],
      [9, 14],
      [2, 14],
      [0, 13],
    ]);
    expect(notes.join('\n')).toContain('far left corner is cut off straight');
  });
});

describe('a bay', () => {
  it('stands out in the middle of the far wall, its sides at 45°', () => {
    expect(cornersOf("living 14' x 12' with a bay 8' x 2'", FT)).toEqual({
      living: [
        [0, 0],
        [14, 0],
        [14, 12],
        [11, 12],
        [9, 14],
        [5, 14],
        [3, 12],
        [0, 12],
      ],
    });
  });

  it('on another wall, at another angle, in another room', () => {
    expect(cornersOf('living 14x12 with an angled bay 6x1 90° on the left wall; hall 3x9', FT)).toEqual({
      living: [
        [1, 0],
        [15, 0],
        [15, 12],
        [1, 12],
        [1, 9],
        [0, 9],
        [0, 3],
        [1, 3],
      ],
      hall: [
        [0, 0],
        [3, 0],
        [3, 9],
        [0, 9],
      ],
    });
    const { notes } = given(readRooms, '4,2 x 3,6 m with a bay 2,4 x 0,6 m at 60°', METRES);
    // 0.6 ÷ tan 60° = 0.346 m a side.
    expect(notes.join('\n')).toMatch(/sides at 60° to the wall, its front 1707 mm|1,707 m/);
  });

  it.each([
    '14x12 with a bay 15x2',
    '14x12 with a bay 3x2',
    "walk 12' right 10' right 12' right with a bay 3x1",
    '14x12 with a bay 6x1 with a bay 5x1',
  ])('%s cannot be', (text) => {
    expect(problemsIn(readRooms, text)[0]?.expected).toMatch(/bay/i);
  });
});

describe('the way rows run', () => {
  it.each([
    ['diagonal', 45],
    ['Diagonally', 45],
    ['45°', 45],
    ['45 deg', 45],
    ['at 30 degrees', 30],
    ['30', 30],
    ['diagonaly', 45],
    ['diagonal at 60°', 60],
    ['turned by 135°', 135],
  ])('%s', (text, degrees) => {
    expect(readDirection(text, kept('direction', FEET))).toEqual({ ok: true, value: { kind: 'turned', degrees } });
  });

  it('is long at 0° and short at 90°', () => {
    expect(readDirection('90°', kept('direction', FEET))).toMatchObject({ value: { side: 'short' } });
    expect(readDirection('0°', kept('direction', FEET))).toMatchObject({ value: { side: 'long' } });
  });

  it('of a room with a closet in its corner stays whole', () => {
    expect(problemsIn(readRooms, 'bedroom 12x14 with a corner closet 3x6')[0]?.expected).toMatch(/two rooms/);
  });

  it.each(['200°', '45.5°', '-30°', 'slantwise', '400 deg'])('%s is a problem whose fix is read', (text) => {
    const read = readDirection(text, kept('direction', FEET));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(readDirection(read.problems[0].fix ?? 'long', kept('direction', FEET)).ok).toBe(true);
  });
});
