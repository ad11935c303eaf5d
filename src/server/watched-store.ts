/** A store whose operations are timed, and which is otherwise the store it was. */

import { type Kept, Outage, type Shelf, type Store } from '../storage/types.ts';

/** Told of each operation that ended, and how. */
export type Stored = (operation: string, ended: 'done' | 'outage' | 'fault', milliseconds: number) => void;

/** The same store, its operations told of. */
export function watchedStore<S extends Store>(store: S, stored: Stored): S {
  async function timed<T>(operation: string, work: () => Promise<T>): Promise<T> {
    const began = performance.now();
    try {
      const done = await work();
      stored(operation, 'done', performance.now() - began);
      return done;
    } catch (cause) {
      stored(operation, cause instanceof Outage ? 'outage' : 'fault', performance.now() - began);
      throw cause;
    }
  }
  const { kept } = store;
  const watchedKept: Kept = {
    get: (key) => timed('get', () => kept.get(key)),
    set: (key, value, milliseconds) => timed('set', () => kept.set(key, value, milliseconds)),
    delete: (key) => timed('delete', () => kept.delete(key)),
    claim: (key, milliseconds) => timed('claim', () => kept.claim(key, milliseconds)),
  };
  const shelf: Store['shelf'] = <T>(...named: Parameters<typeof store.shelf<T>>): Shelf<T> => {
    const one = store.shelf<T>(...named);
    return {
      load: (id) => timed('load', () => one.load(id)),
      create: (id, value) => timed('create', () => one.create(id, value)),
      change: (id, change) => timed('change', () => one.change(id, change)),
      remove: (id) => timed('remove', () => one.remove(id)),
      ids: () => one.ids(),
    };
  };
  return { ...store, kept: watchedKept, shelf };
}
