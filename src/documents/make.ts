/** Makes files of a project's sheets in a worker thread, so that a long one never blocks the event loop. */

import { fileURLToPath } from 'node:url';
import { filesOf } from '../chat/files.ts';
import { isSheets, type Sheets } from '../reply/job-sheet.ts';
import { type FileForm, type FileMade, MEDIA_TYPES, type Result } from '../reply/reply.ts';
import { FILES } from '../text/sheets-text.ts';
import { WorkQueue, whoAsks } from '../workers/queue.ts';
import { ThreadPool } from '../workers/thread-pool.ts';
import type { Paper } from './document-page.ts';
import type { MakeTask } from './documents-worker.ts';

/** Workers load the built JavaScript even when this file runs as TypeScript in a test. */
const WORKER = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../dist/src/documents/documents-worker.js' : './documents-worker.js',
    import.meta.url,
  ),
);
const THREADS = 2;

/** Milliseconds per file, and megabytes of a worker's heap; fifty rooms take a tenth of either. */
const LONGEST = 60_000;
const HEAP = 512;

const queue = new WorkQueue({ atOnce: THREADS, forFirst: 0, inAll: 200, ofOne: 20 });

const threads = new ThreadPool<MakeTask, Uint8Array>(() => ({
  filename: WORKER,
  minThreads: 0,
  maxThreads: THREADS,
  idleTimeout: 30_000,
  resourceLimits: { maxOldGenerationSizeMb: HEAP },
}));

/**
 * A file from an answer's data. Throws a TypeError for data that isn't sheets, what the maker throws, and Unworked when
 * too many are waiting.
 */
export async function makeFile(data: Result, as: FileForm): Promise<Buffer> {
  if (!isSheets(data)) throw new TypeError(`no files are made of ${data.kind}`);
  const bytes = await queue.run({ who: whoAsks(), better: false }, () =>
    threads.run(
      { sheets: as.form === 'pdf' ? printed(data) : data, as },
      { name: 'make', signal: AbortSignal.timeout(LONGEST) },
    ),
  );
  return Buffer.from(bytes);
}

/** Drops the result data behind the words: it isn't printed, and would only be copied to the worker. */
function printed(sheets: Sheets): Sheets {
  const lean = sheets.sheets.map(({ pieces: _pieces, reply, ...sheet }) => ({
    ...sheet,
    reply: { ...reply, data: { kind: reply.data.kind } },
  }));
  return { ...sheets, sheets: lean };
}

export function fileFigures(): { readonly working: number; readonly waiting: number } {
  return { working: queue.working, waiting: queue.waiting };
}

/** Ends the worker threads; a later file starts them again. */
export async function closeFiles(): Promise<void> {
  queue.refuseAll();
  await threads.close();
}

export interface Handed {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export const fileMaker = {
  pdf: (sheets: Sheets, paper: Paper): Promise<Handed> => handed(sheets, filesOf(sheets, 'pdf', paper)[0]),
  json: (sheets: Sheets): Promise<Handed> => handed(sheets, filesOf(sheets, 'json')[0]),
  /** The lists that have lines, by key and label. */
  tables: (sheets: Sheets): readonly { readonly key: string; readonly label: string }[] =>
    filesOf(sheets, 'csv').flatMap(({ as }) =>
      as.form === 'csv' ? [{ key: as.list, label: FILES.lists[as.list] }] : [],
    ),
  table: async (sheets: Sheets, key: string): Promise<Handed | undefined> => {
    const file = filesOf(sheets, 'csv').find(({ as }) => as.form === 'csv' && as.list === key);
    return file && handed(sheets, file);
  },
} as const;

async function handed(sheets: Sheets, file: FileMade | undefined): Promise<Handed> {
  if (!file) throw new RangeError('no file is made of no sheets');
  const bytes = new Uint8Array(await makeFile(sheets, file.as));
  return { name: file.name, type: MEDIA_TYPES[file.as.form], bytes };
}
