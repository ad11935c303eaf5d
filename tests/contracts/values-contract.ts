/** What every adapter for plain values must do for Keyv: the library's own suite, and lists, namespaces and iterators. */

import keyvTestSuite from '@keyv/test-suite';
import { Keyv, type KeyvStoreAdapter } from 'keyv';
import * as vitest from 'vitest';

const { afterAll, beforeAll, beforeEach, describe, expect, it } = vitest;

/** An adapter under test, in an empty place of its own. */
export interface Adapter {
  /** Another adapter on the same place. */
  adapter(): KeyvStoreAdapter;
  /** A Keyv on an adapter of its own, where the namespace is not put before keys by Keyv. */
  keyv?(namespace: string): Keyv;
  /** Leaves nothing behind. */
  clear(): Promise<void>;
}

/** `libraryOwn`: the adapter is one of the library's as it is, and the library has its suite run on it. */
export function valuesContract(name: string, make: () => Promise<Adapter>, libraryOwn = false): void {
  describe(`plain values on ${name}`, () => {
    let made: Adapter;
    beforeAll(async () => {
      made = await make();
    });
    afterAll(() => made.clear());

    if (!libraryOwn) describe('the suite of the library', () => keyvTestSuite(vitest, Keyv, () => made.adapter()));

    describe('beyond the suite', () => {
      const keyv = (namespace: string): Keyv => {
        if (made.keyv) return made.keyv(namespace);
        const store = made.adapter();
        const one = new Keyv({ store, namespace, throwOnErrors: true });
        // Keyv knows by name which adapters have one, and ours is none of them.
        one.iterator ??= one.generateIterator((prefix: string) => store.iterator?.(prefix) as never);
        return one;
      };
      const all = async (one: Keyv): Promise<Record<string, unknown>> => {
        const found: Record<string, unknown> = {};
        for await (const [key, value] of one.iterator?.(undefined) ?? []) found[key] = value;
        return found;
      };

      beforeEach(async () => {
        for (const namespace of ['hall', 'closet', 'hall2']) await keyv(namespace).clear();
      });

      it('many are set, found, asked for and deleted at once', async () => {
        const hall = keyv('hall');
        await hall.setMany([
          { key: 'a', value: 1 },
          { key: 'b', value: [2] },
          { key: 'c', value: null, ttl: 3_600_000 },
        ]);
        expect(await hall.getMany(['c', 'x', 'a', 'b'])).toEqual([null, undefined, 1, [2]]);
        expect(await hall.hasMany(['a', 'x', 'b'])).toEqual([true, false, true]);
        expect([await hall.has('a'), await hall.has('x')]).toEqual([true, false]);
        expect(await hall.deleteMany(['a', 'x', 'b'])).toBe(true);
        expect(await hall.deleteMany(['a', 'x', 'b'])).toBe(false);
        expect(await hall.getMany(['a', 'b', 'c'])).toEqual([undefined, undefined, null]);
      });

      it('an iterator gives every value of its namespace, however many, and of no other', async () => {
        const [hall, other] = [keyv('hall'), keyv('hall2')];
        const values = Object.fromEntries(Array.from({ length: 600 }, (_, i) => [`k${i}`, i]));
        await other.set('k1', 'of another');
        await hall.setMany(Object.entries(values).map(([key, value]) => ({ key, value })));
        expect(await all(keyv('hall'))).toEqual(values);
        expect(await all(keyv('hall2'))).toEqual({ k1: 'of another' });
      });

      it('clearing a namespace leaves the others', async () => {
        await keyv('hall').set('a', 1);
        await keyv('hall2').set('a', 2);
        await keyv('hall').clear();
        expect([await keyv('hall').get('a'), await keyv('hall2').get('a')]).toEqual([undefined, 2]);
      });

      it('tells of errors as events and disconnects', async () => {
        const told: unknown[] = [];
        const adapter = made.adapter();
        adapter.on('error', (cause) => told.push(cause));
        await adapter.set('a', '{"value":1}');
        await adapter.disconnect?.();
        expect(told).toEqual([]);
      });
    });
  });
}
