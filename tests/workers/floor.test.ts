/** Large floors are laid in a worker, to the same plan as here. */

import { afterAll, describe, expect, it } from 'vitest';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { feet, ticks } from '../../src/units/length.ts';
import { closeWorkers, lastAnswerFrom } from '../../src/workers/pool.ts';
import { layAway } from '../../src/workers/solve.ts';
import { benchRules, plank, region } from '../outside/laid.ts';

afterAll(closeWorkers);

const side = feet(70);
const hall = region('hall', [
  [0, 0],
  [side, 0],
  [side, side],
  [0, side],
]);
const board = plank(6, 48);
const rules = benchRules(board, 'stair-step');

describe('a large floor', () => {
  it('comes back from the worker as it would be laid here', async () => {
    const areas = [{ region: hall, angle: 0 as const }];
    expect(await layAway(areas, board, rules, 2500)).toEqual(layFloor(areas, board, rules));
  });

  it('asked for again is the plan of before, until many others were laid', async () => {
    const areas = [{ region: hall, angle: 0 as const }];
    const first = await layAway(areas, board, rules, 2500);
    expect(await layAway(structuredClone(areas), board, rules, 2500)).toBe(first);
    const other = await layAway(areas, board, { ...rules, kerf: ticks(rules.kerf + 1) }, 2500);
    expect(other).not.toBe(first);
    for (let more = 0; more < 14; more++) await layAway(areas, board, { ...rules, kerf: ticks(more) }, 2500);
    const again = await layAway(areas, board, rules, 2500);
    expect(again).not.toBe(first);
    expect(again).toEqual(first);
  });

  it('that a worker cannot lay is an error, never silence', async () => {
    await expect(
      lastAnswerFrom({
        kind: 'floor',
        areas: [],
        plank: { ...board, width: Number.NaN as never },
        rules: undefined as never,
      }),
    ).rejects.toThrow(/NaN/);
  });
});
