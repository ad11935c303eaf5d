/** Queues for work: fair per person, with limits, and first answers before better ones. */

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

  /** Takes the next item and moves its person to the end of the round; undefined when nothing waits. */
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

  /** Removes an item out of turn; returns whether it was still waiting. */
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

// Whose request is being worked on, tracked through async calls.

interface Asking {
  readonly who: string;
  /** Called with the milliseconds that some of their work waited for its turn. */
  readonly waited?: (milliseconds: number) => void;
}

const askers = new AsyncLocalStorage<Asking>();

/** Runs work on a person's behalf; `who` is any key that is the same for the same person. */
export function onBehalfOf<T>(who: string, work: () => T): T {
  return askers.run({ who }, work);
}

/** The key of the person whose request this is; empty outside a request. */
export function whoAsks(): string {
  return askers.getStore()?.who ?? '';
}

function tellWait(milliseconds: number): void {
  askers.getStore()?.waited?.(milliseconds);
}

/** A stream whose every step runs on a person's behalf; `waited` gets how long work within it waited for its turn. */
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

// Why something wasn't worked out: not a fault, and trying again may help.

/**
 * `crowded`: too much is waiting; `own`: too much from the same person; `large`: it took more time or memory than a
 * request may; `unread`: reading the text took too long.
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

export interface QueueTerms {
  readonly atOnce: number;
  /** How many of these only first answers take. */
  readonly forFirst: number;
  /** How many may wait in all, and per person. */
  readonly inAll: number;
  readonly ofOne: number;
}

interface Turn {
  /** Empty outside a request: then only `inAll` limits it. */
  readonly who: string;
  readonly better: boolean;
  /** Gives up waiting; work already started goes on. */
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

  /**
   * Runs work in its turn. Rejects with Unworked if too much is waiting or it waited too long; otherwise like the work
   * itself.
   */
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

  /** Refuses what waits; work already started goes on. */
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
