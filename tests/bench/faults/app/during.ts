/** What people saw while something went wrong, how long until all was well, and whether anything was lost. */

import type { AnsweredRequest } from '../../load/asked.ts';
import { type Ledger, ledger } from '../../load/people.ts';
import { flawOf, type Known } from '../../load/right.ts';
import { crowd, type Fate, fateOf } from './crowd.ts';
import type { Hosted } from './hosted.ts';

/** What came of a fault. */
export interface Seen {
  /** Seconds from when it was over, or was done, until both chats answered sums and kept notes again. */
  readonly back: number;
  /** Asks from the fault until all was well, by their fates. */
  readonly sums: Readonly<Record<Fate, number>>;
  readonly notes: Readonly<Record<Fate, number>>;
  /** Seconds to the first answer, the longest of those. */
  readonly slowest: number;
  /** What they were told instead of an answer, each once. */
  readonly told: readonly string[];
  readonly ledger: Ledger;
}

let crowds = 0;

/** Lets people ask, does the fault and takes it away again, and waits until all is well. */
export async function during(hosted: Hosted, fault: () => Promise<unknown>): Promise<Seen> {
  const { chats, known, place } = hosted;
  const asking = await crowd(chats, ++crowds);
  await asking.well(performance.now(), known);
  const from = performance.now();
  await fault();
  const over = performance.now();
  const back = await asking.well(over, known);
  await asking.stop();
  const met = asking.asked.filter(
    ({ since, first = Number.POSITIVE_INFINITY }) => since + first >= from && since <= over + back,
  );
  return {
    back: back / 1000,
    sums: counted(met.filter(({ person }) => !person.keeps)),
    notes: counted(met.filter(({ person }) => person.keeps)),
    slowest: Math.max(0, ...met.map(({ first = 0 }) => first)) / 1000,
    told: [...new Set(met.flatMap((asked) => (fateOf(asked, known) === 'right' ? [] : [wordsOf(asked, known)])))],
    ledger: await ledger(asking.all, asking.asked, place),
  };

  function counted(some: readonly AnsweredRequest[]): Record<Fate, number> {
    const counts = { right: 0, told: 0, refused: 0, silent: 0, wrong: 0 };
    for (const asked of some) counts[fateOf(asked, known)] += 1;
    return counts;
  }
}

/** What they saw in its place, without the reference that each has of its own. */
function wordsOf(asked: AnsweredRequest, known: Known): string {
  const { said, refused } = asked;
  const [first = refused ?? 'nothing'] = said.lines;
  const told = fateOf(asked, known) === 'wrong' ? (flawOf(asked, known) ?? first) : first;
  return told.replace(/[Rr]eference: \S+?\.?$/, 'reference …').slice(0, 300);
}
