/** Rooms joined through doorways and cut out round what stands in them, figured by hand in inches. */

import { describe, expect, it } from 'vitest';
import type { Doorway, DoorwaySide } from '../../src/layout/doorways.ts';
import type { Region } from '../../src/layout/floor.ts';
import {
  homeOf,
  type ParsedStanding,
  roomAreas,
  type StandingPlace,
  startWall,
} from '../../src/layout/home-regions.ts';
import { inches } from '../../src/units/length.ts';
import { region } from '../outside/laid.ts';

const IN = 8128;
const box = (name: string, wide: number, deep: number): Region =>
  region(name, [
    [0, 0],
    [wide * IN, 0],
    [wide * IN, deep * IN],
    [0, deep * IN],
  ]);
const hall = box('hall', 40, 100);
const bedroom = box('bedroom', 120, 110);

function side(room: string, wall?: number, left?: number): DoorwaySide {
  return {
    room,
    ...(wall === undefined ? {} : { wall }),
    ...(left === undefined ? {} : { at: { from: 'left' as const, distance: inches(left) } }),
  };
}

function doorway(one: DoorwaySide, other: DoorwaySide, runsOn = true, width = 30): Doorway {
  return { sides: [one, other], width: inches(width), depth: inches(4), runsOn };
}

function thing(
  name: string,
  room: string | undefined,
  across: number,
  up: number,
  ...places: StandingPlace[]
): ParsedStanding {
  return { name, room, across: inches(across), up: inches(up), places };
}

function from(at: 'left' | 'right' | 'bottom' | 'top' | number, distance: number): StandingPlace {
  return { from: at, distance: inches(distance) };
}

function homeIn(rooms: readonly Region[], doorways: readonly Doorway[], things: readonly ParsedStanding[] = []) {
  const home = homeOf(rooms, doorways, things);
  if ('troubles' in home) throw new Error(JSON.stringify(home.troubles));
  return home;
}

function whyNot(rooms: readonly Region[], doorways: readonly Doorway[], things: readonly ParsedStanding[] = []) {
  const home = homeOf(rooms, doorways, things);
  return 'troubles' in home ? home.troubles.map(({ why }) => why) : [];
}

const inInches = (outline: readonly (readonly [number, number])[]) => outline.map(([x, y]) => [x / IN, y / IN]);

describe('a floor that runs on', () => {
  it('puts the next room where its doorway meets the first one', () => {
    // From the left corner of the hall's right wall is from above: 20 in of 100 leave 50 to 80. In the bedroom 10 in from
    // the left of its left wall is 10 in from below, so the bedroom stands at 40 and, 4 in of wall later, at x = 44.
    const { regions, taken } = homeIn([hall, bedroom], [doorway(side('hall', 2, 20), side('bedroom', 4, 10))]);
    expect(regions).toHaveLength(1);
    expect(taken).toEqual([]);
    const [joined] = regions;
    expect(joined?.name).toBe('hall + bedroom');
    expect(inInches(joined?.rooms?.[1]?.outline ?? [])).toEqual([
      [44, 40],
      [164, 40],
      [164, 150],
      [44, 150],
    ]);
    expect(joined?.outline).toHaveLength(12);
    const { rooms, doorways } = roomAreas(joined ?? hall);
    expect(rooms.map(({ area }) => Number(area) / IN ** 2)).toEqual([4000, 13_200]);
    expect(Number(doorways) / IN ** 2).toBe(120);
  });

  it('turns a room whose told wall looks another way, and says so', () => {
    const { regions, taken } = homeIn([hall, bedroom], [doorway(side('hall', 2, 20), side('bedroom', 1, 10))]);
    expect(taken).toEqual([{ kind: 'turned', room: 'bedroom', angle: 270 }]);
    // Turned a quarter to the right, 120 along the hall and 110 away from it; wall 1 then runs downwards, its left end below.
    const xs = (regions[0]?.rooms?.[1]?.outline ?? []).map(([x]) => x / IN);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([44, 154]);
  });

  it('takes the longest wall that faces, and the middle, where none is told', () => {
    const { taken } = homeIn([hall, bedroom], [doorway(side('hall', 2), side('bedroom'))]);
    expect(taken).toEqual([
      { kind: 'middle', doorway: 0, room: 'hall', wall: 2 },
      { kind: 'wall', doorway: 0, room: 'bedroom', wall: 4 },
      { kind: 'middle', doorway: 0, room: 'bedroom', wall: 4 },
    ]);
  });

  it('closes a ring of rooms round what lies between them', () => {
    // Four rooms round a core of 30 by 30 in with walls of 4 in: the last doorway only joins what already lies so.
    const rooms = [box('a', 100, 50), box('b', 50, 100), box('c', 100, 50), box('d', 50, 100)];
    const { regions } = homeIn(rooms, [
      doorway(side('a', 3, 10), side('b', 1, 10)),
      doorway(side('b', 4, 5), side('c', 2, 5)),
      doorway(side('c', 1, 60), side('d', 3, 10)),
    ]);
    expect(regions).toHaveLength(1);
    expect(regions[0]?.rooms).toHaveLength(4);
  });

  it('starts its rows at a wall by the number it was told with', () => {
    const [joined] = homeIn([hall, bedroom], [doorway(side('hall', 2, 20), side('bedroom', 4, 10))]).regions;
    expect(joined && startWall(joined, 0)).toMatchObject({ room: 'hall', number: 1, length: 40 * IN });
    expect(joined && startWall(joined, 180)).toMatchObject({ room: 'bedroom', number: 3 });
  });
});

