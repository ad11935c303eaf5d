/** Doorways in the words that people use; what is retold is read again as the same. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doorwayAsTyped } from '../../commands/floor/floor-home.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../../src/input/reading.ts';
import { readHomeDoorways } from '../../src/input/rooms/parse-doorways.ts';
import type { Doorway } from '../../src/layout/doorways.ts';
import { inches, millimetres, ticks } from '../../src/units/length.ts';
import { METRIC, readBy } from './told.ts';

function doorwayIn(text: string, preferences?: Preferences): Doorway | undefined {
  const { value } = readBy(readHomeDoorways, text, preferences);
  return value?.length === 1 ? value[0] : undefined;
}
describe('doorways', () => {
  const left = (distance: number) => ({ from: 'left', distance: inches(distance) });
  it.each<[string, unknown]>([
    [
      'hall to bedroom 32 in, 18 in from the left corner of wall 2',
      {
        sides: [{ room: 'hall', wall: 2, at: left(18) }, { room: 'bedroom' }],
        width: inches(32),
        depth: inches(4.5),
        runsOn: true,
      },
    ],
    [
      'hall to bedroom 32”, wall 2, 18” from left, wall 4 of bedroom, 12” from the left, stops',
      {
        sides: [
          { room: 'hall', wall: 2, at: left(18) },
          { room: 'bedroom', wall: 4, at: left(12) },
        ],
        width: inches(32),
        runsOn: false,
      },
    ],
    [
      'Hall wall 2 to Living Room wall 4: 5 ft, transition strip',
      {
        sides: [
          { room: 'Hall', wall: 2 },
          { room: 'Living Room', wall: 4 },
        ],
        width: inches(60),
        runsOn: false,
      },
    ],
    [
      'between hall and bath 30 in wide, on wall 3, runs through',
      { sides: [{ room: 'hall', wall: 3 }, { room: 'bath' }], width: inches(30), runsOn: true },
    ],
    [
      'hall → bedroom 2: 32 in on wall 1 of bedroom 2, no transition',
      { sides: [{ room: 'hall' }, { room: 'bedroom 2', wall: 1 }], runsOn: true },
    ],
    [
      'hall - closet 2’6” door, stops there, 6 in thick wall',
      { sides: [{ room: 'hall' }, { room: 'closet' }], width: inches(30), depth: inches(6), runsOn: false },
    ],
    [
      'bedroom 2 to bedroom 3 32 in, wall 2',
      { sides: [{ room: 'bedroom 2', wall: 2 }, { room: 'bedroom 3' }], width: inches(32) },
    ],
    [
      'the hall to the living room, 5 ft opening, 2 ft from the right end of wall 2, t-strip',
      {
        sides: [{ room: 'hall', wall: 2, at: { from: 'right', distance: inches(24) } }, { room: 'living room' }],
        runsOn: false,
      },
    ],
    ['hall to bedroom 32 in at the left of wall 2', { sides: [{ wall: 2, at: left(0) }, {}] }],
  ])('%s', (text, given) => expect(doorwayIn(text)).toMatchObject(given as object));

  it('are millimetres where that is the habit', () => {
    expect(doorwayIn('Flur to Bad 800, wall 2, 300 from left', METRIC)).toMatchObject({
      width: millimetres(800),
      sides: [{ room: 'Flur', at: { distance: millimetres(300) } }, { room: 'Bad' }],
    });
  });

  it('say what was taken', () => {
    const { notes } = readBy(readHomeDoorways, 'hall to bath 30 in, wall 2');
    expect(notes.join('\n')).toMatch(/runs on/);
    expect(notes.join('\n')).toMatch(/4 1\/2"/);
    expect(readBy(readHomeDoorways, 'hall to bath 30 in, wall 2, runs on, 5 in thick').notes).toEqual([]);
  });

  it.each([
    'hall 32 in',
    'hall to bedroom',
    'hall to bedroom 2 in',
    'hall to bedroom 32 in and 14 in',
    'hall to bedroom 32 in, stops, runs on',
    'hall to bedroom banana in',
    'hall to bath 32 in, wall 2, wall 3, wall 4',
    ';',
  ])('asks about %s, with a fix that is read', (text) => {
    const { value, problems } = readBy(readHomeDoorways, text);
    expect(value).toBeUndefined();
    expect(readBy(readHomeDoorways, problems[0]?.fix ?? '').problems).toEqual([]);
  });

  it('are none where none are told', () => {
    for (const text of ['none', 'no doorways', ' ']) expect(readBy(readHomeDoorways, text).value).toEqual([]);
  });

  it('retold are read as the same', () => {
    const sixteenth = (most: number) => fc.integer({ min: 0, max: most * 16 }).map((n) => ticks(n * 508));
    const at = fc.option(
      fc.record({ from: fc.constantFrom('left' as const, 'right' as const), distance: sixteenth(90) }),
      { nil: undefined },
    );
    const side = (room: string) =>
      fc
        .record({ wall: fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }), at })
        .map(({ wall, at: jamb }) => ({
          room,
          ...(wall === undefined ? {} : { wall, ...(jamb ? { at: jamb } : {}) }),
        }));
    const doorway = fc.record({
      sides: fc.tuple(side('hall'), side('bedroom 2')),
      width: fc.integer({ min: 16 * 6, max: 16 * 96 }).map((n) => ticks(n * 508)),
      depth: fc.integer({ min: 16, max: 16 * 12 }).map((n) => ticks(n * 508)),
      runsOn: fc.boolean(),
    });
    fc.assert(
      fc.property(doorway, (given) => {
        expect(doorwayIn(doorwayAsTyped(given, DEFAULT_PREFERENCES))).toEqual(given);
      }),
      { numRuns: 200 },
    );
  });
});
