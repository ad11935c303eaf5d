/** Who uses a data folder: one bot, and any number of terminals on the same machine, written down in the store. */

import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { pid } from 'node:process';
import type { Database, RootDatabase } from 'lmdb';
import type { Clock } from './engine.ts';
import { StoreUnusable } from './types.ts';

// lmdb allows several processes on one file, and nothing here is cached between two reads: records change by revision,
// values by version, both checked in the transaction that writes. A second bot is refused all the same, because each
// would count requests against its own limits. Another machine is refused because lmdb's locks live in shared memory.

/** `alone`: nobody else may use the folder meanwhile, as when a backup is restored. */
export type FolderUse = 'bot' | 'terminal' | 'alone';

/** A process on some machine, and when it last reported. */
export interface FolderUser {
  readonly pid: number;
  /** When the process was started, by its machine's clock; distinguishes it from a later one with the same number. */
  readonly started: string;
  readonly host: string;
  readonly seen: number;
  readonly alone?: boolean;
}

/** How often a user reports, and how many milliseconds after its last report one on another machine counts as gone. */
export const SEEN_EVERY = 10_000;
export const GONE_AFTER = 60_000;

/** The row of a bot, or of whoever has the folder alone; terminals have rows of their own. */
const OWNER = 'owner';

export class FolderTaken extends StoreUnusable {}

/** Uses the folder until `release`; the store's write lock makes the check exact. Throws FolderTaken if a live process is in the way. */
export class FolderAccess {
  /** This user's row version in lmdb; writes here are conditional on it. */
  readonly #version = randomInt(1, 2 ** 40);
  readonly #rows: Database<FolderUser, string>;
  readonly #clock: Pick<Clock, 'now'>;
  readonly #use: FolderUse;
  readonly #key: string;

  constructor(root: RootDatabase, folder: string, use: FolderUse, clock: Pick<Clock, 'now'>) {
    this.#rows = root.openDB({ name: 'owned', encoding: 'json', useVersions: true });
    this.#clock = clock;
    this.#use = use;
    this.#key = use === 'terminal' ? `terminal:${hostname()}:${pid}:${this.#version}` : OWNER;
    const refusal = this.#rows.transactionSync(() => {
      const others = [...this.#rows.getRange()];
      const gone = others.filter(({ value }) => !isThere(value, clock.now()));
      for (const { key, value } of others) {
        const said = gone.some((one) => one.key === key) ? undefined : inTheWay(folder, use, key, value);
        if (said !== undefined) return said;
      }
      for (const { key } of gone) this.#rows.removeSync(key);
      this.#rows.putSync(this.#key, this.#row(), this.#version);
      return undefined;
    });
    if (refusal !== undefined) throw new FolderTaken(refusal);
  }

  /** Reports that this process is alive, unless another has taken over the folder. */
  async say(): Promise<void> {
    await heard(this.#rows.put(this.#key, this.#row(), this.#version, this.#version));
  }

  async release(): Promise<void> {
    await heard(this.#rows.remove(this.#key, this.#version));
  }

  #row(): FolderUser {
    const row = { pid, started: startOf(pid) ?? '', host: hostname(), seen: this.#clock.now() };
    return this.#use === 'alone' ? { ...row, alone: true } : row;
  }
}

/** Why these two can't use the folder together, and what to do; undefined if they can. */
function inTheWay(folder: string, use: FolderUse, key: string, other: FolderUser): string | undefined {
  const is = `The data folder ${folder} is`;
  const by = `in use by process ${other.pid}`;
  if (other.host !== hostname())
    return `${is} ${by} on ${other.host}, and only one machine at a time can use it. Stop that process, or set FLOORHAND_DATA to another folder.`;
  if (other.alone) return `${is} being restored by process ${other.pid}. Try again when that has finished.`;
  if (use === 'alone') return `${is} ${by}. Stop that process, then try again.`;
  if (use === 'bot' && key === OWNER)
    return `${is} ${by}, a bot that runs already. Stop that process, or set FLOORHAND_DATA to another folder.`;
  return undefined;
}

function isThere(user: FolderUser, now: number): boolean {
  if (user.host !== hostname()) return now - user.seen < GONE_AFTER;
  try {
    process.kill(user.pid, 0);
  } catch (cause) {
    // EPERM: the process exists but belongs to another user.
    if ((cause as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  const started = startOf(user.pid);
  return started === undefined || user.started === '' || started === user.started;
}

/** Field 22 of /proc/PID/stat (proc(5)): start time in clock ticks since boot; undefined if the file doesn't exist. */
function startOf(process: number): string | undefined {
  try {
    const stat = readFileSync(`/proc/${process}/stat`, 'utf8');
    // The name in parentheses may contain spaces, so fields are counted from the closing one; the third follows it.
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
  } catch {
    return undefined;
  }
}

/**
 * Handles both rejections of a failed lmdb write, since an unhandled one would end the process: the write itself, and a
 * second promise with the reason, which rejects later.
 */
export function heard<T>(write: Promise<T>): Promise<T> {
  write.catch((cause: unknown) => {
    const reason =
      typeof cause === 'object' && cause !== null && 'commitError' in cause ? cause.commitError : undefined;
    if (reason instanceof Promise) reason.catch(() => {});
  });
  return write;
}
