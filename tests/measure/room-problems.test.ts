/** Rooms that cannot be read: what is told, and a fix that is read. */

import { describe, expect, it } from 'vitest';
import { readRooms } from '../../src/measure/room.ts';
import { cornersOf, FT, METRES, problemsIn } from './room-typed.ts';

describe('the fix', () => {
  it.each([
    ['bedroom 2 10x12', 'bedroom 2: 10x12'],
    ['12x14 bed 2', 'bed 2: 12x14'],
    ['living 12', 'living 12 x 12'],
    ['12 x banana', '12 x 12'],
    ['banana x 12', '12 x 12'],
    ["living 12' by", "living 12' x 12'"],
    ['168 sq ft', '12 x 14 ft'],
    ['12 square feet', '12 x 14 ft'],
    ['living 168 sqft', 'living 12 x 14 ft'],
    ['15 m²', '12 x 14 ft'],
    ['12x14 (168 sq ft)', '12x14'],
    ['12 x 14 x 8', '12 x 14'],
    ['12x14x', '12x14'],
    ['-12x14', '12x14'],
    ['12 x -14', '12 x 14'],
    ['12x14 10x12', '12x14; 10x12'],
    ['living 12x14 bed 10x12', 'living 12x14; bed 10x12'],
    ['living', 'living: 12 x 14 ft'],
    ['@home 12x14', 'home: 12x14'],
    ['12x14 - 12x4', '12x14'],
    ['12x14 - 3x15', '12x14'],
    ['12x14 - 6x1 - 6x1', '12x14 - 6x1'],
    ['12x14 - 6x7 - 1x1 - 6x7', '12x14 - 6x7 - 1x1'],
    ['12x14 - 1x1 - 1x1 - 1x1 - 1x1 - 1x1', '12x14 - 1x1 - 1x1 - 1x1 - 1x1'],
    ['walk 4 r 3 r 4 r - 1x1', 'walk 4 r 3 r 4 r'],
    ['0.5 x 3 in', '12 x 14 ft'],
    ['400x500', '400 in x 500'],
    ['12 right 10 right 12', 'walk 12 right 10 right 12'],
    ['12x1\u00004', '12x14'],
    ['', '12 x 14 ft'],
  ])('of %j', (text, fix) => {
    const [problem] = problemsIn(readRooms, text);
    expect(problem?.fix).toBe(fix);
  });

  it('is typed in the units of the asker', () => {
    expect(problemsIn(readRooms, 'living', METRES)[0]?.fix).toBe('living: 3,6 x 4,2 m');
    expect(problemsIn(readRooms, '3800x4200', METRES)[0]?.fix).toBe('3800 mm x 4200');
  });
});

it('tells all problems of one text, each word for word, with one fix that mends them all', () => {
  const problems = problemsIn(readRooms, 'Bed 2 10x12; hall; 12x14 - 12x4; closet 3×6');
  expect(problems.map(({ got }) => got)).toEqual(['Bed 2 10x12', 'hall', '12x4']);
  expect(new Set(problems.map(({ fix }) => fix))).toEqual(
    new Set(['Bed 2: 10x12; hall: 12 x 14 ft; 12x14; closet 3×6']),
  );
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
