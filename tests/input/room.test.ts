/** Rooms in the forms people type them. */

import { describe, expect, it } from 'vitest';
import { readRooms } from '../../src/input/rooms/parse-room.ts';
import { box, cornersOf, FT, given, IN, M, METRES, MM } from './room-typed.ts';

describe('two sides', () => {
  it.each([
    ['12x14', 12 * FT, 14 * FT],
    ['12 x 14 ft', 12 * FT, 14 * FT],
    ["12'6\" by 14'", 150 * IN, 14 * FT],
    ['12’6” × 14’', 150 * IN, 14 * FT],
    ['12′ 6″ ✕ 14′', 150 * IN, 14 * FT],
    ['12\'-6" x 14\'-3 1/2"', 150 * IN, 171.5 * IN],
    ["12' 6'' X 14'", 150 * IN, 14 * FT],
    ['12 ft 6 in x 14 ft', 150 * IN, 14 * FT],
    ['12 feet and 6 inches by 14 feet', 150 * IN, 14 * FT],
    ['12FT BY 14FT', 12 * FT, 14 * FT],
    ['12ftx14ft', 12 * FT, 14 * FT],
    ['12\u00a0x\u00a014', 12 * FT, 14 * FT],
    ['12*14', 12 * FT, 14 * FT],
    ['12½ x 14', 12.5 * FT, 14 * FT],
    ['12 1/2 x 14', 12.5 * FT, 14 * FT],
    ["12' x 14", 12 * FT, 14 * FT],
    ['144 x 168 in', 12 * FT, 14 * FT],
    ["12' (w) x 14' (l)", 12 * FT, 14 * FT],
    ['12 wide by 14 long', 12 * FT, 14 * FT],
    ['4 x 5 yd', 12 * FT, 15 * FT],
    ['3.8 x 4.2 m', 3800 * MM, 4200 * MM],
    ['2,5 auf 3,2 m', 2500 * MM, 3200 * MM],
    ['3m80 x 4m20', 3800 * MM, 4200 * MM],
    ['3mx4m', 3 * M, 4 * M],
    ['3 m 80 cm x 4 m', 3800 * MM, 4 * M],
    ['380 x 420 cm', 3800 * MM, 4200 * MM],
    ['3800 x 4,200 mm', 3800 * MM, 4200 * MM],
    ['12 square', 12 * FT, 12 * FT],
    ["12' square", 12 * FT, 12 * FT],
    ['3 m square', 3 * M, 3 * M],
  ])('%s', (text, x, y) => {
    expect(cornersOf(text, 1)).toEqual({ room: box(x, y) });
  });

  it('takes numbers without a unit by habit, and says so once a room', () => {
    expect(given(readRooms, 'living 12x14; bed 10x12').notes).toEqual([
      'living: 12x14 read as feet',
      'bed: 10x12 read as feet',
    ]);
    expect(cornersOf('3,8 x 4,2', M, METRES)).toEqual({ room: box(3.8, 4.2) });
    expect(given(readRooms, '3,8 x 4,2', METRES).notes).toEqual(['room: 3,8 x 4,2 read as metres']);
    expect(given(readRooms, '12 x 14 ft').notes).toEqual([]);
  });

  it('takes the unit told nearest before the habit', () => {
    expect(cornersOf('3.5 x 4.5; 2 x 3 m', M)).toEqual({ 'room 1': box(3.5, 4.5), 'room 2': box(2, 3) });
    expect(given(readRooms, '3 x 4.5; 2 x 3 m').notes).toEqual(['room 1: 3 x 4.5 read as metres']);
  });

  it('tells the units that were typed', () => {
    expect(given(readRooms, '3 x 4 m').value.units).toBe('metric');
    expect(given(readRooms, "12' x 14'", METRES).value.units).toBe('imperial');
    expect(given(readRooms, '3 x 4', METRES).value.units).toBe('metric');
  });
});

