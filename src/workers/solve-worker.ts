/** Worker thread entry: runs one task at a time and posts each better answer as it is found. */

import type { MessagePort } from 'node:worker_threads';
import { layHerringbone } from '../layout/herringbone-lay.ts';
import { layFloor } from '../layout/lay-floor.ts';
import { planRest } from '../layout/resume-floor.ts';
import { highs } from './floor-flow.ts';
import { searchFloor } from './floor-search.ts';
import type { Task } from './pool.ts';
import { searchSticks } from './stick-search.ts';

interface Job {
  readonly task: Task;
  readonly port: MessagePort;
}

/** Posts answers as they are found and returns the last one. */
export async function solve({ task, port }: Job): Promise<unknown> {
  if (task.kind === 'herringbone') return layHerringbone(task.areas, task.plank, task.rules);
  if (task.kind === 'rest') return planRest(task.plan, task.progress, task.stock);
  if (task.kind === 'floor') return layFloor(task.areas, task.plank, task.rules);
  const solver = await highs();
  let last: unknown;
  const plans =
    task.kind === 'sticks' ? searchSticks(task.task, solver) : searchFloor(task.areas, task.plank, task.rules, solver);
  for (const plan of plans) {
    port.postMessage(plan);
    last = plan;
  }
  port.close();
  return last;
}
