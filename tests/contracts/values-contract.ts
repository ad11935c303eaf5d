/** What every adapter for plain values must do for Keyv, as Keyv's documentation of its interface says: values, time, lists, namespaces, iterators. */

import { Keyv, type KeyvStoreAdapter } from 'keyv';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';

/** An adapter under test, in an empty place of its own. */
export interface Adapter {
  /** Another adapter on the same place. */
  adapter(): KeyvStoreAdapter;
  /** A Keyv on an adapter of its own, where the namespace is not put before keys by Keyv. */
  keyv?(namespace: string): Keyv;
  /** Leaves nothing behind. */
  clear(): Promise<void>;
}

/** Each value with what an adapter may trip over in it. */
const VALUES: readonly (readonly [string, unknown])[] = [
  ['false', false],
  ['null', null],
  ['a number', 0],
  ['nothing', ''],
  ['an object', { a: [1, { b: null }], 'c d': '\u2028' }],
  ['quotes', `it's "so" \`far\``],
  ['bytes', Buffer.from([0, 255, 39, 34, 58])],
  ['bytes that read like text of its own', Buffer.from(':base64:aGFsbA==')],
  ['an object with bytes', { bytes: Buffer.from('hall') }],
];

/** Checks an adapter. */
export function valuesContract(name: string, make: () => Promise<Adapter>): void {
  describe(`plain values on ${name}`, () => {
    let made: Adapter;
    beforeAll(async () => {
      made = await make();
    });
    afterAll(() => made.clear());

    describe('through Keyv', () => {
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

      afterEach(() => {
        vi.useRealTimers();
      });
      beforeEach(async () => {
        for (const namespace of ['hall', 'closet', 'hall2']) await keyv(namespace).clear();
      });

      for (const [what, value] of VALUES) {
        it(`${what} comes back as it was kept`, async () => {
          const hall = keyv('hall');
          expect(await hall.set('a', value)).toBe(true);
          expect(await hall.get('a')).toEqual(value);
          expect(await hall.has('a')).toBe(true);
        });
      }

      it('a key may hold quotes, colons and words of SQL', async () => {
        const hall = keyv('hall');
        for (const key of [`'; DROP TABLE x; --`, 'a:b:c', `"'`, 'hall2:k', '%_']) {
          await hall.set(key, key);
          expect(await hall.get(key)).toBe(key);
          expect(await hall.delete(key)).toBe(true);
          expect(await hall.get(key)).toBeUndefined();
        }
      });

      it('what is not there is undefined, and deleting it false', async () => {
        const hall = keyv('hall');
        expect([await hall.get('x'), await hall.has('x'), await hall.delete('x')]).toEqual([undefined, false, false]);
      });

      it('a later value stands in place of an earlier one, and of its time', async () => {
        const hall = keyv('hall');
        await hall.set('a', 1, 60_000);
        await hall.set('a', 2);
        vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 120_000 });
        expect(await hall.get('a')).toBe(2);
      });

      it('a value goes with its time', async () => {
        const hall = keyv('hall');
        await hall.set('a', 1, 60_000);
        await hall.set('b', 2);
        expect(await hall.getMany(['a', 'b'])).toEqual([1, 2]);
        vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 60_001 });
        expect(await hall.getMany(['a', 'b'])).toEqual([undefined, 2]);
        expect(await hall.get('a')).toBeUndefined();
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
        const given: unknown[] = [];
        const adapter = made.adapter();
        adapter.on('error', (cause) => given.push(cause));
        await adapter.set('a', '{"value":1}');
        await adapter.disconnect?.();
        expect(given).toEqual([]);
      });
    });
  });
}