describe('names', () => {
  it.each([
    ['living 12x14', 'living'],
    ['12x14 Living  Room', 'Living Room'],
    ['living: 12x14', 'living'],
    ['living = 12x14', 'living'],
    ['living - 12x14', 'living'],
    ['living, 12x14', 'living'],
    ['living room (12x14)', 'living room'],
    ['12x14 (living room)', 'living room'],
    ['the living room is about 12 by 14 feet', 'living room'],
    ['bedroom 2: 10x12', 'bedroom 2'],
    ['walk-in closet 6x8', 'walk-in closet'],
    ["Anna's room 10x12", "Anna's room"],
    ['Küche 3 x 4 m', 'Küche'],
    ['bed and bath 10x12', 'bed and bath'],
    ['foot of the stairs 3x4', 'foot of the stairs'],
    ['- hall 3x12', 'hall'],
  ])('%s', (text, name) => {
    expect(Object.keys(cornersOf(text, 1))).toEqual([name]);
  });

  it('numbers rooms without a name and repeated names', () => {
    expect(Object.keys(cornersOf('12x14; 10x12', 1))).toEqual(['room 1', 'room 2']);
    expect(Object.keys(cornersOf('bed 12x14; Bed 10x12; 3x4', 1))).toEqual(['bed', 'Bed 2', 'room']);
  });
});

describe('several rooms', () => {
  it.each([
    '12x14; 10x12',
    '12x14\n10x12',
    '12x14, 10x12',
    '12x14,10x12',
    '12x14 and 10x12',
    '12x14 & 10x12',
    '12x14;;10x12;',
  ])('%j', (text) => {
    expect(cornersOf(text, FT)).toEqual({ 'room 1': box(12, 14), 'room 2': box(10, 12) });
  });

  it('tells a decimal comma from one between rooms', () => {
    expect(cornersOf('3,8 x 4,2, 2,5 x 3,1', M, METRES)).toEqual({ 'room 1': box(3.8, 4.2), 'room 2': box(2.5, 3.1) });
    expect(cornersOf('living - 12x14, bed and bath - 10x12', FT)).toEqual({
      living: box(12, 14),
      'bed and bath': box(10, 12),
    });
  });

  it('reads the small upstairs flat', () => {
    const flat = "hall 3'6\" x 12'; living 12' x 15' + bay 6' x 2'6\"; bedroom 10' x 11'; closet 2' x 5'";
    expect(cornersOf(flat, IN)).toEqual({
      hall: box(42, 144),
      living: box(144, 180),
      bay: box(72, 30),
      bedroom: box(120, 132),
      closet: box(24, 60),
    });
  });
});

describe('areas joined and corners left out', () => {
  it.each(['12x14 + 3x6 closet', '12x14 plus closet 3x6', '12x14 and 3x6 closet'])('%s', (text) => {
    expect(cornersOf(text, FT)).toEqual({ room: box(12, 14), closet: box(3, 6) });
    expect(given(readRooms, text).notes).toContain('closet is laid separately and uses offcuts from the other rooms');
  });

  it('names what is joined after the room', () => {
    expect(Object.keys(cornersOf('hall 3x12 + 3x4 + 2x2', 1))).toEqual(['hall', 'hall + 1', 'hall + 2']);
  });

  it.each([
    '12x14 - 3x4',
    '12x14-3x4',
    "12'x14'-3'x4'",
    '12x14 minus 3x4',
    '12x14 less 3x4',
    '12x14 without 3x4',
    '12x14 – 3x4',
  ])('%s', (text) => {
    expect(cornersOf(text, FT)).toEqual({
      room: [
        [0, 0],
        [12, 0],
        [12, 10],
        [9, 10],
        [9, 14],
        [0, 14],
      ],
    });
    expect(given(readRooms, text).notes.join()).toContain('far right');
  });

  it('leaves out far right, far left, near left and near right in turn', () => {
    expect(cornersOf('12x14 - 3x4 - 2x5 - 1x6 - 4x2', FT)).toEqual({
      room: [
        [0, 6],
        [1, 6],
        [1, 0],
        [8, 0],
        [8, 2],
        [12, 2],
        [12, 10],
        [9, 10],
        [9, 14],
        [2, 14],
        [2, 9],
        [0, 9],
      ],
    });
  });
});

describe('worked example', () => {
  it('an L-shape of 2.74 x 1.75 and 2.63 x 3.92 is 15.11 m² (flooringtech.org, unit 4, published)', () => {
    const { rooms } = given(readRooms, '2.74 x 1.75 m + 2.63 x 3.92 m').value;
    const area = rooms.reduce(
      (sum, { outline }) => sum + ((outline[2]?.[0] ?? 0) / M) * ((outline[2]?.[1] ?? 0) / M),
      0,
    );
    expect(Math.abs(area - 15.11)).toBeLessThanOrEqual(0.01);
  });
});
