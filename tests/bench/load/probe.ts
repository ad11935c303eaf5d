/** Loaded into a bot's process and its worker threads before the bot: tells its memory, and does to its threads what faults do. */

import { existsSync } from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import threads, { isMainThread, MessagePort } from 'node:worker_threads';

/** What the bot's process uses, bytes: the heap after everything unused is collected, and all that it holds of the machine. */
export interface Memory {
  readonly heap: number;
  readonly held: number;
}

/** What the probe is told: to give the memory, or to end every worker thread as a crash of it does. */
export type Deed = 'memory' | 'kill workers';

/** Variable that names a file: while it is there, every worker thread that has something to tell hangs. */
export const HANGING = 'PROBE_HANGING';

// Worker threads load what their process was told to load.
if (isMainThread) watchProcess();
else hangWhileTold(process.env[HANGING]);

function watchProcess(): void {
  if (!process.send) return;
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const running = new Set<threads.Worker>();
  threads.Worker = class extends threads.Worker {
    constructor(...given: ConstructorParameters<typeof threads.Worker>) {
      super(...given);
      running.add(this);
      this.once('exit', () => running.delete(this));
    }
  };
  syncBuiltinESMExports();
  process.on('message', (permission: Deed) => {
    if (permission === 'kill workers') {
      for (const worker of running) void worker.terminate();
      process.send?.({ killed: running.size });
      return;
    }
    collect();
    collect();
    const { heapUsed, rss } = process.memoryUsage();
    process.send?.({ heap: heapUsed, held: rss } satisfies Memory);
  });
  process.once('disconnect', () => process.exit(1));
  // The bot ends when it has done its work, whoever listens.
  process.channel?.unref();
}

function hangWhileTold(file: string | undefined): void {
  if (file === undefined) return;
  const post = MessagePort.prototype.postMessage;
  MessagePort.prototype.postMessage = function (this: MessagePort, ...given: Parameters<typeof post>) {
    if (existsSync(file)) for (;;);
    post.apply(this, given);
  };
}
