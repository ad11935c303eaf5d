/** Rules a plan does not keep, in words: never silently. */

import type { Plan } from '../../../src/core/floor/floor.ts';
import { ticks } from '../../../src/core/length.ts';
import { type Saying, sayLength } from '../../../src/measure/say-length.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { BROKEN_TITLE, sayBroken } from '../../../src/words/floor.ts';

/** One step a place; none when every rule is kept. */
export function brokenBlock(plan: Plan, saying: Saying): readonly Block[] {
  if (plan.broken.length === 0) return [];
  const asked = {
    stagger: sayLength(plan.rules.stagger, saying),
    minEnd: sayLength(plan.rules.minEnd, saying),
    minRip: sayLength(plan.rules.minRip, saying),
    pattern: '',
  };
  const steps = plan.broken.map(({ rule, region, row, at }) =>
    sayBroken(rule, region, row + 1, sayLength(ticks(at), saying), asked[rule]),
  );
  return [{ kind: 'steps', title: BROKEN_TITLE, steps: [...new Set(steps)] }];
}
