/** Rooms that cannot be read: what is told, and a fix that is read. */

import { describe, expect, it } from 'vitest';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { cornersOf, FT, METRES, problemsIn } from './room-typed.ts';

describe('the fix', () => {
  it.each([
    ['bedroom 2 10x12', 'bedroom 2: 10x12'],
    ['12x14 bed 2', 'bed 2: 12x14'],
    ['12x14x', '12x14'],
    ['-12x14', '12x14'],
    ['12 x -14', '12 x 14'],
    ['12x14 10x12', '12x14; 10x12'],
    ['living 12x14 bed 10x12', 'living 12x14; bed 10x12'],
    ['@home 12x14', 'home: 12x14'],
    ['400x500', '400 in x 500'],
    ['12 right 10 right 12', 'walk 12 right 10 right 12'],
    ['bedroom 2 10x12 less 3x4 with a bay 6x2 at 45°', 'bedroom 2: 10x12 less 3x4 with a bay 6x2 at 45°'],
    ['den 12x14 with a bay 6x2 at 45° hall 3x11', 'den 12x14 with a bay 6x2 at 45°; hall 3x11'],
    ['hall 3x11 bed 10x12 + 2x5 closet', 'hall 3x11; bed 10x12 + 2x5 closet'],
  ])('of %j', (text, fix) => {
    const [problem] = problemsIn(readRooms, text);
    expect(problem?.fix).toBe(fix);
  });

  it.each([
    ['a side that was not typed', 'living 12'],
    ['a side that is no length', '12 x banana'],
    ['the other side that is none', 'banana x 12'],
    ['a side that breaks off', "living 12' by"],
    ['two sides for an area', '168 sq ft'],
    ['two sides for a square of feet', '12 square feet'],
    ['two sides for an area with a name', 'living 168 sqft'],
    ['two sides for square metres', '15 m²'],
    ['a room for its name', 'living'],
    ['a room for nothing', ''],
    ['a room without the area typed with it', '12x14 (168 sq ft)'],
    ['a room without its height', '12 x 14 x 8'],
    ['a room without the corner left out', '12x14 - 12x4'],
    ['a room without the corner that is too deep', '12x14 - 3x15'],
    ['a room with one corner of two', '12x14 - 6x1 - 6x1'],
    ['a room with two corners of three', '12x14 - 6x7 - 1x1 - 6x7'],
    ['a room with four corners of five', '12x14 - 1x1 - 1x1 - 1x1 - 1x1 - 1x1'],
    ['a walk without the corner left out', 'walk 4 r 3 r 4 r - 1x1'],
    ['a room without the bay that does not fit', 'den 12x14 less 3x4 with a bay 20x2 at 45°'],
    ['another room for one too small', '0.5 x 3 in'],
    ['one figure for two', '12x1\u00004'],
  ])('never makes up or leaves out: %s', (_what, text) => {
    for (const problem of problemsIn(readRooms, text)) expect(problem.fix).toBeUndefined();
  });

  it('is typed in the units of the asker', () => {
    expect(problemsIn(readRooms, '3800x4200', METRES)[0]?.fix).toBe('3800 mm x 4200');
  });
});

it('tells all problems of one text, each word for word, with one fix that mends them all', () => {
  const problems = problemsIn(readRooms, 'Bed 2 10x12; hall 3x11 den 9x9; bath 12 x -14; closet 3×6');
  expect(problems.map(({ got }) => got)).toEqual(['Bed 2 10x12', '3x11 den 9x9', 'bath 12 x -14']);
  expect(new Set(problems.map(({ fix }) => fix))).toEqual(
    new Set(['Bed 2: 10x12; hall 3x11; den 9x9; bath 12 x 14; closet 3×6']),
  );
  const hopeless = problemsIn(readRooms, 'Bed 2 10x12; hall; 12x14 - 12x4; closet 3×6');
  expect(hopeless.map(({ got, fix }) => [got, fix])).toEqual([
    ['Bed 2 10x12', undefined],
    ['hall', undefined],
    ['12x4', undefined],
  ]);
});

describe('limits', () => {
  it('50 rooms', () => {
    const rooms = (count: number) => Array.from({ length: count }, () => '3x4').join('; ');
    expect(Object.keys(cornersOf(rooms(50), 1))).toHaveLength(50);
    expect(problemsIn(readRooms, rooms(51))[0]?.expected).toContain('50');
    expect(problemsIn(readRooms, rooms(51).replaceAll(';', ' +'))[0]?.expected).toContain('50');
  });

  it('100 m a side', () => {
    expect(cornersOf('100 x 2 m', 320_000)).toEqual({
      room: [
        [0, 0],
        [100, 0],
        [100, 2],
        [0, 2],
      ],
    });
    expect(problemsIn(readRooms, '100.001 x 2 m')[0]?.expected).toContain('100 m');
    const long = 'walk 3 m r 60 m r 1 m l 60 m r 2 m r 120 m r';
    expect(problemsIn(readRooms, long)[0]?.expected).toContain('100 m');
  });

  it('5,000 m² an ask', () => {
    expect(Object.keys(cornersOf('50 x 50 m; 50 x 50 m', 1))).toHaveLength(2);
    expect(problemsIn(readRooms, '50 x 50 m; 50 x 50 m; 0.1 x 0.1 m')[0]?.expected).toContain('5000 m²');
  });

  it('1 in a side', () => {
    expect(cornersOf('1 in x 12 ft', FT / 12)).toEqual({
      room: [
        [0, 0],
        [1, 0],
        [1, 144],
        [0, 144],
      ],
    });
    expect(problemsIn(readRooms, '15/16 in x 12 ft')[0]?.expected).toContain('1 in');
  });

  it('40 characters a name', () => {
    const name = 'a'.repeat(40);
    expect(Object.keys(cornersOf(`${name} 3x4; ${name} 3x4`, 1))).toEqual([name, `${'a'.repeat(38)} 2`]);
    expect(problemsIn(readRooms, `${name}b 3x4`)[0]?.expected).toContain('40');
  });

  it('4,000 characters', () => {
    expect(Object.keys(cornersOf(`3x4${' '.repeat(3997)}`, 1))).toEqual(['room']);
    expect(problemsIn(readRooms, `3x4${' '.repeat(3998)}`)[0]?.expected).toContain('4000');
  });
});
