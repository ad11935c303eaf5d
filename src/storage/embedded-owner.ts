/** Who has the data folder: one process at a time, written in the store itself, whose write lock makes the check exact. */

import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { pid } from 'node:process';
import type { Database, RootDatabase } from 'lmdb';
import { heard } from './embedded-write.ts';
import type { Clock } from './patience.ts';
import { Outage } from './types.ts';

/** A process on some machine, and when it last said that it is there. */
export interface Owner {
  readonly pid: number;
  /** When the process was started, as its machine counts; tells it from a later one with the same number. */
  readonly started: string;
  readonly host: string;
  readonly seen: number;
}

/** How often an owner says so, and after how long without it one on another machine counts as gone, in milliseconds. */
export const SEEN_EVERY = 10_000;
export const GONE_AFTER = 60_000;

const KEY = 'owner';

/** The data folder is another process's. */
export class FolderTaken extends Outage {}

/** Owns the folder until `release`. Throws FolderTaken when another process that is alive has it. */
export class Ownership {
  /** Tells this owner's row from any other's: its version in lmdb, on which what is written here depends. */
  readonly #version = randomInt(1, 2 ** 40);
  readonly #rows: Database<Owner, string>;
  readonly #clock: Pick<Clock, 'now'>;

  constructor(root: RootDatabase, folder: string, clock: Pick<Clock, 'now'>) {
    this.#rows = root.openDB({ name: 'owned', encoding: 'json', useVersions: true });
    this.#clock = clock;
    const other = this.#rows.transactionSync(() => {
      const owner = this.#rows.get(KEY);
      if (owner && isThere(owner, clock.now())) return owner;
      this.#rows.putSync(KEY, this.#row(), this.#version);
      return undefined;
    });
    if (!other) return;
    const where = other.host === hostname() ? '' : ` on ${other.host}`;
    const told = `The data folder ${folder} is in use by process ${other.pid}${where}. Stop it, or set FLOORHAND_DATA to another folder.`;
    throw new FolderTaken(told);
  }

  /** Says that this process is there still, unless another has taken the folder over meanwhile. */
  async say(): Promise<void> {
    await heard(this.#rows.put(KEY, this.#row(), this.#version, this.#version));
  }

  async release(): Promise<void> {
    await heard(this.#rows.remove(KEY, this.#version));
  }

  #row(): Owner {
    return { pid, started: startOf(pid) ?? '', host: hostname(), seen: this.#clock.now() };
  }
}

function isThere(owner: Owner, now: number): boolean {
  if (owner.host !== hostname()) return now - owner.seen < GONE_AFTER;
  try {
    process.kill(owner.pid, 0);
  } catch (cause) {
    // EPERM: it is there, and somebody else's.
    if ((cause as NodeJS.ErrnoException).code !== 'EPERM') return false;
  }
  const started = startOf(owner.pid);
  return started === undefined || owner.started === '' || started === owner.started;
}

/** Field 22 of /proc/PID/stat (proc(5)): the start in clock ticks since boot; undefined where there is no such file. */
function startOf(process: number): string | undefined {
  try {
    const stat = readFileSync(`/proc/${process}/stat`, 'utf8');
    // The name in parentheses may hold spaces, so fields are counted from behind it: the third follows.
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
  } catch {
    return undefined;
  }
}
