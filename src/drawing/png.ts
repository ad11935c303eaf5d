/** A drawing as a PNG of a given width, made in a worker thread: drawing and packing never hold the event loop. */

import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { Drawing } from '../reply/drawing.ts';
import { endWhenBroken, WorkQueue, whoAsks } from '../workers/queue.ts';
import type { PictureTask } from './png-worker.ts';

/** Width of a picture in pixels when none is asked for: two and a half for each unit of the sheet, sharp on a phone. */
export const PNG_WIDTH = 900;

/** Workers load the built JavaScript, also when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../dist/src/drawing/png-worker.js' : './png-worker.js',
    import.meta.url,
  ),
);
const THREADS = 2;

/** Milliseconds for one picture, and megabytes of a worker's heap. */
const LONGEST = 10_000;
const HEAP = 256;

/** One answer has a picture a room, and the pictures of an answer are asked for at once. */
const queue = new WorkQueue({ atOnce: THREADS, forFirst: 0, inAll: 1000, ofOne: 250 });

let pool: Piscina<PictureTask, Uint8Array> | undefined;

function workers(): Piscina<PictureTask, Uint8Array> {
  if (pool) return pool;
  const own: Piscina<PictureTask, Uint8Array> = new Piscina({
    filename: WORKER,
    minThreads: 0,
    maxThreads: THREADS,
    idleTimeout: 30_000,
    // A thread that sleeps between tasks outside its event loop never gives back what pictures took outside the heap.
    atomics: 'disabled',
    resourceLimits: { maxOldGenerationSizeMb: HEAP },
  });
  endWhenBroken(own, () => {
    if (pool === own) pool = undefined;
  });
  pool = own;
  return own;
}

/** The picture `width` pixels wide, its height in proportion. Throws what the renderer throws, and Unworked where too many wait. */
export async function toPng(drawing: Drawing, width = PNG_WIDTH): Promise<Buffer> {
  const bytes = await queue.run({ who: whoAsks(), better: false }, () =>
    workers().run({ drawing, width }, { name: 'rasterise', signal: AbortSignal.timeout(LONGEST) }),
  );
  return Buffer.from(bytes);
}

/** Pictures worked on and waiting. */
export function pictureFigures(): { readonly working: number; readonly waiting: number } {
  return { working: queue.working, waiting: queue.waiting };
}

/** Ends the worker threads; a later picture starts them again. */
export async function closePictures(): Promise<void> {
  queue.refuseAll();
  const closing = pool;
  pool = undefined;
  await closing?.destroy();
}
