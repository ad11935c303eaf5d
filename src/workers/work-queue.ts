/** Work that waits for one of a few places: fair a person, bounded, and what somebody waits to see first goes before what betters it. */

import { RoundRobin } from './round-robin.ts';
import { Unworked } from './unworked.ts';
import { tellWait } from './whose.ts';

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
export interface Turn {
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
    const asked = performance.now();
    await this.#place(turn);
    tellWait(performance.now() - asked);
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
