/** Time limits on reading text, and long work split into steps, so that no request blocks the others. */

import { readFileSync } from 'node:fs';
import { createContext, Script } from 'node:vm';
import { Unworked } from './queue.ts';

/** How long reading may block the event loop before it is checked, in milliseconds. */
interface ReadingTime {
  readonly hold: number;
  /** Processor time in milliseconds that this thread has used. */
  used(): number;
}

/**
 * An attempt that got less processor time than this (ms) says more about the load on the machine than about the text.
 * No text takes as much.
 */
const FAIR = 60;
/**
 * Fair attempts before a text is given up. The second may find patterns compiled that the first was still compiling.
 */
const ATTEMPTS = 2;
/** On a loaded machine an attempt may take twice as long as the one before, this many times. */
const DOUBLED = 5;

/**
 * Loading code with the first answers is no text's fault, so until a process has given some, reading is only kept from
 * hanging.
 */
let time: ReadingTime = { hold: 10_000, used: threadTime() };

/**
 * Enforces the limit from now on. For a process with several users, once it has answered something. Returns a function
 * that undoes it.
 */
export function limitReading(): () => void {
  const before = time;
  time = { ...time, hold: 100 };
  return () => {
    time = before;
  };
}

let reading = false;
const place = createContext({ read: undefined as unknown });
const step = new Script('read()');

/**
 * Runs `read`. If it takes too long it is stopped, and `late` is returned or Unworked is thrown. `read` must be
 * synchronous and change nothing. Nested reads share the time of the outermost.
 */
export function readInTime<T>(read: () => T, late?: () => T): T {
  const found = reading ? { value: read() } : readWithin(read, time);
  if (found) return found.value;
  if (late) return late();
  throw new Unworked('unread');
}

/** The result of `read` if it finishes in time; undefined if it was stopped. */
export function readWithin<T>(read: () => T, { hold, used }: ReadingTime): { readonly value: T } | undefined {
  let [fair, doubled] = [0, 0];
  while (fair < ATTEMPTS && doubled <= DOUBLED) {
    const before = used();
    const found = attempt(read, hold * 2 ** doubled);
    if (found) return found;
    if (used() - before >= FAIR) fair += 1;
    else doubled += 1;
  }
  return undefined;
}

/** V8 can interrupt even in the middle of a regular expression, which no JavaScript code can do. */
function attempt<T>(read: () => T, timeout: number): { readonly value: T } | undefined {
  place.read = read;
  reading = true;
  try {
    return { value: step.runInContext(place, { timeout }) as T };
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException | undefined)?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') return undefined;
    throw cause;
  } finally {
    reading = false;
    place.read = undefined;
  }
}

/** The clock of this thread alone if there is one, or else of the whole process with its other threads. */
function threadTime(): () => number {
  const own = (process as { threadCpuUsage?: () => NodeJS.CpuUsage }).threadCpuUsage?.bind(process);
  const sum = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / 1000;
  if (own) return () => sum(own());
  const path = '/proc/thread-self/schedstat';
  const given = (): number => Number(readFileSync(path, 'utf8').split(' ')[0]) / 1_000_000;
  try {
    if (given() > 0) return given;
  } catch {
    // Not Linux.
  }
  return () => sum(process.cpuUsage());
}

// Long work that yields now and then, so that it never blocks the event loop for long.

/** Milliseconds of one stretch; a yield sooner than this is ignored. */
const STRETCH = 8;

/** Runs a generator to the end, letting other work in at its yields. Rejects with what it throws. */
export async function inSteps<T>(work: Generator<undefined, T>): Promise<T> {
  let begun = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
    if (performance.now() - begun < STRETCH) continue;
    await new Promise<void>((resolve) => setImmediate(resolve));
    begun = performance.now();
  }
}
