/** Scattered floors are legal as laid, and a joint put in line or a stair planted in one is caught. */

import { describe, expect, it } from 'vitest';
import { inches } from '../../src/units/length.ts';
import { checkFloor } from './floor-checker.ts';
import { readFloor } from './floor-checker-data.ts';
import { benchRules, laid, plank, region } from './laid.ts';

const room = region('room', [
  [0, 0],
  [inches(150), 0],
  [inches(150), inches(60)],
  [0, inches(60)],
]);
const board = plank(6, 48);

/** A scattered floor of ten rows, as data to change. */
function scattered() {
  const { data } = laid([room], 0, board, benchRules(board, 'scattered'));
  const read = readFloor(data);
  if ('faults' in read) throw new Error(read.faults.join());
  return read.floor;
}

/** Lays a row's joints `shift` further along than `like`'s; what else that breaks is told too. */
function copyJoints(floor: ReturnType<typeof scattered>, row: number, like: number, shift: number): number {
  const [region] = floor.regions;
  const [own, other] = [region?.rows[row], region?.rows[like]];
  if (!own || !other) throw new Error('no such row');
  const first = other.pieces[0];
  if (!first) throw new Error('an empty row');
  const joint = first.u + first.length + shift;
  const from = own.pieces[0]?.u ?? 0;
  const to = Math.max(...own.pieces.map((piece) => piece.u + piece.length));
  const ends = [from];
  for (let u = joint; u < to; u += board.length) ends.push(u);
  ends.push(to);
  own.pieces = ends.slice(1).map((end, i) => {
    const u = ends[i] ?? 0;
    const part = end - u === board.length ? 'whole' : i === 0 ? 'start' : 'end';
    return { u, length: end - u, plank: 1000 + i, part, edge: 'full' as const };
  });
  return joint;
}

describe('a scattered floor', () => {
  it('is legal and looks scattered', () => {
    const floor = scattered();
    expect(checkFloor(floor)).toEqual([]);
    expect(floor.broken).toEqual([]);
  });

  it('with joints in line two rows on is caught', () => {
    const floor = scattered();
    const at = copyJoints(floor, 4, 2, inches(0.5));
    expect(checkFloor(floor)).toContain(`room, row 4: pattern is broken at ${at} and not told`);
  });

  it('with joints just not in line is not', () => {
    const floor = scattered();
    const at = copyJoints(floor, 9, 7, inches(1));
    expect(checkFloor(floor)).not.toContain(`room, row 9: pattern is broken at ${at} and not told`);
  });

  it('with three rows that step alike is caught', () => {
    const floor = scattered();
    copyJoints(floor, 3, 2, inches(9));
    const at = copyJoints(floor, 4, 3, inches(9.5));
    expect(checkFloor(floor)).toContain(`room, row 4: pattern is broken at ${at} and not told`);
  });

  it('told of a break it does not have is caught', () => {
    const floor = scattered();
    floor.broken.push({ rule: 'pattern', region: 'room', row: 2, at: inches(40) });
    expect(checkFloor(floor)).toContain(`room, row 2: pattern is told broken at ${inches(40)} and is not`);
  });
});
