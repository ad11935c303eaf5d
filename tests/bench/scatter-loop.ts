/** How long one turn of the event loop takes while first answers are awaited, small floors here and large ones in a worker. */

import { monitorEventLoopDelay } from 'node:perf_hooks';
import { setImmediate } from 'node:timers/promises';
import type { CoveredArea } from '../../src/layout/covered-area.ts';
import type { Plan, Plank, Rules } from '../../src/layout/floor.ts';
import { layAway } from '../../src/workers/solve.ts';
import { type Metric, metric } from './metric.ts';

/** Floors as the planks bench has laid them. */
interface Laid {
  readonly areas: readonly CoveredArea[];
  readonly board: Plank;
  readonly first: Plan;
}

export async function loopFigures(found: readonly Laid[], rules: Rules): Promise<readonly Metric[]> {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  for (const { areas, board, first } of found) {
    await layAway(areas, board, rules, first.bound.area);
    await setImmediate();
  }
  delay.disable();
  return [
    metric('planks', 'event loop held while first answers come, ms, p99', delay.percentile(99) / 1e6),
    metric('planks', 'event loop held while first answers come, ms, most', delay.max / 1e6, { below: 50 }),
  ];
}
