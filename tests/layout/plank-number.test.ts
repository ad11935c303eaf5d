/** Ripped rows of rooms with arms shorter than a plank, by the checker that shares no code: what lies beside what, and can be cut so. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Pattern } from '../../src/layout/floor.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { laid, plank, region } from '../outside/laid.ts';

/** A room as wide as both, an arm off its far side; sides in half inches. */
function room(wide: number, deep: number, arm: number, armDeep: number): Outline {
  const [w, a] = [inches(wide / 2), inches(Math.min(arm, wide - 2) / 2)];
  const [d, all] = [inches(deep / 2), inches((deep + armDeep) / 2)];
  return [
    [0, 0],
    [w, 0],
    [w, d],
    [a, d],
    [a, all],
    [0, all],
  ];
}

it('are cut from planks that give them, with short arms at either side, a closet and rules of nothing', () => {
  let besideOthers = 0;
  fc.assert(
    fc.property(
      fc.record({
        wide: fc.integer({ min: 40, max: 260 }),
        deep: fc.integer({ min: 10, max: 50 }),
        arm: fc.integer({ min: 12, max: 120 }),
        armDeep: fc.integer({ min: 10, max: 50 }),
        closet: fc.integer({ min: 12, max: 80 }),
        board: fc.constantFrom([5, 30] as const, [7, 43] as const, [8, 26] as const),
        lock: fc.constantFrom('click' as const, 'none' as const),
        name: fc.constantFrom<Exclude<Pattern['name'], 'stair-step'>>('half', 'thirds', 'offcut-first', 'scattered'),
        angle: fc.constantFrom(0 as const, 180 as const),
        least: fc.integer({ min: 0, max: 4 }),
      }),
      ({ wide, deep, arm, armDeep, closet, board: [width, length], lock, name, angle, least }) => {
        const rooms = [
          region('room', room(wide, deep, arm, armDeep)),
          region('closet', room(closet, deep, closet / 2, 8)),
        ];
        const { plan, data } = laid(rooms, angle, plank(width, length, lock), {
          gap: inches(0),
          kerf: inches(least % 2),
          stagger: inches(least),
          minEnd: inches(least),
          minRip: inches(0),
          pattern: { name },
        });
        expect(checkFloor(data)).toEqual([]);
        expect(plan.planks).toBeGreaterThanOrEqual(plan.bound.best);
        const pieces = plan.regions.flatMap(({ rows }) => rows.flatMap((row) => row.pieces));
        const far = pieces.filter(({ edge, part }) => edge === 'far' && part !== 'whole');
        if (
          far.some((one) =>
            pieces.some((other) => other.plank === one.plank && other.edge === 'near' && other.part !== one.part),
          )
        )
          besideOthers++;
      },
    ),
    {
      numRuns: 120,
      // An arm's ripped piece between two walls beside an end piece, in one plank with another end; an offcut used up to nothing.
      examples: [
        [
          {
            wide: 157,
            deep: 10,
            arm: 12,
            armDeep: 49,
            closet: 53,
            board: [8, 26],
            lock: 'click',
            name: 'half',
            angle: 180,
            least: 0,
          },
        ],
        [
          {
            wide: 258,
            deep: 10,
            arm: 14,
            armDeep: 10,
            closet: 12,
            board: [7, 43],
            lock: 'click',
            name: 'offcut-first',
            angle: 180,
            least: 0,
          },
        ],
      ],
    },
  );
  expect(besideOthers).toBeGreaterThan(0);
});
