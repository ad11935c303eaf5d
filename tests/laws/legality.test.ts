/** Every laid floor is legal by the checker that shares no code with the layer, and never below its bound. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pattern } from '../../src/layout/floor.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { benchRules, laid, plank, region } from '../outside/laid.ts';

const BOARDS = [
  [6, 48],
  [5, 36],
  [8, 60],
  [7, 24],
  [2, 10],
] as const;

const floors = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  rooms: fc.integer({ min: 1, max: 4 }),
  board: fc.constantFrom(...BOARDS),
  lock: fc.constantFrom('click' as const, 'none' as const),
  pattern: fc.constantFrom<Pattern['name']>('stair-step', 'half', 'thirds', 'offcut-first', 'scattered'),
  angle: fc.constantFrom(0 as const, 90 as const, 180 as const, 270 as const),
});

describe('any floor', () => {
  it('is legal by the independent checker and not below its bound', () => {
    fc.assert(
      fc.property(floors, ({ seed, rooms, board: [width, length], lock, pattern, angle }) => {
        const board = plank(width, length, lock);
        const regions = randomRooms(seed, rooms).map((room) => region(room.name, room.outline));
        const { plan, data } = laid(regions, angle, board, benchRules(board, pattern));
        expect(checkFloor(data)).toEqual([]);
        expect(plan.planks).toBeGreaterThanOrEqual(plan.bound.best);
      }),
      { numRuns: 50 },
    );
  });
});
