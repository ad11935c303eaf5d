/** The fewest planks for a few pieces by trying every way to divide them: too slow for a floor, too plain to be wrong. */

/** Lengths of pieces by the part of a plank they need: right part, left part, any part. */
export interface PieceLengths {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly shorts: readonly number[];
}

interface Wanted {
  readonly length: number;
  readonly part: 'start' | 'end' | 'short';
}

/** 3ⁿ divisions are tried: at twelve pieces half a million. */
const MOST_PIECES = 12;

/**
 * The fewest planks of locking boards: a plank gives at most one start, at most one end and any number of shorts, and its
 * pieces with a kerf between each two are no longer than it. Throws a RangeError for more than twelve pieces or one that
 * no plank can give.
 */
export function fewestLockingPlanks({ starts, ends, shorts }: PieceLengths, plank: number, kerf: number): number {
  const wanted: Wanted[] = [
    ...starts.map((length) => ({ length, part: 'start' as const })),
    ...ends.map((length) => ({ length, part: 'end' as const })),
    ...shorts.map((length) => ({ length, part: 'short' as const })),
  ];
  return fewest(wanted, (some) => fits(some, plank, kerf) && few(some, 'start') && few(some, 'end'), plank);
}

/** The fewest planks of boards without locking ends: bin packing with a kerf between each two pieces. Throws as above. */
export function fewestPlainPlanks(lengths: readonly number[], plank: number, kerf: number): number {
  const wanted = lengths.map((length): Wanted => ({ length, part: 'short' }));
  return fewest(wanted, (some) => fits(some, plank, kerf), plank);
}

/** Dynamic programming over subsets: the fewest for a set is one plank's share that holds its first piece, and the rest. */
function fewest(wanted: readonly Wanted[], oneGives: (some: readonly Wanted[]) => boolean, plank: number): number {
  if (wanted.length > MOST_PIECES) throw new RangeError(`too many pieces to try every way: ${wanted.length}`);
  const odd = wanted.find(({ length }) => !(length > 0 && length <= plank));
  if (odd) throw new RangeError(`no plank of ${plank} gives a piece of ${odd.length}`);
  const chosen = (set: number): Wanted[] => wanted.filter((_, i) => (set >> i) & 1);
  const least: number[] = [0];
  const shares = Array.from({ length: 1 << wanted.length }, (_, set) => oneGives(chosen(set)));
  for (let set = 1; set < shares.length; set++) {
    const first = set & -set;
    let best = Number.POSITIVE_INFINITY;
    for (let share = set; share > 0; share = (share - 1) & set) {
      if (share & first && shares[share]) best = Math.min(best, 1 + (least[set ^ share] ?? best));
    }
    least.push(best);
  }
  return least.at(-1) ?? 0;
}

function fits(some: readonly Wanted[], plank: number, kerf: number): boolean {
  return some.reduce((sum, { length }) => sum + length, 0) + kerf * Math.max(0, some.length - 1) <= plank;
}

function few(some: readonly Wanted[], part: Wanted['part']): boolean {
  return some.filter((one) => one.part === part).length <= 1;
}
