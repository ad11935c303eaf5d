/** On whose behalf something is being worked out, wherever in the house that is. */

import { AsyncLocalStorage } from 'node:async_hooks';

interface Asking {
  readonly who: string;
  /** Told of milliseconds that some work of theirs waited for its turn. */
  readonly waited?: (milliseconds: number) => void;
}

const askers = new AsyncLocalStorage<Asking>();

/** Does work on somebody's behalf; `who` is any key that is the same for the same person. */
export function onBehalfOf<T>(who: string, work: () => T): T {
  return askers.run({ who }, work);
}

/** Whoever is asking; empty where nobody is. */
export function whoAsks(): string {
  return askers.getStore()?.who ?? '';
}

/** Tells whoever counts it that work of the one who asks waited. */
export function tellWait(milliseconds: number): void {
  askers.getStore()?.waited?.(milliseconds);
}

/** A stream whose every step is worked on somebody's behalf; `waited` is told how long work within it waited for its turn. */
export async function* eachOnBehalfOf<T>(
  who: string,
  stream: AsyncIterable<T>,
  waited?: Asking['waited'],
): AsyncGenerator<T> {
  const asking = { who, ...(waited ? { waited } : {}) };
  const steps = stream[Symbol.asyncIterator]();
  try {
    for (;;) {
      const step = await askers.run(asking, () => steps.next());
      if (step.done === true) return;
      yield step.value;
    }
  } finally {
    await steps.return?.();
  }
}
