/** Floors with slanted walls or rows are whole, legal and cut from their planks, by the checker that shares no code with what lays them. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pattern } from '../../src/layout/floor.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { slantedRooms } from '../bench/slanted-rooms.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { benchRules, laid, plank, region } from '../outside/laid.ts';

const BOARDS = [
  [7, 48],
  [5, 36],
  [9, 60],
  [6, 24],
] as const;

/** A post of 5 by 4 in, turned a little, 3 ft from either wall of the corner at (0, 0): in every room drawn here. */
const POST = [
  [36, 36],
  [35, 40],
  [40, 41],
  [41, 37],
].map(([x = 0, y = 0]) => [x * 8128, y * 8128] as const);

const floors = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  slanted: fc.boolean(),
  rooms: fc.integer({ min: 1, max: 2 }),
  board: fc.constantFrom(...BOARDS),
  lock: fc.constantFrom('click' as const, 'none' as const),
  pattern: fc.constantFrom<Pattern['name']>('stair-step', 'half', 'thirds', 'offcut-first', 'scattered'),
  angle: fc.constantFrom(0, 45, 90, 135, 180, 225, 270, 30, 17, 301),
  kerf: fc.boolean(),
  post: fc.boolean(),
});

describe('any floor at a slant', () => {
  it('is whole and legal, and never below the bound by area', () => {
    fc.assert(
      fc.property(floors, ({ seed, slanted, rooms, board: [width, length], lock, pattern, angle, kerf, post }) => {
        const board = plank(width, length, lock);
        const drawn = slanted || angle % 90 === 0 ? slantedRooms(seed, rooms) : randomRooms(seed, rooms);
        const rules = benchRules(board, pattern);
        const { plan, data } = laid(
          drawn.map((room) => region(room.name, room.outline, post ? [POST] : [])),
          angle,
          board,
          kerf ? rules : { ...rules, kerf: plank(0, 0).width },
        );
        expect(checkFloor(data)).toEqual([]);
        expect(plan.planks).toBeGreaterThanOrEqual(plan.bound.best);
      }),
      { numRuns: 25 },
    );
  });
});
