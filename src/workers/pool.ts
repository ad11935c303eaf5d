/** The pool of worker threads: started on demand, replaced when one dies or overruns, with a queue that is fair per person. */

import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { MessageChannel, type Worker } from 'node:worker_threads';
import type { CoveredArea } from '../layout/covered-area.ts';
import type { Plan, Plank, Rules } from '../layout/floor.ts';
import type { HerringRules } from '../layout/herringbone.ts';
import type { ZigzagArea } from '../layout/herringbone-lay.ts';
import type { Progress, RestStock } from '../layout/resume-floor.ts';
import type { StickTask } from '../trim/sticks.ts';
import { Unworked, WorkQueue, whoAsks } from './queue.ts';
import { ThreadPool } from './thread-pool.ts';

// Tasks for worker threads, as plain data.

export type Task =
  | { readonly kind: 'sticks'; readonly task: StickTask }
  | {
      readonly kind: 'floor' | 'floor-search';
      readonly areas: readonly CoveredArea[];
      readonly plank: Plank;
      readonly rules: Rules;
    }
  | { readonly kind: 'rest'; readonly plan: Plan; readonly progress: readonly Progress[]; readonly stock: RestStock }
  | {
      readonly kind: 'herringbone';
      readonly areas: readonly ZigzagArea[];
      readonly plank: Plank;
      readonly rules: HerringRules;
    };

interface TaskBounds {
  /** Search threads; 0 means the machine's cores minus the one that answers, four at most. */
  readonly workers: number;
  /** Tasks that may wait, in all and per person. */
  readonly queue: number;
  readonly queuePerPerson: number;
  /** Seconds and megabytes per task; what was found by then stands. */
  readonly askSeconds: number;
  readonly askMegabytes: number;
}

/** A thread that searches never take, so that a first answer doesn't wait for someone else's search. */
const FOR_FIRST = 1;

/** Seconds for a first answer, before which nothing is shown. */
const FIRST_SECONDS = 10;

/** Seconds that better answers wait for their turn; after that the first one stands. */
const WAIT_SECONDS = 60;

/** Workers load the built JavaScript even when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../dist/src/workers/solve-worker.js' : './solve-worker.js',
    import.meta.url,
  ),
);

let bounds: TaskBounds = { workers: 0, queue: 200, queuePerPerson: 10, askSeconds: 20, askMegabytes: 512 };
let queue = queueWithin(bounds);
let replaced = 0;

const threads = new ThreadPool<{ readonly task: Task; readonly port: MessageChannel['port2'] }, unknown>(() => ({
  filename: WORKER,
  minThreads: 0,
  maxThreads: threadsFor(bounds.workers),
  idleTimeout: 30_000,
  // A runaway program must not take the bot's memory with it.
  resourceLimits: { maxOldGenerationSizeMb: bounds.askMegabytes },
}));

/** Sets limits for future tasks; those not given stay. Call it at startup: threads already running keep theirs. */
export function boundTasks(given: Partial<TaskBounds>): void {
  bounds = { ...bounds, ...given };
  queue = queueWithin(bounds);
}

function queueWithin({ queue: inAll, queuePerPerson: ofOne, workers }: TaskBounds): WorkQueue {
  return new WorkQueue({ atOnce: threadsFor(workers), forFirst: FOR_FIRST, inAll, ofOne });
}

function threadsFor(workers: number): number {
  return (workers > 0 ? workers : Math.max(1, Math.min(4, availableParallelism() - 1))) + FOR_FIRST;
}

/** Whether a task improves an answer that has already been given. */
function isBetter({ kind }: Task): boolean {
  return kind === 'sticks' || kind === 'floor-search';
}

/**
 * Answers to a task as its worker finds them. A task that improves an answer ends without an error when its worker dies
 * or overruns; what arrived stands. Throws Unworked when too many are waiting or a first answer takes too long, and an
 * Error when the worker of a first answer dies.
 */
export async function* answersFrom<T>(task: Task): AsyncGenerator<T> {
  const { port1, port2 } = new MessageChannel();
  const found: T[] = [];
  let wake: () => void = () => {};
  port1.on('message', (answer: T) => {
    found.push(answer);
    wake();
  });
  let ended: { readonly cause?: unknown } | undefined;
  const end = (how: { readonly cause?: unknown }): void => {
    ended = how;
    wake();
  };
  const left = new AbortController();
  worked<T>(task, port2, left.signal).then(
    (last) => {
      if (last !== undefined) found.push(last);
      end({});
    },
    (cause: unknown) => end({ cause }),
  );
  try {
    for (;;) {
      const next = found.shift();
      if (next !== undefined) yield next;
      else if (!ended) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      } else if (ended.cause === undefined) return;
      else throw ended.cause;
    }
  } finally {
    left.abort();
    port1.close();
  }
}

/** The task's last answer, once its turn came; undefined when what arrived has to do. */
async function worked<T>(task: Task, port: MessageChannel['port2'], left: AbortSignal): Promise<T | undefined> {
  const better = isBetter(task);
  const patience = better ? AbortSignal.any([left, AbortSignal.timeout(WAIT_SECONDS * 1000)]) : left;
  return queue.run({ who: whoAsks(), better, patience }, async () => {
    const { askSeconds } = bounds;
    const signal = AbortSignal.timeout(1000 * (better ? askSeconds : Math.min(askSeconds, FIRST_SECONDS)));
    try {
      return (await threads.run({ task, port }, { name: 'solve', transferList: [port], signal })) as T;
    } catch (cause) {
      replaced += 1;
      if (better) return undefined;
      throw isEnd(cause) ? new Unworked('large', { cause }) : cause;
    }
  });
}

function isEnd(cause: unknown): boolean {
  if (!(cause instanceof Error)) return false;
  return cause.name === 'AbortError' || ('code' in cause && cause.code === 'ERR_WORKER_OUT_OF_MEMORY');
}

/** The task's last answer. Throws like `answersFrom`, and an Error when there is no answer at all. */
export async function lastAnswerFrom<T>(task: Task): Promise<T> {
  let last: T | undefined;
  for await (const answer of answersFrom<T>(task)) last = answer;
  if (last === undefined) throw new Error(`a worker ended without an answer to a task of kind ${task.kind}`);
  return last;
}

export function workerThreads(): readonly Worker[] {
  return threads.threads;
}

/** Tasks running and waiting, and how many workers were ended or failed so far. */
export function taskFigures(): { readonly working: number; readonly waiting: number; readonly replaced: number } {
  return { working: queue.working, waiting: queue.waiting, replaced };
}

/** Ends all workers; a later task starts them again. */
export async function closeWorkers(): Promise<void> {
  queue.refuseAll();
  await threads.close();
}
