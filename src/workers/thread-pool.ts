/** Worker threads that start with the first task, and start again after they were closed or failed. */

import type { Worker } from 'node:worker_threads';
import type { Piscina } from 'piscina';

type ThreadTerms = NonNullable<ConstructorParameters<typeof Piscina>[0]>;
type RunTerms = NonNullable<Parameters<Piscina['run']>[1]>;

export class ThreadPool<Task, Result> {
  readonly #terms: () => ThreadTerms;
  #opening: Promise<Piscina<Task, Result>> | undefined;
  #threads: () => readonly Worker[] = () => [];

  /** `terms` is called whenever threads start, so that limits changed since then count. */
  constructor(terms: () => ThreadTerms) {
    this.#terms = terms;
  }

  get threads(): readonly Worker[] {
    return this.#threads();
  }

  /** The result of a task. Rejects with its error, with an AbortError, or with an Error when its thread fails. */
  async run(task: Task, terms: RunTerms): Promise<Result> {
    const pool = await this.#opened();
    return pool.run(task, terms);
  }

  /** Ends all threads; a later task starts them again. */
  async close(): Promise<void> {
    const closing = this.#opening;
    this.#opening = undefined;
    await (await closing)?.destroy();
  }

  #opened(): Promise<Piscina<Task, Result>> {
    if (this.#opening) return this.#opening;
    const own = this.#open(() => {
      if (this.#opening === own) this.#opening = undefined;
    });
    this.#opening = own;
    return own;
  }

  async #open(gone: () => void): Promise<Piscina<Task, Result>> {
    // Imported here because most requests in a terminal need no thread.
    const { Piscina } = await import('piscina');
    const pool = new Piscina<Task, Result>(this.#terms());
    endWhenBroken(pool, gone);
    this.#threads = () => pool.threads;
    return pool;
  }
}

interface Threads {
  on(event: 'error', given: (cause: Error) => void): unknown;
  destroy(): Promise<unknown>;
}

/**
 * Ends a pool when a thread fails without a task, as when its file is gone or memory is short, after calling `gone`.
 * Unhandled, such a failure would end the process, and tasks waiting for the thread would wait forever; a pool that
 * ends rejects them at once.
 */
export function endWhenBroken(threads: Threads, gone: () => void): void {
  threads.on('error', () => {
    gone();
    void threads.destroy();
  });
}
