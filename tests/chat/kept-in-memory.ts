/** Kept values in memory, on a clock that the test moves. */

import type { KeyValueStore } from '../../src/storage/types.ts';

/** Kept values; `pass` lets time go by. */
export function keptInMemory(): KeyValueStore & { pass(milliseconds: number): void } {
  const values = new Map<string, { json: string; until: number }>();
  let now = 0;
  const live = (key: string) => {
    const found = values.get(key);
    return found && found.until > now ? found : undefined;
  };
  const set = (key: string, value: unknown, milliseconds = Number.POSITIVE_INFINITY): void => {
    values.set(key, { json: JSON.stringify(value), until: now + milliseconds });
  };
  return {
    get: async (key) => {
      const found = live(key);
      return found && JSON.parse(found.json);
    },
    set: async (key, value, milliseconds) => set(key, value, milliseconds),
    delete: async (key) => {
      const there = live(key) !== undefined;
      values.delete(key);
      return there;
    },
    claim: async (key, milliseconds) => {
      if (live(key)) return false;
      set(key, true, milliseconds);
      return true;
    },
    pass: (milliseconds) => {
      now += milliseconds;
    },
  };
}
