/** What a part of a run came to, and several parts added up. */

export interface Ran {
  readonly asks: number;
  readonly seconds: number;
  /** Exceptions and rejections that nothing caught; requests that were never answered. */
  readonly crashes: readonly string[];
  readonly hung: number;
  /** Faults told, of asks as a client sends them, and of bodies bent or damaged; some of the causes. */
  readonly faults: number;
  readonly bentFaults: number;
  readonly causes: readonly string[];
  /** By lane and status, or what an answer was. */
  readonly statuses: Readonly<Record<string, number>>;
  /** Milliseconds to a first and a last answer, less what other work on the machine took, and the asks that took them. */
  readonly first: Slowest;
  readonly last: Slowest;
  /** Milliseconds of processor time that reading took at most, without the sum that follows. */
  readonly read: Slowest;
  /** Megabytes of heap after a collection, and of the process, at a tenth and at the end. */
  readonly heap: readonly [number, number];
  readonly resident: readonly [number, number];
}

export interface Slowest {
  readonly ms: number;
  readonly text: string;
}

export function slower(a: Slowest, b: Slowest): Slowest {
  return a.ms >= b.ms ? a : b;
}

/** Runs in several processes as one: the slowest of all, and the memory of the one that grew most. */
export function together(runs: readonly Ran[]): Ran {
  const [first, ...rest] = runs;
  if (!first) throw new Error('nothing ran');
  return rest.reduce((sum, one) => {
    const grew = (ran: Ran): number => ran.heap[1] - ran.heap[0];
    const most = grew(one) > grew(sum) ? one : sum;
    const statuses = { ...sum.statuses };
    for (const [name, count] of Object.entries(one.statuses)) statuses[name] = (statuses[name] ?? 0) + count;
    return {
      asks: sum.asks + one.asks,
      seconds: Math.max(sum.seconds, one.seconds),
      crashes: [...sum.crashes, ...one.crashes],
      hung: sum.hung + one.hung,
      faults: sum.faults + one.faults,
      bentFaults: sum.bentFaults + one.bentFaults,
      causes: [...new Set([...sum.causes, ...one.causes])],
      statuses,
      first: slower(sum.first, one.first),
      last: slower(sum.last, one.last),
      read: slower(sum.read, one.read),
      heap: most.heap,
      resident: most.resident,
    };
  }, first);
}
