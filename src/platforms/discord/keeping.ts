/** Answers on their way into the store: nobody waits for it to be answered, and a press that is quicker waits for them. */

export interface Keeping {
  /** Whether the last answer could be kept: while none can, buttons would lead nowhere. */
  works(): boolean;
  /** Keeps something under an id, after what was to be kept under it before; `keep` resolves false when it could not. */
  keep(id: string, keep: () => Promise<boolean>): Promise<boolean>;
  /** Resolves when nothing is on its way any more under the id. */
  settled(id: string): Promise<void>;
}

export function keepings(): Keeping {
  const under = new Map<string, Promise<boolean>>();
  let works = true;
  return {
    works: () => works,
    async keep(id, keep) {
      // Not before the answer itself is on its way.
      const before: Promise<unknown> = under.get(id) ?? new Promise<void>((resolve) => setImmediate(resolve));
      const done = before.then(keep);
      under.set(id, done);
      works = await done;
      if (under.get(id) === done) under.delete(id);
      return works;
    },
    settled: async (id) => void (await under.get(id)),
  };
}
