/** A store in memory that forgets its oldest plain values, so that a long run measures the bot's memory and not the store's. */

import type { Codec, KeyValueStore, RecordStore, Store } from '../../../src/storage/types.ts';

/** Plain values, kept answers above all, that are remembered. */
const MOST_KEPT = 3_000;

export function memoryStore(): Store {
  const records = new Map<string, string>();
  return { kept: kept(), shelf: (kind, codec) => shelf(records, kind, codec) };
}

function kept(): KeyValueStore {
  const values = new Map<string, string>();
  const set = (key: string, value: unknown): void => {
    values.delete(key);
    values.set(key, JSON.stringify(value));
    const [oldest] = values.keys();
    if (values.size > MOST_KEPT && oldest !== undefined) values.delete(oldest);
  };
  return {
    async get(key) {
      const json = values.get(key);
      return json === undefined ? undefined : JSON.parse(json);
    },
    set: async (key, value) => set(key, value),
    delete: async (key) => values.delete(key),
    async claim(key) {
      if (values.has(key)) return false;
      set(key, true);
      return true;
    },
  };
}

function shelf<T>(records: Map<string, string>, kind: string, codec: Codec<T>): RecordStore<T> {
  const name = (id: string): string => `${kind}/${id}`;
  const load = (id: string): T | undefined => {
    const json = records.get(name(id));
    return json === undefined ? undefined : codec.read(JSON.parse(json));
  };
  const put = (id: string, value: T): void => void records.set(name(id), JSON.stringify(codec.write(value)));
  return {
    load: async (id) => load(id),
    async create(id, value) {
      if (records.has(name(id))) return false;
      put(id, value);
      return true;
    },
    async change(id, change) {
      const value = load(id);
      if (value === undefined) return undefined;
      const { put: next, result } = change(value);
      if (next !== undefined) put(id, next);
      return result;
    },
    remove: async (id) => records.delete(name(id)),
    async *ids() {
      for (const key of records.keys()) if (key.startsWith(`${kind}/`)) yield key.slice(kind.length + 1);
    },
  };
}
