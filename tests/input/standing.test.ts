/** What stands in a room, in the words that people use; what is retold is read again as the same. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standingAsTyped } from '../../commands/floor/floor-home.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../../src/input/reading.ts';
import { readStanding } from '../../src/input/rooms/parse-obstacles.ts';
import type { ParsedStanding, StandingPlace } from '../../src/layout/home-regions.ts';
import { inches, millimetres, ticks } from '../../src/units/length.ts';
import { METRIC, readBy } from './told.ts';

describe('what stands in a room', () => {
  const thing = (text: string, preferences?: Preferences): ParsedStanding | undefined =>
    readBy(readStanding, text, preferences).value?.[0];
  it.each<[string, unknown]>([
    [
      "island 3x6 at 4' from left, 5' from bottom of living",
      {
        name: 'island',
        room: 'living',
        across: inches(36),
        up: inches(72),
        places: [
          { from: 'left', distance: inches(48) },
          { from: 'bottom', distance: inches(60) },
        ],
      },
    ],
    ['a 3’ x 6’ island in the kitchen, centred', { name: 'island', room: 'kitchen', places: [{ from: 'middle' }] }],
    [
      "post 4x4 in the living, 6' from left, 5 ft from bottom",
      { name: 'post', room: 'living', across: inches(4), up: inches(4) },
    ],
    [
      "post 4x4 in of living, 6' from left, 5 ft from bottom",
      { name: 'post', room: 'living', across: inches(4), up: inches(4) },
    ],
    [
      "post 4x4 in in living, 6' from left, 5 ft from bottom",
      { name: 'post', room: 'living', across: inches(4), up: inches(4) },
    ],
    [
      'post 4x4 in, 30 in from wall 2, 6 ft from wall 1',
      {
        name: 'post',
        room: undefined,
        across: inches(4),
        places: [
          { from: 2, distance: inches(30) },
          { from: 1, distance: inches(72) },
        ],
      },
    ],
    [
      "floor vent 4 x 10 in at 2' and 6 in from the lower right corner of hall",
      {
        name: 'floor vent',
        room: 'hall',
        places: [
          { from: 'right', distance: inches(24) },
          { from: 'bottom', distance: inches(6) },
        ],
      },
    ],
    [
      "hearth 5 x 1.5 ft at wall 3, 4' from left",
      { name: 'hearth', across: inches(60), up: inches(18), places: [{ from: 'left' }, { from: 3, distance: 0 }] },
    ],
    ["column 12 in round, 4' from left, 3' from top of living", { name: 'column', across: inches(12), up: inches(12) }],
    ["3 x 4 ft, 4' from left, 3' from the back wall", { name: 'hole', places: [{ from: 'left' }, { from: 'top' }] }],
  ])('%s', (text, given) => expect(thing(text)).toMatchObject(given as object));

  it('is numbered where several have one name', () => {
    const text = "post 4x4 in, 1' from left, 1' from top of hall; post 4x4 in, 2' from left, 1' from top of hall";
    expect(readBy(readStanding, text).value?.map(({ name }) => name)).toEqual(['post 1', 'post 2']);
  });

  it('is in metres and millimetres where that is the habit', () => {
    expect(thing('Insel 0,9 x 1,8 m at 1,2 m from left, 1,5 m from bottom', METRIC)).toMatchObject({
      across: millimetres(900),
      up: millimetres(1800),
    });
    expect(thing('post 100 x 100 at 1,2 from left, 1,5 from bottom', METRIC)).toMatchObject({
      across: millimetres(100),
      places: [{ distance: millimetres(1200) }, { distance: millimetres(1500) }],
    });
  });

  it.each([
    'island',
    'island 3x6x2',
    'island 3x6 at 4 bananas',
    'island 3 x 6 ft, 4 ft from left, 5 ft from bottom, 9 ft',
    '; ;',
  ])('asks about %s, with a fix that is read', (text) => {
    const { value, problems } = readBy(readStanding, text);
    expect(value).toBeUndefined();
    expect(readBy(readStanding, problems[0]?.fix ?? '').problems).toEqual([]);
  });

  it('retold is read as the same', () => {
    const length = fc.integer({ min: 16, max: 16 * 99 }).map((n) => ticks(n * 508));
    const place = (...from: StandingPlace['from'][]) =>
      fc
        .record({ from: fc.constantFrom(...from), distance: length })
        .map(
          ({ from: side, distance }): StandingPlace => (side === 'middle' ? { from: side } : { from: side, distance }),
        );
    const given = fc.record({
      name: fc.constantFrom('island', 'floor vent', 'post'),
      room: fc.constantFrom('living', 'bedroom 2', undefined),
      across: length,
      up: length,
      places: fc.tuple(place('left', 'right', 2), place('top', 'bottom', 1, 'middle')),
    });
    fc.assert(
      fc.property(given, (one) => {
        const read = thing(standingAsTyped(one, DEFAULT_PREFERENCES));
        const inOrder = (places: readonly StandingPlace[]) => places.map((at) => JSON.stringify(at)).sort();
        expect({ ...read, places: inOrder(read?.places ?? []) }).toEqual({ ...one, places: inOrder(one.places) });
      }),
      { numRuns: 200 },
    );
  });
});
