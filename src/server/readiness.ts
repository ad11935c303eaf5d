/** Whether the bot can take asks just now, and what is amiss when it cannot. */

import type { OpenStore } from '../storage/store.ts';

interface Looked {
  readonly store: Pick<OpenStore, 'ping'>;
  /** The chats that events do not reach. */
  connected(): readonly string[];
  ending(): boolean;
}

/** Asks the store once at a time, however many want to know. */
export function readiness({ store, connected, ending }: Looked): () => Promise<readonly string[]> {
  let looking: Promise<readonly string[]> | undefined;
  return async () => {
    if (ending()) return ['stopping'];
    looking ??= store
      .ping()
      .then(
        () => [],
        () => ['store'],
      )
      .finally(() => {
        looking = undefined;
      });
    return [...(await looking), ...connected()];
  };
}
