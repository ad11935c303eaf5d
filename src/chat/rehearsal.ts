/** A request run for the sake of its problems alone: it ends where what takes long would begin, and nothing of it is kept. */

import type { Changed, Codec, Kept, Shelf, Store } from '../storage/types.ts';

/** Everything that was typed has been read and goes together: what takes long would begin here. */
export class Reached extends Error {
  override readonly name = 'Reached';
}

/** The same store to whoever reads it; what is written is seen by them alone, and is gone with them. */
export function unwritten(store: Store): Store {
  return { kept: keptOver(store.kept), shelf: (kind, codec) => shelfOver(store.shelf(kind, codec), codec) };
}

const GONE = Symbol('gone');

function keptOver(kept: Kept): Kept {
  const own = new Map<string, unknown>();
  const get = async (key: string): Promise<unknown> => {
    if (!own.has(key)) return kept.get(key);
    const value = own.get(key);
    return value === GONE ? undefined : value;
  };
  return {
    get,
    set: async (key, value) => void own.set(key, value),
    async delete(key) {
      const there = (await get(key)) !== undefined;
      own.set(key, GONE);
      return there;
    },
    async claim(key) {
      if ((await get(key)) !== undefined) return false;
      own.set(key, true);
      return true;
    },
  };
}

function shelfOver<T>(shelf: Shelf<T>, codec: Codec<T>): Shelf<T> {
  const own = new Map<string, unknown>();
  const load = async (id: string): Promise<T | undefined> => {
    if (!own.has(id)) return shelf.load(id);
    const raw = own.get(id);
    return raw === GONE ? undefined : codec.read(raw);
  };
  return {
    load,
    async create(id, value) {
      if ((await load(id)) !== undefined) return false;
      own.set(id, codec.write(value));
      return true;
    },
    async change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined> {
      const value = await load(id);
      if (value === undefined) return undefined;
      const { put, result } = change(value);
      if (put !== undefined) own.set(id, codec.write(put));
      return result;
    },
    async remove(id) {
      const there = (await load(id)) !== undefined;
      own.set(id, GONE);
      return there;
    },
    ids: () => shelf.ids(),
  };
}

/** The same store, each thing read from it once: for several who read the same, one after the other. */
export function readOnce(store: Store): Store {
  const { kept } = store;
  const shelves = new Map<string, Shelf<unknown>>();
  return {
    kept: {
      get: once((key) => kept.get(key)),
      set: (key, value, milliseconds) => kept.set(key, value, milliseconds),
      delete: (key) => kept.delete(key),
      claim: (key, milliseconds) => kept.claim(key, milliseconds),
    },
    shelf<T>(kind: string, codec: Codec<T>): Shelf<T> {
      const before = shelves.get(kind);
      if (before) return before as Shelf<T>;
      const shelf = store.shelf(kind, codec);
      const reads: Shelf<T> = {
        load: once((id) => shelf.load(id)),
        create: (id, value) => shelf.create(id, value),
        change: (id, change) => shelf.change(id, change),
        remove: (id) => shelf.remove(id),
        ids: () => shelf.ids(),
      };
      shelves.set(kind, reads as Shelf<unknown>);
      return reads;
    },
  };
}

function once<T>(read: (key: string) => Promise<T>): (key: string) => Promise<T> {
  const known = new Map<string, Promise<T>>();
  return (key) => {
    const before = known.get(key) ?? read(key);
    known.set(key, before);
    return before;
  };
}
