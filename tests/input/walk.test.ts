/** Walks round the walls: the outlines they make, and what is told of those that make none. */

import { describe, expect, it } from 'vitest';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { box, cornersOf, FT, given, IN, MM, problemsIn } from './room-typed.ts';

// Drawn by hand: 12 up, 10 across, 5 down, 4 across, 7 down, and 14 back.
const ELL = [
  [0, 0],
  [14, 0],
  [14, 7],
  [10, 7],
  [10, 12],
  [0, 12],
];

describe('a walk', () => {
  it.each([
    "walk 12' right 10' right 5' left 4' right 7' right",
    "walk 12' right 10' right 5' left 4' right 7' right 14'",
    "walk 12' right 10' right 5' left 4' right 7' right 14' right",
    'walk 12 r 10 r 5 l 4 r 7 r',
    'WALK 12 R 10 R 5 L 4 R 7 R',
    'walk 12r10r5l4r7',
    'walk: 12, right 10, right 5, left 4, right 7',
    'walk 12 → right 10 → right 5 → left 4 → right 7',
    'walk 12 then turn right 10 then turn right 5 and left 4 then right 7',
    'walk 12 ft r 120 in r 5 l 4 r 7 r',
    // The same room walked the other way round, from its near right corner.
    'walk 7 l 4 r 5 l 10 l 12 l 14 l',
    // From the middle of a wall.
    'walk 2 r 10 r 5 l 4 r 7 r 14 r 10',
    // With a turn before the first wall.
    'walk right 14 left 7 left 4 right 5 left 10 left 12',
  ])('%s', (text) => {
    expect(cornersOf(text, FT)).toEqual({ room: ELL });
  });

  it('has a name and a place among other rooms', () => {
    expect(cornersOf('living walk 12 r 10 r 12 r; hall 3x12', FT)).toEqual({ living: box(10, 12), hall: box(3, 12) });
    expect(cornersOf('hall 3x12, bed walk 12 r 10 r 12 r', FT)).toEqual({ hall: box(3, 12), bed: box(10, 12) });
    expect(cornersOf("walk-in closet: walk 6' r 4' r 6' r", FT)).toEqual({ 'walk-in closet': box(4, 6) });
  });

  it('reads metres, and small differences of a tape are taken up and told', () => {
    expect(cornersOf('walk 3,8 m r 4,2 m r 3,8 m r', MM)).toEqual({ room: box(4200, 3800) });
    const { value, notes } = given(readRooms, 'walk 3 m r 4 m r 3.0005 m r 4 m');
    expect(notes.join()).toContain('0.8 mm');
    expect(value.rooms[0]?.outline).toHaveLength(4);
  });

  it('tells the wall that was left out', () => {
    expect(given(readRooms, 'walk 12 r 10 r 5 l 4 r 7 r').notes).toEqual([
      'room: walk read as feet',
      "room: the wall left out is 14' and closes the walk",
    ]);
  });

  it('reads 200 walls and no more', () => {
    const stairs = (steps: number) =>
      `walk ${Array.from({ length: steps }, () => "1' r 1' l").join(' ')} 1' r 1' r ${steps + 1}' r ${steps + 1}'`;
    const { rooms } = given(readRooms, stairs(98)).value;
    expect(rooms[0]?.outline).toHaveLength(200);
    expect(problemsIn(readRooms, stairs(99))[0]?.expected).toContain('200');
  });
});

describe('a walk that makes no room', () => {
  it.each([
    // The last turn is none.
    ['walk 12 r 10 r 12 l', "walk 12' right 10' right 12'"],
    // One turn the other way.
    ["walk 12' r 10' r 5' r 4' r 7' r 14'", "walk 12' right 10' right 5' left 4' right 7' right 14'"],
    ['walk 12 10 r 12 r', 'walk 12 right 10 r 12 r'],
    ['walk 12 r r 10 r 12', 'walk 12 r 10 r 12'],
    ['walk 12 rigt 10 r 12', 'walk 12 right 10 r 12'],
    ['walk 12 r 10 r 12 r 10 please', 'walk 12 r 10 r 12 r 10'],
  ])('%s', (text, fix) => {
    expect(problemsIn(readRooms, text)[0]?.fix).toBe(fix);
  });

  it.each([
    ['a wall measured anew', "walk 12'6\" r 10' r 12'3\" r 9'11\" r"],
    ['a shorter wall', "walk 12' r 10' r 12' r 9'"],
    ['two walls that were not typed', "walk 12' r 10' r"],
    ['the rest of a walk', 'walk 12 r 10 r 5 l 4 r'],
    ['a walk for one wall', 'walk 12'],
  ])('never makes up %s', (_what, text) => {
    expect(problemsIn(readRooms, text)[0]?.fix).toBeUndefined();
  });

  it('tells the closing error both ways', () => {
    const expected = problemsIn(readRooms, "walk 12'6\" r 10' r 12'3\" r 9'11\" r")[0]?.expected;
    expect(expected).toContain('3" ahead of');
    expect(expected).toContain('1" right of');
    const other = problemsIn(readRooms, "walk 12' r 10' r 12'3\" r 10'2\" r")[0]?.expected;
    expect(other).toContain('3" behind');
    expect(other).toContain('2" left of');
  });

  it.each([
    // The fourth wall runs through the first.
    "walk 6' r 6' r 3' r 9' r 1' l 2' l 4' l 5'",
    // Two squares that touch at one corner.
    "walk 4' r 4' l 4' r 4' r 4' r 4' l 4' r 4'",
    // The last wall doubles back along the first.
    "walk 4' r 4' r 2' r 6' r 4' r 2' r 6'",
  ])('%s meets itself', (text) => {
    expect(problemsIn(readRooms, text)[0]?.expected).toContain('meets itself');
  });

  it('names the walls that meet', () => {
    const [problem] = problemsIn(readRooms, "walk 6' r 6' r 3' r 9' r 1' l 2' l 4' l 5'");
    expect(problem?.expected).toContain("the 1st wall (6') and the 4th wall (9')");
  });

  it('refuses a wall shorter than an inch', () => {
    expect(problemsIn(readRooms, 'walk 1/2" r 10\' r 1/2" r')[0]?.expected).toContain('1 in');
    expect(cornersOf('walk 1" r 10\' r 1" r', IN)).toEqual({ room: box(120, 1) });
  });
});
