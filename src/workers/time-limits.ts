/** Reading under a limit of time: no text holds up everybody else, whatever a pattern makes of it. */

import { readFileSync } from 'node:fs';
import { createContext, Script } from 'node:vm';
import { Unworked } from './queue.ts';

/** How long reading may hold the event loop before it is looked at, in milliseconds. */
interface ReadingTime {
  readonly hold: number;
  /** Milliseconds of processor time that this thread has used. */
  used(): number;
}

/** An attempt with less processor time than this, in milliseconds, says more of the machine's load than of the text. No text takes as much. */
const FAIR = 60;
/** Fair attempts until a text is given up. The second may find patterns compiled that the first was still compiling. */
const ATTEMPTS = 2;
/** On a loaded machine an attempt may take twice as long as the one before, so many times. */
const DOUBLED = 5;

/** What is loaded with the first answers is no text's fault: until a process has given some, reading is only kept from hanging. */
let time: ReadingTime = { hold: 10_000, used: threadTime() };

/** Holds reading to its limit from now on, for a process that others ask too, once it has answered something. Gives the way back. */
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
 * What reading gives. Where it takes longer than it may it is stopped, and `late` is given, or Unworked is thrown. What is
 * read must be read in one go and change nothing. Reading within reading has the time of the whole.
 */
export function readInTime<T>(read: () => T, late?: () => T): T {
  const found = reading ? { value: read() } : readWithin(read, time);
  if (found) return found.value;
  if (late) return late();
  throw new Unworked('unread');
}

/** What reading gives within a time; undefined where it was stopped. */
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

/** V8 looks whether it should stop in the midst of a pattern too, which nothing that runs in JavaScript can do. */
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

/** The clock of this thread alone where there is one; else of the whole process, its other threads included. */
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

// Work that stops now and then, so that it never holds the event loop for long: others have it in between.

/** Milliseconds of one stretch: a stop sooner than this is passed over. */
const STRETCH = 8;

/** Works to the end, others let in where the work stops (`yield`). Rejects with what the work throws. */
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
