/** Rules a plan does not keep, in words: never silently. */

import { type Saying, sayCut } from '../../../src/input/format.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { Block } from '../../../src/reply/reply.ts';
import {
  BROKEN_TITLE,
  NOT_SCATTERED_TITLE,
  notScattered,
  OFF_PATTERN_TITLE,
  offPattern,
  sayBroken,
} from '../../../src/text/floor-text.ts';
import { ticks } from '../../../src/units/length.ts';

/** Broken rules one step a place; rows off the pattern one step a room. Nothing when all are kept. */
export function brokenBlocks(plan: Plan, saying: Saying): readonly Block[] {
  const asked = { stagger: plan.rules.stagger, minEnd: plan.rules.minEnd, minRip: plan.rules.minRip };
  const hard: string[] = [];
  const off = new Map<string, Set<number>>();
  for (const { rule, region, row, at } of plan.broken) {
    if (rule === 'pattern') off.set(region, (off.get(region) ?? new Set()).add(row + 1));
    else hard.push(sayBroken(rule, region, row + 1, sayCut(ticks(at), saying), sayCut(asked[rule], saying)));
  }
  const scattered = plan.rules.pattern.name === 'scattered';
  const moved = [...off].map(([room, rows]) => (scattered ? notScattered : offPattern)(room, [...rows]));
  return [
    ...(hard.length > 0 ? [{ kind: 'steps' as const, title: BROKEN_TITLE, steps: [...new Set(hard)] }] : []),
    ...(moved.length > 0
      ? [{ kind: 'steps' as const, title: scattered ? NOT_SCATTERED_TITLE : OFF_PATTERN_TITLE, steps: moved }]
      : []),
  ];
}
