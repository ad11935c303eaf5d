/** Floors laid for a test and handed over as the result data that outside checkers read. */

import { floorResult } from '../../commands/floor/lay.ts';
import { type Pattern, type Plan, type Plank, purchaseOf, type Region, type Rules } from '../../src/layout/floor.ts';
import type { Angle } from '../../src/layout/frame.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { stairStep } from '../../src/layout/runs.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';

export function region(name: string, outline: Outline, holes: readonly Outline[] = []): Region {
  return { name, outline, holes, openings: [] };
}

export function plank(width: number, length: number, lock: Plank['lock'] = 'click'): Plank {
  return { width: inches(width), length: inches(length), perCarton: 10, lock };
}

/** The rules of the bench: stagger 6 in, shortest end 8 in, narrowest strip 2 in, gap 3/8 in, kerf 1/8 in. */
export function benchRules(board: Plank, name: Pattern['name']): Rules {
  const stagger = inches(6);
  const pattern: Pattern = name === 'stair-step' ? stairStep(board, stagger, stagger) : { name };
  return { gap: inches(0.375), kerf: inches(0.125), stagger, minEnd: inches(8), minRip: inches(2), pattern };
}

export function laid(
  regions: readonly Region[],
  angle: Angle,
  board: Plank,
  rules: Rules,
): { plan: Plan; data: unknown } {
  const plan = layFloor(
    regions.map((part) => ({ region: part, angle })),
    board,
    rules,
  );
  return { plan, data: dataOf(plan) };
}

/** A plan as the result data that outside checkers read. */
export function dataOf(plan: Plan): unknown {
  const purchase = purchaseOf(plan.planks, 300, 0, plan.plank.perCarton);
  return JSON.parse(JSON.stringify(floorResult(plan, purchase, undefined)));
}
