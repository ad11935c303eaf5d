/** The cheapest way to cut a few pieces, by enumeration of every subset of pieces on every stock: shares no code with the solver. */

interface Task {
  readonly pieces: readonly { readonly length: number; readonly kerf: number }[];
  readonly stock: readonly { readonly length: number; readonly cents: number; readonly have?: number }[];
  readonly endTrim: number;
}

/** Least cents for at most 10 pieces of one kerf; sticks at hand are free and as many as there are. Throws a RangeError beyond. */
export function cheapestByEveryWay({ pieces, stock, endTrim }: Task): number {
  if (pieces.length > 10) throw new RangeError('too many pieces to enumerate');
  const all = 2 ** pieces.length - 1;
  const atHand = stock.flatMap(({ length, have = 0 }) => Array.from({ length: have }, () => length));
  const fits = (set: number, length: number): boolean => {
    const own = pieces.filter((_, i) => set & (2 ** i));
    const used =
      own.reduce((sum, piece) => sum + piece.length + piece.kerf, 0) - Math.max(0, ...own.map(({ kerf }) => kerf));
    return used <= length - endTrim;
  };
  const bought = (set: number): number =>
    Math.min(
      ...stock.map(({ length, cents, have }) =>
        have === undefined && fits(set, length) ? cents : Number.POSITIVE_INFINITY,
      ),
    );
  // Least cost of the pieces in each set from bought sticks alone: split off the part with the lowest piece.
  const least = new Array<number>(all + 1).fill(Number.POSITIVE_INFINITY);
  least[0] = 0;
  for (let set = 1; set <= all; set++) {
    const lowest = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (part & lowest) least[set] = Math.min(least[set] ?? 0, bought(part) + (least[set ^ part] ?? 0));
    }
  }
  const withHand = (set: number, index: number): number => {
    const length = atHand[index];
    if (length === undefined) return least[set] ?? Number.POSITIVE_INFINITY;
    let best = withHand(set, index + 1);
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (fits(part, length)) best = Math.min(best, withHand(set ^ part, index + 1));
    }
    return best;
  };
  return withHand(all, 0);
}
