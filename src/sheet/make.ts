/** Files of a project's sheets, made in a worker thread: a long one never holds the event loop. */

import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { FileForm } from '../reply/file.ts';
import { isSheets } from '../reply/job-sheet.ts';
import type { Result } from '../reply/reply.ts';
import type { MakeTask } from './worker.ts';

/** Workers load the built JavaScript, also when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../dist/src/sheet/worker.js' : './worker.js', import.meta.url),
);
const THREADS = 2;

let pool: Piscina<MakeTask, Uint8Array> | undefined;

/** A file of an answer's data. Throws a TypeError for data that are no sheets, and what the maker throws. */
export async function makeFile(data: Result, as: FileForm): Promise<Buffer> {
  if (!isSheets(data)) throw new TypeError(`no files are made of ${data.kind}`);
  pool ??= new Piscina({ filename: WORKER, minThreads: 0, maxThreads: THREADS, idleTimeout: 30_000 });
  return Buffer.from(await pool.run({ sheets: data, as }, { name: 'make' }));
}

/** Ends the worker threads; a later file starts them again. */
export async function closeFiles(): Promise<void> {
  const closing = pool;
  pool = undefined;
  await closing?.destroy();
}
