/** The better way for the rows, and what speaks for it. */

import { describe, expect, it } from 'vitest';
import { betterWay, quarterTurned } from '../../src/layout/direction.ts';
import type { Plan, Rules } from '../../src/layout/floor.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { feet, inches } from '../../src/units/length.ts';
import { benchRules, plank, region } from '../outside/laid.ts';

const board = plank(6, 48);

/** A rectangle laid both ways: along x, and along y. */
function both(width: number, depth: number, over: Partial<Rules> = {}): readonly [along: Plan, across: Plan] {
  const room = region('room', [
    [0, 0],
    [inches(width), 0],
    [inches(width), inches(depth)],
    [0, inches(depth)],
  ]);
  const areas = [{ region: room, angle: 0 }];
  const rules = { ...benchRules(board, 'scattered'), ...over };
  return [layFloor(areas, board, rules), layFloor(quarterTurned(areas), board, rules)];
}

const way = (plan: Plan, cartons = 10) => ({ plan, cartons });

describe('the better way', () => {
  it('is along the longer side where nothing else speaks, whichever way was laid', () => {
    const [along, across] = both(feet(20) / inches(1), feet(8) / inches(1));
    expect(betterWay(way(along), way(across)).turned).toBe(false);
    expect(betterWay(way(across), way(along)).turned).toBe(true);
    const kinds = betterWay(way(across), way(along)).reasons.map(({ kind }) => kind);
    expect(kinds).toContain('wall');
    expect(kinds).toContain('rows');
  });

  it('takes a carton less before the longer side, and tells how many planks fewer', () => {
    const [along, across] = both(feet(20) / inches(1), feet(8) / inches(1));
    const more = { ...along, planks: across.planks + 3 };
    expect(betterWay(way(more, 11), way(across, 10))).toEqual({
      turned: true,
      reasons: [{ kind: 'planks', fewer: 3 }],
    });
    expect(betterWay(way(more, 10), way(across, 10)).turned).toBe(false);
  });

  it('avoids a strip that is too narrow before all else', () => {
    // 7 in less the gaps leaves a row and a sliver one way, and planks cut short the other.
    const [along, across] = both(203.75, 6.75 + 1, { minRip: inches(4), minEnd: inches(2) });
    expect(along.broken.some(({ rule }) => rule === 'minRip')).toBe(true);
    expect(across.broken).toEqual([]);
    const choice = betterWay(way(along, 1), way(across, 20));
    expect(choice.turned).toBe(true);
    expect(choice.reasons[0]).toEqual({ kind: 'strip' });
  });
});
