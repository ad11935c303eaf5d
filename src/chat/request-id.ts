/** The id of what is being answered: made where an event comes in, and the same wherever its answer is worked out, kept or goes wrong. */

import { AsyncLocalStorage } from 'node:async_hooks';
import { randomBytes } from 'node:crypto';

const current = new AsyncLocalStorage<string>();

/** Does work as a request of its own; within one, as a part of it. */
export function asRequest<T>(work: () => T): T {
  return current.getStore() === undefined ? current.run(newReference(), work) : work();
}

/** The id of the request under way; undefined outside of any. */
export function requestId(): string | undefined {
  return current.getStore();
}

/** What a fault is told under to whoever asked and whoever runs the bot: the id of the request under way. */
export function faultReference(): string {
  return current.getStore() ?? newReference();
}

/** Steps through answers as one request, whoever takes them and when. */
export async function* withRequestId<T>(answers: AsyncGenerator<T>): AsyncGenerator<T> {
  const id = current.getStore() ?? newReference();
  try {
    for (;;) {
      const next = await current.run(id, () => answers.next());
      if (next.done === true) return;
      yield next.value;
    }
  } finally {
    await current.run(id, () => answers.return(undefined));
  }
}

function newReference(): string {
  return randomBytes(4).toString('hex');
}
