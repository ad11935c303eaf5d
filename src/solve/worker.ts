/** What runs in a worker thread: one task at a time, each better answer posted as it is found. */

import type { MessagePort } from 'node:worker_threads';
import type { StickPlan, StickTask } from '../core/trim/stick-task.ts';
import { highs } from './highs.ts';
import { searchSticks } from './stick-search.ts';

/** A task and where to post its answers. */
export interface Job {
  readonly sticks: StickTask;
  readonly port: MessagePort;
}

/** Solves a task: answers are posted as they are found, and the last one is also what the task comes to. */
export async function solve({ sticks, port }: Job): Promise<StickPlan | undefined> {
  const solver = await highs();
  let last: StickPlan | undefined;
  for (const plan of searchSticks(sticks, solver)) {
    port.postMessage(plan);
    last = plan;
  }
  return last;
}
