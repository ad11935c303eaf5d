/** A store in memory: records as JSON with a revision, read through their codec as any store reads them. */

import { type Codec, type KeyValueStore, Outage, type RecordStore, type Store } from '../../src/storage/types.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';

/** A store in memory; `down` makes it answer nothing, `reads` counts what was loaded, `records` is what it holds as written. */
export interface StoreInMemory extends Store {
  readonly kept: KeyValueStore & { pass(milliseconds: number): void };
  /** By kind and id. */
  readonly records: Map<string, string>;
  down: boolean;
  reads: number;
  /** Does something between the load and the put of the next change, once: another who comes first. */
  between: (() => Promise<unknown>) | undefined;
}

export function storeInMemory(): StoreInMemory {
  const records = new Map<string, string>();
  const kept = keptInMemory();
  const store: StoreInMemory = {
    records,
    down: false,
    reads: 0,
    between: undefined,
    kept: {
      get: (key) => up().then(() => kept.get(key)),
      set: (key, value, milliseconds) => up().then(() => kept.set(key, value, milliseconds)),
      delete: (key) => up().then(() => kept.delete(key)),
      claim: (key, milliseconds) => up().then(() => kept.claim(key, milliseconds)),
      pass: (milliseconds) => kept.pass(milliseconds),
    },
    shelf: (kind, codec) => shelf(kind, codec),
  };
  const up = async (): Promise<void> => {
    if (store.down) throw new Outage('the store is down');
  };
  function shelf<T>(kind: string, codec: Codec<T>): RecordStore<T> {
    const key = (id: string): string => `${kind}/${id}`;
    const load = async (id: string): Promise<T | undefined> => {
      await up();
      store.reads++;
      const json = records.get(key(id));
      return json === undefined ? undefined : codec.read(JSON.parse(json));
    };
    return {
      load,
      async create(id, value) {
        await up();
        if (records.has(key(id))) return false;
        records.set(key(id), JSON.stringify(codec.write(value)));
        return true;
      },
      async change(id, change) {
        for (;;) {
          const before = records.get(key(id));
          const value = await load(id);
          if (value === undefined) return undefined;
          const { put, result } = change(value);
          const { between } = store;
          store.between = undefined;
          await between?.();
          if (records.get(key(id)) !== before) continue;
          if (put !== undefined) records.set(key(id), JSON.stringify(codec.write(put)));
          return result;
        }
      },
      async remove(id) {
        await up();
        return records.delete(key(id));
      },
      async *ids() {
        await up();
        for (const one of records.keys()) if (one.startsWith(`${kind}/`)) yield one.slice(kind.length + 1);
      },
    };
  }
  return store;
}
