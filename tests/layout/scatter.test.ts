/** Scattered joints: what counts as in line, as a stair and as a crowd, and that a search repeats itself. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layFloor } from '../../src/layout/lay-floor.ts';
import type { Run } from '../../src/layout/runs.ts';
import { ScatterStock } from '../../src/layout/scatter-state.ts';
import { crowdedJoints, inLine, scatterBreaches } from '../../src/layout/starts.ts';
import { inches } from '../../src/units/length.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { benchRules, plank, region } from '../outside/laid.ts';
import { fewestLockingPlanks } from '../outside/matching-oracle.ts';

const PLANK = inches(48);
const column = (rows: number): Run[] =>
  Array.from({ length: rows }, (_, row) => ({
    row,
    from: 0,
    length: inches(140),
    touching: row === 0 ? [] : [row - 1],
  }));
const breaches = (...starts: number[]): string[] =>
  scatterBreaches(column(starts.length), starts.map(inches), PLANK).map(({ row, at, kind }) => `${row} ${kind} ${at}`);

describe('what does not look scattered', () => {
  it('is a joint less than an inch from one two rows before', () => {
    expect(breaches(20, 40, 20.9)).toEqual([20.9, 68.9, 116.9].map((u) => `2 in line ${inches(u)}`));
    expect(breaches(20, 40, 21)).toEqual([]);
  });

  it('is a step made twice', () => {
    expect(breaches(10, 18, 26.5)[0]).toBe(`2 stair ${inches(26.5)}`);
    expect(breaches(40, 30, 20)[0]).toBe(`2 stair ${inches(20)}`);
    expect(breaches(10, 18, 29)).toEqual([]);
  });

  it('is not a step across a wall', () => {
    const [first, , last] = column(3);
    const beside: Run = { row: 1, from: inches(60), length: inches(80), touching: [0] };
    const runs = [first, beside, last].flatMap((run) => (run ? [run] : []));
    // The joint at 20 lies before the middle run begins; those at 68 and 116 beside it.
    expect(scatterBreaches(runs, [20, 10, 20].map(inches), PLANK).map(({ at }) => at)).toEqual([68, 116].map(inches));
  });

  it('shrinks with short planks', () => {
    expect(inLine(inches(48))).toBe(inches(1));
    expect(inLine(inches(12))).toBe(inches(0.5));
  });

  it('crowds where three alternate rows joint within one stagger', () => {
    const starts = [10, 30, 12, 32, 14].map(inches);
    expect(crowdedJoints(column(5), starts, PLANK, inches(6))).toEqual([14, 62, 110].map(inches));
    expect(crowdedJoints(column(5), [10, 30, 13, 33, 16].map(inches), PLANK, inches(6))).toEqual([]);
  });
});

describe('the planks of a search', () => {
  it('are the fewest, however pieces came and went', () => {
    const length = fc.integer({ min: 1, max: 11 });
    fc.assert(
      fc.property(
        fc.array(length, { maxLength: 5 }),
        fc.array(length, { maxLength: 5 }),
        length,
        (starts, ends, odd) => {
          const stock = new ScatterStock(12, 12 - 1);
          for (const start of starts) stock.change('start', start, 1);
          stock.change('start', odd, 1);
          for (const end of ends) stock.change('end', end, 1);
          stock.change('start', odd, -1);
          expect(stock.planks()).toBe(fewestLockingPlanks({ starts, ends, shorts: [] }, 12, 1));
        },
      ),
    );
  });
});

describe('a scattered floor', () => {
  it('comes out the same each time, and keeps its looks and its rules in plain rooms', () => {
    for (const { name, outline } of randomRooms(7, 6)) {
      const board = plank(6, 48);
      const lay = () => layFloor([{ region: region(name, outline), angle: 0 }], board, benchRules(board, 'scattered'));
      expect(lay()).toEqual(lay());
      expect(lay().broken).toEqual([]);
    }
  });

  it('keeps its looks beside slanted walls, and in the plain room told with them', () => {
    const [x, y, cut] = [inches(216), inches(168), inches(24)];
    const outline = [
      [0, 0],
      [x, 0],
      [x, y - cut],
      [x - cut, y],
      [0, y],
    ] as const;
    const plain = [
      [0, 0],
      [inches(144), 0],
      [inches(144), inches(156)],
      [0, inches(156)],
    ] as const;
    const board = plank(6, 48);
    const rules = benchRules(board, 'scattered');
    const areas = [region('living', outline), region('bedroom', plain)].map((part) => ({ region: part, angle: 0 }));
    const plan = layFloor(areas, board, rules);
    expect(plan.broken).toEqual([]);
    // Offcuts laid first line joints up: their count is not to be bought by fewer planks than scattered ones need.
    const offcuts = layFloor(areas, board, benchRules(board, 'offcut-first'));
    expect(plan.planks).toBeLessThanOrEqual(offcuts.planks + 2);
  });
});
