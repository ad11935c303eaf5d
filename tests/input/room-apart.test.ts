/** Rooms taken apart: each reads the same by itself, in whatever units its reader thinks. */

import { describe, expect, it } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { readRoomsApart, roomGiven } from '../../src/input/rooms/rooms-apart.ts';

const reading = (units: 'imperial' | 'metric' = 'imperial') => ({
  option: 'room',
  preferences: { ...DEFAULT_PREFERENCES, units },
  note: () => undefined,
});

function apart(text: string, units?: 'imperial' | 'metric') {
  const rooms = readRoomsApart(text, reading(units));
  if (!rooms.ok) throw new Error(rooms.problems[0].expected);
  return rooms.value;
}

describe('rooms apart', () => {
  it.each([
    [`bedroom 11' x 12'6"`, [['bedroom', `11' x 12'6"`]]],
    ['bedroom 12x14', [['bedroom', '12x14 ft']]],
    ['12x14', [['room', '12x14 ft']]],
    [
      `hall 3'6" x 14'; living 14' x 16' + bay 3' x 8'`,
      [
        ['hall', `3'6" x 14'`],
        ['living', `14' x 16' + bay 3' x 8'`],
      ],
    ],
    [
      'hall 3 x 11, bedroom 12x14 - 3x4',
      [
        ['hall', '3 x 11 ft'],
        ['bedroom', '12x14 - 3x4 ft'],
      ],
    ],
    ['living 12x14 + 3x6 closet', [['living', '12 x 14 ft + 3 x 6 ft closet']]],
    [
      `living 14' x 12' with a bay 8' x 2' at 45°; hall 3 x 11`,
      [
        ['living', `14' x 12' with a bay 8' x 2' at 45°`],
        ['hall', '3 x 11 ft'],
      ],
    ],
    ['den 12x14 with a clipped corner 2x2', [['den', '12x14 with a clipped corner 2x2 ft']]],
    ['2nd bedroom: 10 x 11 ft', [['2nd bedroom', '10 x 11 ft']]],
    ['3,8 x 4,2 m bedroom', [['bedroom', '3,8 x 4,2 m']]],
    [
      `walk 12 right 10 right 5 left 4 right 7 right`,
      [['room', 'walk 12 ft right 10 ft right 5 ft left 4 ft right 7 ft right']],
    ],
  ])('%s', (text, expected) => {
    const rooms = apart(text);
    expect(rooms.map(({ name, text: given }) => [name, given])).toEqual(expected);
  });

  it.each([
    'hall 3 x 11; bedroom 12x14 - 3x4; living 15x12 + 6x2 bay',
    `upstairs hall 3'6 x 14 and living 12'6 x 14 + bay 6x2; "kids" 10x11`.replaceAll('"', ''),
    'room 1: 12x14; room 2: 3 x 11; den 12.5 by 13',
    'hall 3 x 11; living 14 x 12 with a bay 8x2 at 60°; den 12x14 less a 2x2 corner cut diagonally',
    'den 12x14 with a clipped corner 2x2; living 4,2 x 3,6 m with a bay 2 x 0,5',
    'den walk 10 right 10 right diagonal 2 x 2 8 right 12 right',
    'bay walk 12 right 10 right 5 left 4 right 7 right; hall 3 x 11',
    'hall 3 x 4.5; bath 1.5 x 2.2 m',
  ])('read the same, one by one and by anybody: %s', (text) => {
    for (const units of ['imperial', 'metric'] as const) {
      const whole = readRooms(text, reading(units));
      if (!whole.ok) throw new Error(whole.problems[0].expected);
      const shapes = whole.value.rooms.map(({ outline }) => outline);
      for (const other of ['imperial', 'metric'] as const) {
        const again = apart(text, units).flatMap((room) => {
          const read = readRooms(roomGiven(room), reading(other));
          return read.ok ? read.value.rooms.map(({ outline }) => outline) : [];
        });
        expect(again).toEqual(shapes);
      }
    }
  });

  it('keeps the problems of what is no room', () => {
    expect(readRoomsApart('bedroom 12', reading()).ok).toBe(false);
    expect(readRoomsApart('bedroom 12 by 11 and a half', reading())).toMatchObject({
      problems: [{ expected: expect.stringContaining('in numbers') }],
    });
  });
});
