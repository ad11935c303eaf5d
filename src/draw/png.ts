/** A drawing as a PNG of a given width, made in a worker thread: drawing and packing never hold the event loop. */

import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { Drawing } from '../reply/drawing.ts';
import type { PictureTask } from './png-worker.ts';

/** Width of a picture in pixels when none is asked for: two and a half for each unit of the sheet, sharp on a phone. */
export const PNG_WIDTH = 900;

/** Workers load the built JavaScript, also when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../dist/src/draw/png-worker.js' : './png-worker.js', import.meta.url),
);
const THREADS = 2;

let pool: Piscina<PictureTask, Uint8Array> | undefined;

/** The picture `width` pixels wide, its height in proportion. Throws what the renderer throws. */
export async function toPng(drawing: Drawing, width = PNG_WIDTH): Promise<Buffer> {
  // A thread that sleeps between tasks outside its event loop never gives back what pictures took outside the heap.
  const atomics = 'disabled';
  pool ??= new Piscina({ filename: WORKER, minThreads: 0, maxThreads: THREADS, idleTimeout: 30_000, atomics });
  return Buffer.from(await pool.run({ drawing, width }, { name: 'rasterise' }));
}

/** Ends the worker threads; a later picture starts them again. */
export async function closePictures(): Promise<void> {
  const closing = pool;
  pool = undefined;
  await closing?.destroy();
}
