/** Looks of a scattered floor, counted: joints in line, stairs, clusters. */

import { floorResult } from '../../commands/floor/lay.ts';
import { type Plan, purchaseOf } from '../../src/layout/floor.ts';
import { runsIn, runsOf } from '../../src/layout/runs.ts';
import { crowdedJoints } from '../../src/layout/starts.ts';
import { checkFloor } from '../outside/floor-checker.ts';

/** Joints that the checker finds in line or on a stair, when nothing is told of them. */
export function misplaced(plan: Plan): number {
  const silent = { ...plan, broken: plan.broken.filter(({ rule }) => rule !== 'pattern') };
  const data = floorResult(silent, purchaseOf(plan.planks, 300, 0, 10), undefined);
  return checkFloor(JSON.parse(JSON.stringify(data))).filter((fault) => fault.includes('pattern is broken')).length;
}

/** Joints in one place with two more in the alternate rows before (src/layout/starts.ts). */
export function crowded({ regions, plank, rules }: Plan): number {
  return regions.reduce((sum, { rows }) => {
    const slices = rows.map((row) => ({
      ...row,
      runs: runsIn(row).map((pieces) => ({
        from: pieces[0]?.u ?? 0,
        to: pieces.reduce((end, { u, length }) => Math.max(end, u + length), 0),
      })),
    }));
    const starts = rows.flatMap((row) => runsIn(row).map((pieces) => pieces[0]?.length ?? 0));
    return sum + crowdedJoints(runsOf(slices), starts, plank.length, rules.stagger).length;
  }, 0);
}
