/** Threads that fail while they have nothing to do: a file of theirs is gone, or there is no memory to start one. */

interface Threads {
  on(event: 'error', told: (cause: Error) => void): unknown;
  destroy(): Promise<unknown>;
}

/**
 * Ends a pool of threads when one fails without a task, and calls `gone` first. Unheard, such a failure would end the
 * process; and what waits for the thread would wait in vain, whereas a pool that ends rejects it at once.
 */
export function endWhenBroken(threads: Threads, gone: () => void): void {
  threads.on('error', () => {
    gone();
    void threads.destroy();
  });
}
