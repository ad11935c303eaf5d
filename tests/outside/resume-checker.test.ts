/** The checker of rests takes a sound one and catches every planted wrong. */

import { beforeAll, describe, expect, it } from 'vitest';
import type { ResumeResult } from '../../commands/floor/resume.ts';
import { firstFloorTo, replyTo } from '../chat/asked.ts';
import { type FloorData, readFloor } from './floor-checker-data.ts';
import { checkResume, type ResumeData } from './resume-checker.ts';

const FLOOR = `room: bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton, kerf: 1/8 in`;
let floor: FloorData;
let sound: ResumeResult;

beforeAll(async () => {
  const read = readFloor(JSON.parse(JSON.stringify(await firstFloorTo(`planks ${FLOOR}`))));
  if ('faults' in read) throw new Error(read.faults.join('\n'));
  floor = read.floor;
  const ask = `resume ${FLOOR}, so-far: row 12 ended at 31 1/4 in, broke one, 33 planks left, offcuts: 18 in left, 31 in right, 40 in right`;
  const { data } = await replyTo(ask);
  sound = data as ResumeResult;
});

function changed(change: (data: ResumeData) => void): string[] {
  const data = JSON.parse(JSON.stringify(sound)) as ResumeData;
  change(data);
  return checkResume(data, floor);
}

it('takes what is sound', () => expect(changed(() => {})).toEqual([]));

describe('planted wrongs', () => {
  it.each<[string, (data: ResumeData) => void]>([
    [
      'enough that is not',
      (data) => {
        data.stock.planks = data.need - 1;
      },
    ],
    [
      'a row left out',
      (data) => {
        data.rows.pop();
      },
    ],
    [
      'a row told that lies',
      (data) => {
        const [row] = data.rows;
        if (row) row.row = 3;
      },
    ],
    [
      'an offcut too short',
      (data) => {
        for (const offcut of data.stock.offcuts) offcut.length = 8128;
      },
    ],
    [
      'offcuts of the other end',
      (data) => {
        for (const offcut of data.stock.offcuts) offcut.end = offcut.end === 'left' ? 'right' : 'left';
      },
    ],
    [
      'an offcut that is not there',
      (data) => {
        data.stock.offcuts = [];
      },
    ],
    [
      'two pieces too long for their plank',
      (data) => {
        for (const { pieces } of data.rows)
          for (const piece of pieces) if (piece.part !== 'whole') piece.from = { plank: 1 };
      },
    ],
    [
      'a joint too near the row that lies, not told',
      (data) => {
        const [next] = data.rows;
        const [last] = data.before;
        const [first] = next?.pieces ?? [];
        if (!next || !last || !first) throw new Error('no rows');
        last.runs = [{ u: first.u, lengths: next.pieces.map(({ length }) => length) }];
      },
    ],
    [
      'a breach told that is none',
      (data) => {
        data.broken.push({ rule: 'minEnd', region: 'bedroom', row: 14, at: 0 });
      },
    ],
    [
      'a count of planks that does not follow',
      (data) => {
        data.need += 1;
      },
    ],
    [
      'a bound above what is used',
      (data) => {
        data.bound = data.need + 1;
      },
    ],
  ])('%s', (_name, change) => {
    expect(changed(change)).not.toEqual([]);
  });
});
