/** Things that wait, each somebody's: taken in rounds, one of each person a round, and a person's own in their order. */

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
