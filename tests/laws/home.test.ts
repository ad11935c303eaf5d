/** Homes of several rooms: legal by the independent checkers, joined as their doorways tell, and the same wherever they are told from. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomHome } from '../bench/random-home.ts';
import { firstFloorTo } from '../chat/asked.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { checkHome } from '../outside/home-checker.ts';

const homes = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  rooms: fc.integer({ min: 3, max: 7 }),
  through: fc.constantFrom(0, 0.5, 1),
  plank: fc.constantFrom('6 x 48 in, 10 per carton', '7 x 36 in, 12 per carton', '9 x 60 in, 6 per carton, no lock'),
  direction: fc.constantFrom('long', 'short', 'wall 2 of hall'),
  pattern: fc.constantFrom('stair-step', 'thirds', 'offcut-first', 'scattered'),
  gap: fc.constantFrom('0', '1/4 in', '3/8 in'),
  holes: fc.constantFrom(
    'none',
    'post 4 x 4 in, 30 in from left, 40 in from bottom of room a',
    'island 30 x 40 in, centred of room b; vent 4 x 10 in, 8 in from right, 12 in from top of room a',
    'hearth 40 x 15 in at wall 1, 20 in from left of room b',
  ),
});

function requested({
  seed,
  rooms,
  through,
  plank,
  direction,
  pattern,
  gap,
  holes,
}: typeof homes extends fc.Arbitrary<infer T> ? T : never): string {
  const home = randomHome(seed, rooms, rooms * 110, through);
  return `planks room: ${home.room}, plank: ${plank}, doorways: ${home.doorways}, holes: ${holes}, direction: ${direction}, pattern: ${pattern}, gap: ${gap}, kerf: 1/8 in`;
}

describe('a home of several rooms', () => {
  it('is legal, its floor runs through the doorways told so, and stops at the others', async () => {
    await fc.assert(
      fc.asyncProperty(homes, async (given) => {
        const data: unknown = JSON.parse(JSON.stringify(await firstFloorTo(requested(given))));
        expect(checkFloor(data)).toEqual([]);
        expect(checkHome(data)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it('is one region where the floor runs on everywhere, and as many as rooms where it nowhere does', async () => {
    await fc.assert(
      fc.asyncProperty(homes, async (given) => {
        const joined = await firstFloorTo(requested({ ...given, through: 1 }));
        expect(joined.regions).toHaveLength(1);
        expect(joined.regions[0]?.rooms).toHaveLength(given.rooms);
        const apart = await firstFloorTo(requested({ ...given, through: 0 }));
        expect(apart.regions).toHaveLength(given.rooms);
        expect(apart.regions.reduce((sum, { openings }) => sum + openings.length, 0)).toBe(
          2 * (apart.doorways?.length ?? 0),
        );
      }),
      { numRuns: 6 },
    );
  });
});
