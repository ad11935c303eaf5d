/** Things that wait, each somebody's: taken in rounds, one of each person a round, and a person's own in their order. */

import { AsyncLocalStorage } from 'node:async_hooks';

export class RoundRobin<T> {
  /** In the order in which people are next. */
  readonly #waiting = new Map<string, T[]>();
  #size = 0;

  get size(): number {
    return this.#size;
  }

  sizeOf(who: string): number {
    return this.#waiting.get(who)?.length ?? 0;
  }

  add(who: string, one: T): void {
    const own = this.#waiting.get(who);
    if (own) own.push(one);
    else this.#waiting.set(who, [one]);
    this.#size += 1;
  }

  /** Takes the next one, whose person is then last in the round; undefined when nothing waits. */
  next(): T | undefined {
    for (const [who, [one, ...rest]] of this.#waiting) {
      this.#waiting.delete(who);
      if (rest.length > 0) this.#waiting.set(who, rest);
      if (one === undefined) continue;
      this.#size -= 1;
      return one;
    }
    return undefined;
  }

  /** Takes one out of its turn; whether it was still waiting. */
  remove(who: string, one: T): boolean {
    const own = this.#waiting.get(who) ?? [];
    const left = own.filter((other) => other !== one);
    if (left.length === own.length) return false;
    this.#size -= own.length - left.length;
    if (left.length > 0) this.#waiting.set(who, left);
    else this.#waiting.delete(who);
    return true;
  }
}

// On whose behalf something is being worked out, wherever in the house that is.

interface Asking {
  readonly who: string;
  /** Told of milliseconds that some work of theirs waited for its turn. */
  readonly waited?: (milliseconds: number) => void;
}

const askers = new AsyncLocalStorage<Asking>();

/** Does work on somebody's behalf; `who` is any key that is the same for the same person. */
export function onBehalfOf<T>(who: string, work: () => T): T {
  return askers.run({ who }, work);
}

/** Whoever is asking; empty where nobody is. */
export function whoAsks(): string {
  return askers.getStore()?.who ?? '';
}

/** Tells whoever counts it that work of the one who asks waited. */
function tellWait(milliseconds: number): void {
  askers.getStore()?.waited?.(milliseconds);
}

/** A stream whose every step is worked on somebody's behalf; `waited` is told how long work within it waited for its turn. */
export async function* eachOnBehalfOf<T>(
  who: string,
  stream: AsyncIterable<T>,
  waited?: Asking['waited'],
): AsyncGenerator<T> {
  const asking = { who, ...(waited ? { waited } : {}) };
  const steps = stream[Symbol.asyncIterator]();
  try {
    for (;;) {
      const step = await askers.run(asking, () => steps.next());
      if (step.done === true) return;
      yield step.value;
    }
  } finally {
    await steps.return?.();
  }
}

// Why something was not worked out: not a fault, and asking again may do.

/**
 * `crowded`: too many wait already; `own`: too many of the same person's; `large`: it took more time or memory than an ask may;
 * `unread`: reading its text took longer than a text may.
 */
export type Why = 'crowded' | 'own' | 'large' | 'unread';

export class Unworked extends Error {
  override readonly name = 'Unworked';
  readonly why: Why;

  constructor(why: Why, options?: ErrorOptions) {
    super(`not worked out: ${why}`, options);
    this.why = why;
  }
}

// Work that waits for one of a few places: fair a person, bounded, and what somebody waits to see first goes
// before what betters it.

export interface QueueTerms {
  /** Worked on at once. */
  readonly atOnce: number;
  /** Places of these that only first answers take. */
  readonly forFirst: number;
  /** May wait in all, and of one person. */
  readonly inAll: number;
  readonly ofOne: number;
}

/** Whose work it is, and whether it is a first answer or a better one. */
interface Turn {
  /** Empty where nobody asks: bound by `inAll` alone. */
  readonly who: string;
  readonly better: boolean;
  /** Gives the wait up; what is begun goes on. */
  readonly patience?: AbortSignal;
}

interface Waiting {
  begin(): void;
  refuse(): void;
}

export class WorkQueue {
  readonly #terms: QueueTerms;
  readonly #first = new RoundRobin<Waiting>();
  readonly #better = new RoundRobin<Waiting>();
  #working = 0;
  #betters = 0;

  constructor(terms: QueueTerms) {
    this.#terms = terms;
  }

  get working(): number {
    return this.#working;
  }

  get waiting(): number {
    return this.#first.size + this.#better.size;
  }

  /** Does work in its turn. Rejects with Unworked where too much waits, or it waited too long; else as the work does. */
  async run<T>(turn: Turn, work: () => Promise<T>): Promise<T> {
    const requested = performance.now();
    await this.#place(turn);
    tellWait(performance.now() - requested);
    try {
      return await work();
    } finally {
      this.#working -= 1;
      if (turn.better) this.#betters -= 1;
      this.#begin();
    }
  }

  /** Refuses what waits; what is begun goes on. */
  refuseAll(): void {
    for (const lane of [this.#first, this.#better]) {
      for (let one = lane.next(); one; one = lane.next()) one.refuse();
    }
  }

  #place({ who, better, patience }: Turn): Promise<void> {
    const lane = better ? this.#better : this.#first;
    const { inAll, ofOne } = this.#terms;
    const free = lane.size === 0 && this.#hasPlace(better);
    if (!free && who !== '' && this.#first.sizeOf(who) + this.#better.sizeOf(who) >= ofOne) {
      return Promise.reject(new Unworked('own'));
    }
    if (!free && this.waiting >= inAll) return Promise.reject(new Unworked('crowded'));
    return new Promise((resolve, reject) => {
      const one: Waiting = {
        begin() {
          patience?.removeEventListener('abort', tired);
          resolve();
        },
        refuse() {
          patience?.removeEventListener('abort', tired);
          reject(new Unworked('crowded'));
        },
      };
      const tired = (): void => {
        if (lane.remove(who, one)) one.refuse();
      };
      patience?.addEventListener('abort', tired, { once: true });
      lane.add(who, one);
      this.#begin();
    });
  }

  #hasPlace(better: boolean): boolean {
    const { atOnce, forFirst } = this.#terms;
    return this.#working < atOnce && (!better || this.#betters < Math.max(1, atOnce - forFirst));
  }

  #begin(): void {
    for (const better of [false, true]) {
      const lane = better ? this.#better : this.#first;
      while (lane.size > 0 && this.#hasPlace(better)) {
        this.#working += 1;
        if (better) this.#betters += 1;
        lane.next()?.begin();
      }
    }
  }
}

// Threads that fail while they have nothing to do: a file of theirs is gone, or there is no memory to start
// one.

interface Threads {
  on(event: 'error', given: (cause: Error) => void): unknown;
  destroy(): Promise<unknown>;
}

/**
 * Ends a pool of threads when one fails without a task, and calls `gone` first. Unheard, such a failure would end the
 * process; and what waits for the thread would wait in vain, whereas a pool that ends rejects it at once.
 */
export function endWhenBroken(threads: Threads, gone: () => void): void {
  threads.on('error', () => {
    gone();
    void threads.destroy();
  });
}
