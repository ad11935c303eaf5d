/** On whose behalf something is being worked out, wherever in the house that is. */

import { AsyncLocalStorage } from 'node:async_hooks';

const askers = new AsyncLocalStorage<string>();

/** Does work on somebody's behalf; `who` is any key that is the same for the same person. */
export function onBehalfOf<T>(who: string, work: () => T): T {
  return askers.run(who, work);
}

/** Whoever is asking; empty where nobody is. */
export function whoAsks(): string {
  return askers.getStore() ?? '';
}

/** A stream whose every step is worked on somebody's behalf. */
export async function* eachOnBehalfOf<T>(who: string, stream: AsyncIterable<T>): AsyncGenerator<T> {
  const steps = stream[Symbol.asyncIterator]();
  try {
    for (;;) {
      const step = await onBehalfOf(who, () => steps.next());
      if (step.done === true) return;
      yield step.value;
    }
  } finally {
    await steps.return?.();
  }
}
