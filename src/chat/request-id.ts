/** The id of the current request, the same wherever its answer is computed, stored or fails. */

import { AsyncLocalStorage } from 'node:async_hooks';
import { randomBytes } from 'node:crypto';

const current = new AsyncLocalStorage<string>();

/** Runs work as a request of its own, or as part of the current one. */
export function asRequest<T>(work: () => T): T {
  return current.getStore() === undefined ? current.run(newReference(), work) : work();
}

/** Undefined outside of requests. */
export function requestId(): string | undefined {
  return current.getStore();
}

/** The reference of a fault for the user and the operator: the id of the current request. */
export function faultReference(): string {
  return current.getStore() ?? newReference();
}

/** Steps through answers under one request id, whoever consumes them and when. */
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
