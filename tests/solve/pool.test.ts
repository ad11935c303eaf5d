/** Tasks and their threads: what takes too long or too much is given up, its worker replaced, and the next task is well. */

import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { feet, inches } from '../../src/core/length.ts';
import { Unworked } from '../../src/queue/unworked.ts';
import { onBehalfOf } from '../../src/queue/whose.ts';
import type { Task } from '../../src/solve/job.ts';
import { answersFrom, boundTasks, closeWorkers, lastAnswerFrom, taskFigures } from '../../src/solve/pool.ts';
import { benchRules, plank, region } from '../outside/laid.ts';

const USUAL = { workers: 0, queue: 200, queuePerPerson: 10, askSeconds: 20, askMegabytes: 512 };
afterEach(async () => {
  await closeWorkers();
  boundTasks(USUAL);
});
afterAll(closeWorkers);
