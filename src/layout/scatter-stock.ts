/** Start and end pieces kept in order while a search changes them one by one, and how many planks they take. */

/** Ascending lengths in ticks that pieces are put into and taken out of. */
class Ordered {
  readonly lengths: Int32Array;
  size = 0;

  constructor(most: number) {
    this.lengths = new Int32Array(most);
  }

  add(length: number): void {
    const at = this.#place(length);
    this.lengths.copyWithin(at + 1, at, this.size);
    this.lengths[at] = length;
    this.size++;
  }

  remove(length: number): void {
    const at = this.#place(length);
    this.lengths.copyWithin(at, at + 1, this.size);
    this.size--;
  }

  #place(length: number): number {
    let low = 0;
    let high = this.size;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.lengths[middle] as number) < length) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** The cut pieces of a layout. A piece with walls at both ends stands on whichever side the search puts it. */
export class ScatterStock {
  readonly #starts: Ordered;
  readonly #ends: Ordered;
  readonly #room: number;
  whole = 0;

  /** `room` is what two pieces of one plank may come to: its length less a kerf. */
  constructor(most: number, room: number) {
    this.#starts = new Ordered(most);
    this.#ends = new Ordered(most);
    this.#room = room;
  }

  /** Puts a piece in, or takes one of its length out. */
  change(side: 'start' | 'end', length: number, sign: 1 | -1): void {
    const list = side === 'start' ? this.#starts : this.#ends;
    if (sign > 0) list.add(length);
    else list.remove(length);
  }

  /** Whole planks, and one for every start and end piece but for the pairs that share one (see countPairs). */
  planks(): number {
    const up = this.#starts.lengths;
    const down = this.#ends.lengths;
    const most = this.#starts.size;
    let pairs = 0;
    let fitting = 0;
    for (let i = this.#ends.size - 1; i >= 0; i--) {
      const room = this.#room - (down[i] as number);
      while (fitting < most && (up[fitting] as number) <= room) fitting++;
      if (fitting > pairs) pairs++;
    }
    return this.whole + most + this.#ends.size - pairs;
  }
}
