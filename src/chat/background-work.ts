/** Work that no answer waits for: started once the answer is on its way, finished before shutdown. */

interface Late {
  later(work: () => Promise<unknown>): void;
  /** Resolves when all of it is done. */
  done(): Promise<void>;
}

export function lateWork(): Late {
  const begun = new Set<Promise<unknown>>();
  return {
    later(work) {
      const done = new Promise((resolve) => setImmediate(resolve)).then(work).finally(() => begun.delete(done));
      begun.add(done);
    },
    done: async () => void (await Promise.all(begun)),
  };
}
