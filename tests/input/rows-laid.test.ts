/** Directions by room, and how far a floor is laid, in the words that people use. */

import { describe, expect, it } from 'vitest';
import { readDirection } from '../../src/input/parse-layout.ts';
import { readRowsLaid } from '../../src/input/parse-rows-laid.ts';
import { inches, millimetres } from '../../src/units/length.ts';
import { METRIC, readBy } from './told.ts';

describe('directions', () => {
  it.each<[string, unknown]>([
    ['long', { kind: 'side', side: 'long' }],
    ['wall 2 of living', { kind: 'wall', wall: 2, region: 'living' }],
    ['living wall 2', { kind: 'wall', wall: 2, region: 'living' }],
    [
      'hall long; bedroom short',
      {
        kind: 'each',
        rooms: [
          { room: 'hall', heading: { side: 'long' } },
          { room: 'bedroom', heading: { side: 'short' } },
        ],
        others: { side: 'long' },
      },
    ],
    [
      'hall: long, bedroom 2: wall 3 and others short',
      {
        kind: 'each',
        rooms: [{ room: 'hall' }, { room: 'bedroom 2', heading: { wall: 3 } }],
        others: { side: 'short' },
      },
    ],
    [
      'the hall along wall 2; rest long',
      { kind: 'each', rooms: [{ room: 'hall', heading: { kind: 'wall', wall: 2 } }] },
    ],
  ])('%s', (text, given) => expect(readBy(readDirection, text).value).toMatchObject(given as object));

  it.each(['up', 'hall up; bedroom long', 'hall'])('asks about %s', (text) =>
    expect(readBy(readDirection, text).problems).toHaveLength(1),
  );
});
describe('how far a floor is laid', () => {
  const inch = (length: number) => inches(length);
  it.each<[string, unknown]>([
    [
      'row 7 ended at 31 1/4, broke one, 22 planks and these offcuts left: 18 in left, 31 in right',
      {
        rows: [{ row: 7, end: inch(31.25) }],
        broken: 1,
        planks: 22,
        cartons: 0,
        offcuts: [
          { length: inch(18), end: 'left' },
          { length: inch(31), end: 'right' },
        ],
      },
    ],
    [
      'hall done, bedroom row 7 ended at 31 1/4”, 2 planks broken, 3 boxes and 4 planks left. offcuts 2 x 18” left, 31” right end',
      {
        rows: [{ room: 'bedroom', row: 7 }],
        done: ['hall'],
        broken: 2,
        planks: 4,
        cartons: 3,
        offcuts: [{ end: 'left' }, { end: 'left' }, { end: 'right' }],
      },
    ],
    ['7 rows done, 22 planks left', { rows: [{ row: 7 }], planks: 22, offcuts: undefined }],
    [
      'row 7b started with 12 in and ended at 31 in; one ruined; no offcuts; 14 boards left',
      { rows: [{ row: 7, run: 1, start: inch(12), end: inch(31) }], broken: 1, planks: 14, offcuts: [] },
    ],
    ['I’ve laid 5 rows, the last one ended at 20”, 30 boards left', { rows: [{ row: 5, end: inch(20) }], planks: 30 }],
    [
      'row 7 of the living room ended with 17 in, twelve planks left, broke none',
      { rows: [{ room: 'living room', row: 7, end: inch(17) }], planks: 12, broken: 0 },
    ],
    [
      'row 4 is done, 2 cartons left, offcuts: 18 left, 20 1/2 right, 9',
      {
        planks: 0,
        cartons: 2,
        offcuts: [{ end: 'left' }, { length: inch(20.5), end: 'right' }, { length: inch(9), end: 'any' }],
      },
    ],
  ])('%s', (text, given) => expect(readBy(readRowsLaid, text).value).toMatchObject(given as object));

  it('is in millimetres where that is the habit', () => {
    expect(readBy(readRowsLaid, 'row 3 ended at 812, 9 planks left, offcuts: 450 left', METRIC).value).toMatchObject({
      rows: [{ end: millimetres(812) }],
      offcuts: [{ length: millimetres(450) }],
    });
  });

  it.each([
    '22 left',
    'banana',
    'row 7 ended at banana 3',
    'row 0 is done',
    'row 3 done, 5 planks left, 6 planks left',
    'row 3 done, 17 gnus',
  ])('asks about %s, with a fix that is read', (text) => {
    const { value, problems } = readBy(readRowsLaid, text);
    expect(value).toBeUndefined();
    expect(readBy(readRowsLaid, problems[0]?.fix ?? '').problems).toEqual([]);
  });

  it('tells what it does not use', () => {
    expect(readBy(readRowsLaid, 'row 3 done, 5 planks left, knees hurt').notes.join()).toContain('knees hurt');
  });
});
