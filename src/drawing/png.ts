/** PNGs of drawings, made in a worker thread so that rendering never blocks the event loop. */

import { fileURLToPath } from 'node:url';
import type { Drawing } from '../reply/drawing.ts';
import { WorkQueue, whoAsks } from '../workers/queue.ts';
import { ThreadPool } from '../workers/thread-pool.ts';
import type { PictureTask } from './png-worker.ts';

/** Default width in pixels: two and a half per sheet unit, sharp on a phone. */
export const PNG_WIDTH = 900;

/** Workers load the built JavaScript even when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../dist/src/drawing/png-worker.js' : './png-worker.js',
    import.meta.url,
  ),
);
const THREADS = 2;

/** Milliseconds per picture, and megabytes of a worker's heap. */
const LONGEST = 10_000;
const HEAP = 256;

/** One answer has a picture per room, and all of them are requested at once. */
const queue = new WorkQueue({ atOnce: THREADS, forFirst: 0, inAll: 1000, ofOne: 250 });

const threads = new ThreadPool<PictureTask, Uint8Array>(() => ({
  filename: WORKER,
  minThreads: 0,
  maxThreads: THREADS,
  idleTimeout: 30_000,
  // A thread that sleeps outside its event loop between tasks never frees the off-heap memory of its pictures.
  atomics: 'disabled',
  resourceLimits: { maxOldGenerationSizeMb: HEAP },
}));

/**
 * The picture `width` pixels wide, height in proportion. Throws what the renderer throws, and Unworked when too many
 * are waiting.
 */
export async function toPng(drawing: Drawing, width = PNG_WIDTH): Promise<Buffer> {
  const bytes = await queue.run({ who: whoAsks(), better: false }, () =>
    threads.run({ drawing, width }, { name: 'rasterise', signal: AbortSignal.timeout(LONGEST) }),
  );
  return Buffer.from(bytes);
}

export function pictureFigures(): { readonly working: number; readonly waiting: number } {
  return { working: queue.working, waiting: queue.waiting };
}

/** Ends the worker threads; a later picture starts them again. */
export async function closePictures(): Promise<void> {
  queue.refuseAll();
  await threads.close();
}
