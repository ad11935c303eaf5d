/** What was last packed or unpacked, at hand while it is pressed upon: the store still says whether it is there and what it is. */

/** Characters of packed text in all: a few dozen answers with their pictures. */
const MOST = 1_000_000;

export class AtHand<T> {
  readonly #held = new Map<string, { readonly packed: string; readonly value: T }>();
  #characters = 0;

  /** The value of an id, where it was packed to this very text. */
  get(id: string, packed: string): T | undefined {
    const held = this.#held.get(id);
    return held?.packed === packed ? held.value : undefined;
  }

  set(id: string, packed: string, value: T): void {
    this.delete(id);
    this.#held.set(id, { packed, value });
    this.#characters += packed.length;
    for (const [oldest] of this.#held) {
      if (this.#characters <= MOST) return;
      this.delete(oldest);
    }
  }

  delete(id: string): void {
    this.#characters -= this.#held.get(id)?.packed.length ?? 0;
    this.#held.delete(id);
  }
}
