/** The project that fault tests change: each change adds one mark, so that lost and doubled changes can be told. */

import type { Changed, Codec } from '../../../src/storage/types.ts';

/** Marks by the writer who made them. */
export type Tally = Readonly<Record<string, readonly number[]>>;

export const TALLY: Codec<Tally> = {
  read(raw) {
    if (typeof raw !== 'object' || raw === null) throw new TypeError('no tally');
    return raw as Tally;
  },
  write: (value) => value,
};

/** A change that adds a mark. */
export function mark(writer: string, number: number) {
  return (tally: Tally): Changed<Tally, number> => {
    const marks = [...(tally[writer] ?? []), number];
    return { put: { ...tally, [writer]: marks }, result: marks.length };
  };
}

/** What came of the changes that writers asked for. */
export interface Outcome {
  readonly asked: number;
  readonly acknowledged: number;
  /** Answered with “not saved, try again”. */
  readonly refused: number;
  /** Acknowledged and not there: must be none. */
  readonly lost: number;
  /** There more than once: must be none. */
  readonly doubled: number;
}

/** Sets what writers were told against what is there. */
export function outcome(acknowledged: Tally, asked: number, refused: number, found: Tally): Outcome {
  let [told, lost, doubled] = [0, 0, 0];
  for (const [writer, marks] of Object.entries(acknowledged)) {
    const there = new Set(found[writer]);
    told += marks.length;
    lost += marks.filter((one) => !there.has(one)).length;
  }
  for (const marks of Object.values(found)) doubled += marks.length - new Set(marks).size;
  return { asked, acknowledged: told, refused, lost, doubled };
}
