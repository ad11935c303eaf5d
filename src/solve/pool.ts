/** The worker threads: started with the first task, few, replaced when one dies or overruns. */

import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { MessageChannel, type Worker } from 'node:worker_threads';
import { Piscina } from 'piscina';
import type { Task } from './job.ts';

/** A task that has not ended by then is given up: its worker is ended and replaced. What was found until then stands. */
const LONGEST = 20_000;
/** Tasks that may wait; beyond, an ask is refused at once. */
const QUEUE = 200;

/** Workers load the built JavaScript, also when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../dist/src/solve/worker.js' : './worker.js', import.meta.url),
);

let pool: Piscina | undefined;
let replaced = 0;

function workers(): Piscina {
  pool ??= new Piscina({
    filename: WORKER,
    minThreads: 0,
    maxThreads: Math.max(1, Math.min(4, availableParallelism() - 1)),
    idleTimeout: 30_000,
    maxQueue: QUEUE,
    // A program gone wrong must not take the bot's memory with it.
    resourceLimits: { maxOldGenerationSizeMb: 512 },
  });
  return pool;
}

/** Answers to a task as its worker finds them. Ends without an error when the worker dies or overruns: what came, stands. */
export async function* answersFrom<T>(task: Task): AsyncGenerator<T> {
  const { port1, port2 } = new MessageChannel();
  const found: T[] = [];
  let wake: () => void = () => {};
  port1.on('message', (answer: T) => {
    found.push(answer);
    wake();
  });
  const signal = AbortSignal.timeout(LONGEST);
  let ended = false;
  const end = (last?: T): void => {
    if (last !== undefined) found.push(last);
    ended = true;
    wake();
  };
  workers()
    .run({ task, port: port2 }, { name: 'solve', transferList: [port2], signal })
    .then(end, () => {
      replaced += 1;
      end();
    });
  try {
    for (;;) {
      const next = found.shift();
      if (next !== undefined) yield next;
      else if (ended) return;
      else {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
    }
  } finally {
    port1.close();
  }
}

/** What a task comes to. Throws an Error when its worker dies or overruns. */
export async function lastAnswerFrom<T>(task: Task): Promise<T> {
  let last: T | undefined;
  for await (const answer of answersFrom<T>(task)) last = answer;
  if (last === undefined) throw new Error(`a worker ended without an answer to a task of kind ${task.kind}`);
  return last;
}

/** The threads that run now. */
export function workerThreads(): readonly Worker[] {
  return pool?.threads ?? [];
}

/** Tasks worked on and waiting, and workers ended for their time or memory so far. */
export function taskFigures(): { readonly working: number; readonly waiting: number; readonly replaced: number } {
  const idle = pool?.idleThreads ?? 0;
  return { working: workerThreads().length - idle, waiting: pool?.queueSize ?? 0, replaced };
}

/** Ends all workers; a later task starts them again. */
export async function closeWorkers(): Promise<void> {
  const closing = pool;
  pool = undefined;
  await closing?.destroy();
}
