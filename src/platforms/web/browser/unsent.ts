/** What was done on the page and is not saved yet, by name; the latest of each. It outlives the page where the browser lets it. */

/** Where texts are kept by name, as a browser's local storage does. */
export interface Shelf {
  getItem(name: string): string | null;
  setItem(name: string, value: string): void;
}

/** The fields of a form. */
export type Fields = Readonly<Record<string, string>>;

export class Unsent {
  readonly #name: string;
  #shelf: Shelf | undefined;
  #memory: ReadonlyMap<string, Fields> = new Map();

  constructor(name: string, shelf: Shelf | undefined) {
    this.#name = name;
    this.#shelf = shelf;
  }

  /** Everything, in the order in which it was first done. Another window of the same page may have added to it. */
  all(): ReadonlyMap<string, Fields> {
    try {
      const kept = this.#shelf?.getItem(this.#name);
      if (typeof kept === 'string') this.#memory = new Map(pairsIn(JSON.parse(kept)));
    } catch {
      // Storage that is shut off or holds what is not ours: memory does as long as the page is open.
    }
    return this.#memory;
  }

  put(id: string, fields: Fields): void {
    this.#set(new Map([...this.all(), [id, fields]]));
  }

  /** It is settled, unless something else was wanted meanwhile. */
  done(id: string, fields: Fields): void {
    const all = new Map(this.all());
    if (!same(all.get(id), fields)) return;
    all.delete(id);
    this.#set(all);
  }

  #set(all: ReadonlyMap<string, Fields>): void {
    this.#memory = all;
    try {
      this.#shelf?.setItem(this.#name, JSON.stringify([...all]));
    } catch {
      // Full or shut off: what it holds is older than what is here.
      this.#shelf = undefined;
    }
  }
}

function same(one: Fields | undefined, other: Fields): boolean {
  return one !== undefined && JSON.stringify(one) === JSON.stringify(other);
}

function pairsIn(kept: unknown): readonly (readonly [string, Fields])[] {
  if (!Array.isArray(kept)) return [];
  return kept.filter(
    (one): one is [string, Fields] =>
      Array.isArray(one) &&
      typeof one[0] === 'string' &&
      typeof one[1] === 'object' &&
      one[1] !== null &&
      Object.values(one[1]).every((value) => typeof value === 'string'),
  );
}
