/** Writers as processes of their own, and what each was told. */

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** The built program, also where this file runs as it is written. */
const PROGRAM = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../../dist/tests/bench/faults/writer.js' : './writer.js',
    import.meta.url,
  ),
);

export interface Writer {
  readonly writer: string;
  /** Marks that were acknowledged. */
  readonly done: readonly number[];
  readonly refused: number;
  /** What it wrote on standard error. */
  readonly wrong: string;
  /** The exit code; null when it was killed. */
  readonly ended: Promise<number | null>;
  kill(): void;
}

/** Starts a writer; resolves when it has opened its store. Rejects when it ends before. */
export async function startWriter(told: {
  readonly url: string;
  readonly folder: string;
  readonly use?: 'bot' | 'terminal';
  readonly writer: string;
  readonly changes: number;
  readonly lanes: number;
}): Promise<Writer> {
  const child = spawn(process.execPath, [PROGRAM, JSON.stringify(told)], { stdio: ['ignore', 'pipe', 'pipe'] });
  const state = { done: [] as number[], refused: 0, wrong: '' };
  child.stderr.on('data', (data) => {
    state.wrong += String(data);
  });
  const lines = createInterface({ input: child.stdout });
  const ready = new Promise<void>((resolve) => {
    lines.on('line', (line) => {
      const [word, number] = line.split(' ');
      if (word === 'ready') resolve();
      else if (word === 'done') state.done.push(Number(number));
      else if (word === 'refused') state.refused++;
    });
  });
  const read = once(lines, 'close');
  const ended = once(child, 'exit').then(async ([code]) => {
    await read;
    return code as number | null;
  });
  const early = ended.then((code) => {
    throw new Error(`The writer ended with ${code}: ${state.wrong}`);
  });
  await Promise.race([ready, early]);
  early.catch(() => {});
  return Object.defineProperties({} as Writer, {
    writer: { value: told.writer },
    done: { get: () => state.done },
    refused: { get: () => state.refused },
    wrong: { get: () => state.wrong },
    ended: { value: ended },
    kill: { value: () => child.kill('SIGKILL') },
  });
}