describe('a floor that stops', () => {
  it('reaches half-way into the wall on both sides, less a tick, and tells the opening', () => {
    const { regions, doorways } = homeIn(
      [hall, bedroom],
      [doorway(side('hall', 2, 20), side('bedroom', 4, 10), false)],
    );
    expect(regions.map(({ name }) => name)).toEqual(['hall', 'bedroom']);
    const [first, second] = regions;
    expect(first?.openings).toEqual([{ from: [42 * IN - 1, 50 * IN], to: [42 * IN - 1, 80 * IN] }]);
    expect(second?.openings).toEqual([{ from: [-2 * IN + 1, 40 * IN], to: [-2 * IN + 1, 10 * IN] }]);
    expect(doorways).toEqual([{ rooms: ['hall', 'bedroom'], width: 30 * IN, depth: 4 * IN, runsOn: false }]);
  });

  it('leaves rooms as they are where no wall is told, and says what is not counted', () => {
    const { regions, taken } = homeIn([hall, bedroom], [doorway(side('hall'), side('bedroom'), false)]);
    expect(regions).toEqual([hall, bedroom]);
    expect(taken.map(({ kind }) => kind)).toEqual(['unplaced', 'unplaced']);
  });
});

describe('doorways that cannot be', () => {
  it.each<[string, Doorway[], string[]]>([
    ['a room that is not there', [doorway(side('hall', 2), side('attic'))], ['no room']],
    ['a room to itself', [doorway(side('hall', 2), side('Hall', 4))], ['one room']],
    ['a wall that is not there', [doorway(side('hall', 7), side('bedroom'))], ['no wall']],
    ['no wall at all', [doorway(side('hall'), side('bedroom'))], ['notGiven']],
    ['wider than its wall', [doorway(side('hall', 1), side('bedroom'), true, 50)], ['too wide']],
    ['too far along its wall', [doorway(side('hall', 2, 80), side('bedroom'))], ['too wide']],
    [
      'two that put a room in two places',
      [doorway(side('hall', 2, 0), side('bedroom', 4, 0)), doorway(side('hall', 2, 40), side('bedroom', 4, 60))],
      ['apart'],
    ],
    [
      'two in one place',
      [doorway(side('hall', 2, 0), side('bedroom', 4, 0)), doorway(side('hall', 2, 10), side('bedroom', 4, 10), false)],
      ['overlap', 'overlap'],
    ],
  ])('%s', (_name, doorways, why) => expect(whyNot([hall, bedroom], doorways)).toEqual(why));

  it('rooms on one another', () => {
    const doorways = [
      doorway(side('hall', 2, 10), side('bedroom', 4, 10)),
      doorway(side('hall', 2, 60), side('study', 4, 10)),
    ];
    expect(whyNot([hall, bedroom, box('study', 100, 100)], doorways)).toEqual(['overlap']);
  });

  it('a slanted wall', () => {
    const slanted = region('loft', [
      [0, 0],
      [100 * IN, 0],
      [60 * IN, 90 * IN],
      [0, 90 * IN],
    ]);
    expect(whyNot([hall, slanted], [doorway(side('hall', 4), side('loft', 2))])).toEqual(['slanted']);
  });
});

describe('what stands in a room', () => {
  it('is a hole clear of the walls, a notch at one', () => {
    const { regions } = homeIn(
      [bedroom],
      [],
      [
        thing('post', undefined, 4, 4, from('left', 20), from('bottom', 30)),
        thing('hearth', 'Bedroom', 50, 20, from(3, 0), from('right', 10)),
      ],
    );
    const [room] = regions;
    expect(inInches(room?.holes[0] ?? []).sort()).toEqual(
      [
        [20, 30],
        [20, 34],
        [24, 30],
        [24, 34],
      ].sort(),
    );
    expect(room?.outline).toHaveLength(8);
    expect(room?.standing?.map(({ name }) => name)).toEqual(['post', 'hearth']);
    expect(inInches(room?.standing?.[1]?.outline ?? [])).toEqual([
      [60, 90],
      [110, 90],
      [110, 110],
      [60, 110],
    ]);
    expect(roomAreas(room ?? bedroom).rooms.map(({ area }) => Number(area) / IN ** 2)).toEqual([13_200 - 16 - 1000]);
  });

  it.each<[string, ParsedStanding[], string[]]>([
    ['in no room', [thing('post', 'attic', 4, 4, { from: 'middle' })], ['no room']],
    ['without a room where there are two', [thing('post', undefined, 4, 4, { from: 'middle' })], ['which room']],
    ['from a wall that is not there', [thing('post', 'hall', 4, 4, from(9, 1), from('left', 1))], ['no wall']],
    [
      'told twice one way',
      [thing('post', 'hall', 4, 4, from('left', 1), from('right', 1), from('top', 2))],
      ['placed twice'],
    ],
    ['told one way only', [thing('post', 'hall', 4, 4, from('left', 1))], ['unplaced']],
    ['outside', [thing('island', 'hall', 30, 30, from('left', 20), from('top', 0))], ['outside']],
    [
      'on another',
      [
        thing('post', 'hall', 4, 4, from('left', 1), from('top', 2)),
        thing('post 2', 'hall', 4, 4, from('left', 2), from('top', 3)),
      ],
      ['overlap'],
    ],
    ['from wall to wall', [thing('bar', 'hall', 40, 20, from('left', 0), from('bottom', 30))], ['parts']],
  ])('is a problem %s', (_name, things, why) => expect(whyNot([hall, bedroom], [], things)).toEqual(why));
});
