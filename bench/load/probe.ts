/** Loaded into a bot's process before the bot: tells its memory, and ends it when nobody watches it any more. */

import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { isMainThread } from 'node:worker_threads';

/** What the bot's process uses, bytes: the heap after everything unused is collected, and all that it holds of the machine. */
export interface Memory {
  readonly heap: number;
  readonly held: number;
}

// Worker threads load what their process was told to load.
if (isMainThread && process.send) {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  process.on('message', (asked) => {
    if (asked !== 'memory') return;
    collect();
    collect();
    const { heapUsed, rss } = process.memoryUsage();
    process.send?.({ heap: heapUsed, held: rss } satisfies Memory);
  });
  process.once('disconnect', () => process.exit(1));
  // The bot ends when it has done its work, whoever listens.
  process.channel?.unref();
}
