/** What every back end of the store must do, whichever it is. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { StoredRecord } from '../../src/storage/engine.ts';
import type { OpenStore } from '../../src/storage/store.ts';
import { type Codec, RecordDamaged, type RecordStore, RecordTooNew } from '../../src/storage/types.ts';
import { joiningContract } from './joining-contract.ts';

/** A back end under test: an empty place of its own. */
export interface Backend {
  /** A store on the place; `faults` takes what whoever runs the bot is told. */
  open(faults: unknown[]): OpenStore;
  /** Puts things there behind the store's back, while no store is open. */
  plant(held: readonly StoredRecord[]): Promise<void>;
  /** All that is there, read as a backup reads it. */
  held(): Promise<readonly StoredRecord[]>;
  /** Lets so many milliseconds go by. */
  pass(milliseconds: number): Promise<void>;
  /** Leaves nothing behind. */
  clear(): Promise<void>;
  /** Whether a second store may be open on the place at the same time. */
  readonly shared: boolean;
}

/** A record as the tests keep it, in its second version; the first had no list. */
export interface Count {
  readonly version: 2;
  readonly sum: number;
  readonly notes: readonly string[];
}

const COUNTS: Codec<Count> = {
  read(raw) {
    const { version, sum, notes } = raw as { version: number; sum: unknown; notes: unknown };
    if (version > 2) throw new RecordTooNew(`version ${version}`);
    if (typeof sum !== 'number') throw new TypeError('no sum');
    if (version === 1) return { version: 2, sum, notes: [] };
    if (!Array.isArray(notes)) throw new TypeError('no notes');
    return { version: 2, sum, notes };
  },
  write: (value) => value,
};

const ZERO: Count = { version: 2, sum: 0, notes: [] };
const add = (by: number) => (value: Count) => ({ put: { ...value, sum: value.sum + by }, result: value.sum + by });

export function storeContract(name: string, make: () => Promise<Backend>): void {
  describe(`the store on ${name}`, () => {
    let backend: Backend;
    let faults: unknown[];
    const open: OpenStore[] = [];
    const store = (): OpenStore => {
      const opened = backend.open(faults);
      open.push(opened);
      return opened;
    };
    const closeAll = async () => {
      await Promise.all(open.splice(0).map((one) => one.close()));
    };

    beforeEach(async () => {
      faults = [];
      backend = await make();
    });
    afterEach(async () => {
      await closeAll();
      await backend.clear();
    });

    describe('plain values', () => {
      it.each<[string, unknown]>([
        ['a text', 'wall 3: 12\' 6 1/2" — “bay”, é, 🪚'],
        ['a text like a mark of the library', ':base64:AAAA'],
        ['an object', { rooms: [{ name: 'hall', ticks: 1_365_504 }], open: true, none: null }],
        ['a list', [1, 'two', [3]]],
        ['nought', 0],
        ['no', false],
        ['null', null],
        ['a long text', 'x'.repeat(200_000)],
      ])('%s comes back as it was', async (_what, value) => {
        const { kept } = store();
        await kept.set('told', value);
        expect(await kept.get('told')).toEqual(value);
      });

      it('are still there when the store is opened again', async () => {
        await store().kept.set('told', 'once');
        await closeAll();
        expect(await store().kept.get('told')).toBe('once');
      });

      it('are not there before, after delete, or under another key', async () => {
        const { kept } = store();
        expect(await kept.get('told')).toBeUndefined();
        await kept.set('told', 1);
        await kept.set('told', 2);
        expect([await kept.get('told'), await kept.get('told2'), await kept.get('tol')]).toEqual([
          2,
          undefined,
          undefined,
        ]);
        expect(await kept.delete('told')).toBe(true);
        expect(await kept.delete('told')).toBe(false);
        expect(await kept.get('told')).toBeUndefined();
      });

      it('take any key: with spaces and colons, long, empty, or in any script', async () => {
        const { kept } = store();
        const keys = [
          '',
          ' ',
          'a',
          'a:b',
          'b:a',
          'a::b',
          `'`,
          '%',
          '_',
          'ключ',
          'k'.repeat(5000),
          'k'.repeat(5001),
          '\u0000',
        ];
        for (const [i, key] of keys.entries()) await kept.set(key, i);
        expect(await Promise.all(keys.map((key) => kept.get(key)))).toEqual(keys.map((_, i) => i));
      });

      it('live as long as they are told to', async () => {
        const { kept } = store();
        await kept.set('short', 1, 40);
        await kept.set('long', 2, 3_600_000);
        await kept.set('at once', 3, 0);
        await kept.set('made good', 4, 40);
        await kept.set('made good', 5);
        await backend.pass(60);
        const found = await Promise.all(['short', 'long', 'at once', 'made good'].map((key) => kept.get(key)));
        expect(found).toEqual([undefined, 2, undefined, 5]);
        expect(await kept.delete('short')).toBe(false);
      });

      it('are claimed by exactly one of many, and again once the time is over or the claim is let go', async () => {
        const all = backend.shared ? [store(), store(), store()] : [store()];
        const [{ kept }] = all as [OpenStore];
        const claims = Array.from({ length: 60 }, (_, i) => all[i % all.length]?.kept.claim('job', 3_600_000));
        expect((await Promise.all(claims)).filter(Boolean)).toHaveLength(1);
        expect(await kept.claim('other job', 40)).toBe(true);
        await backend.pass(60);
        const again = Array.from({ length: 20 }, (_, i) => all[i % all.length]?.kept.claim('other job', 3_600_000));
        expect((await Promise.all(again)).filter(Boolean)).toHaveLength(1);
        expect(await kept.delete('job')).toBe(true);
        expect(await kept.claim('job', 1000)).toBe(true);
        await kept.set('taken', 1);
        expect(await kept.claim('taken', 1000)).toBe(false);
        expect(await kept.get('taken')).toBe(1);
      });

      it('that cannot be read count as not there, and are told', async () => {
        await backend.plant([{ kept: { key: 'torn', text: '{"value":' } }]);
        const { kept } = store();
        expect(await kept.get('torn')).toBeUndefined();
        expect(faults).toHaveLength(1);
        await kept.set('torn', 1);
        expect(await kept.get('torn')).toBe(1);
      });
    });

    describe('records', () => {
      const shelf = (): RecordStore<Count> => store().shelf('count', COUNTS);

      it('are created once, loaded, and removed once', async () => {
        const counts = shelf();
        expect(await counts.load('a')).toBeUndefined();
        expect(await counts.create('a', { ...ZERO, sum: 7 })).toBe(true);
        expect(await counts.create('a', { ...ZERO, sum: 8 })).toBe(false);
        expect(await counts.load('a')).toEqual({ ...ZERO, sum: 7 });
        expect(await counts.remove('a')).toBe(true);
        expect(await counts.remove('a')).toBe(false);
        expect(await counts.load('a')).toBeUndefined();
        expect(await counts.create('a', ZERO)).toBe(true);
      });

      it('created by many at once are created by one', async () => {
        const all = backend.shared ? [shelf(), shelf()] : [shelf()];
        const tries = Array.from({ length: 20 }, (_, i) => all[i % all.length]?.create('a', { ...ZERO, sum: i }));
        const made = await Promise.all(tries);
        expect(made.filter(Boolean)).toHaveLength(1);
        expect((await all[0]?.load('a'))?.sum).toBe(made.indexOf(true));
      });

      it('are still there when the store is opened again', async () => {
        const counts = shelf();
        await counts.create('a', ZERO);
        await counts.change('a', add(5));
        await closeAll();
        expect((await shelf().load('a'))?.sum).toBe(5);
      });

      it('of another kind are others', async () => {
        const one = store();
        await one.shelf('count', COUNTS).create('a', ZERO);
        const other = one.shelf('counter', COUNTS);
        expect(await other.load('a')).toBeUndefined();
        expect(await listed(other.ids())).toEqual([]);
      });

      it('are listed, each once, however many', async () => {
        const counts = shelf();
        const ids = Array.from({ length: 700 }, (_, i) => `id-${i}`);
        await Promise.all(ids.map((id) => counts.create(id, ZERO)));
        await counts.remove('id-3');
        expect(await listed(counts.ids())).toEqual(ids.filter((id) => id !== 'id-3').sort());
      });

      it('are found under the ids they were made with, and no others are asked of the engine', async () => {
        const counts = shelf();
        for (const id of ['a:b', 'a', '%', "'", 'A', '*', '[a]', '\\', 'k'.repeat(200)]) {
          expect(await counts.create(id, { ...ZERO, notes: [id] })).toBe(true);
          expect((await counts.load(id))?.notes).toEqual([id]);
        }
        for (const id of ['', 'a b', 'é', '\u0000', 'k'.repeat(201)]) {
          expect(await counts.load(id)).toBeUndefined();
          expect(await counts.change(id, add(1))).toBeUndefined();
          expect(await counts.remove(id)).toBe(false);
          await expect(counts.create(id, ZERO)).rejects.toThrow(RangeError);
        }
      });

      it('are changed by many at once without losing a change', async () => {
        const all = backend.shared ? [shelf(), shelf(), shelf()] : [shelf()];
        await all[0]?.create('a', ZERO);
        const requested = Array.from({ length: 120 }, (_, i) => all[i % all.length]?.change('a', add(1)));
        const given = await Promise.all(requested);
        expect((await all[0]?.load('a'))?.sum).toBe(120);
        expect([...given].sort((a, b) => Number(a) - Number(b))).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
      });

      it('are not put when the change puts nothing, and not by a change that throws, whoever comes along', async () => {
        const counts = shelf();
        await counts.create('a', ZERO);
        const before = await backendRevision('a');
        expect(await counts.change('a', (value) => ({ result: value.notes.length }))).toBe(0);
        expect(await backendRevision('a')).toEqual(before);
        const wrong = () => {
          throw new Error('no such room');
        };
        const [good, bad, late] = await Promise.allSettled([
          counts.change('a', add(1)),
          counts.change('a', wrong),
          counts.change('a', add(1)),
        ]);
        expect([good.status, bad.status, late.status]).toEqual(['fulfilled', 'rejected', 'fulfilled']);
        expect((await counts.load('a'))?.sum).toBe(2);
      });

      it('that are not there are not changed', async () => {
        expect(await shelf().change('a', add(1))).toBeUndefined();
      });

      it('of an earlier version are read, and put as the later one', async () => {
        await backend.plant([record('old', { version: 1, sum: 4 })]);
        const counts = shelf();
        expect(await counts.load('old')).toEqual({ ...ZERO, sum: 4 });
        expect(await counts.change('old', add(1))).toBe(5);
        await closeAll();
        expect(await textOf('old')).toBe(JSON.stringify({ version: 2, sum: 5, notes: [] }));
      });

      it('that are damaged are copied aside and told once, and hinder no other', async () => {
        const torn = '{"version":2,"sum":';
        await backend.plant([
          { record: { kind: 'count', id: 'torn', rev: 5, text: torn } },
          record('bent', { version: 2, sum: 'four' }),
          record('good', ZERO),
        ]);
        const counts = shelf();
        for (const id of ['torn', 'bent', 'torn']) await expect(counts.load(id)).rejects.toThrow(RecordDamaged);
        await expect(counts.change('torn', add(1))).rejects.toThrow(RecordDamaged);
        expect(faults).toHaveLength(2);
        expect(await listed(counts.ids())).toEqual(['bent', 'good', 'torn']);
        expect(await counts.change('good', add(1))).toBe(1);
        expect(await counts.create('torn', ZERO)).toBe(false);
        await closeAll();
        expect(await textOf('torn')).toBe(torn);
        const aside = (await backend.held()).flatMap((one) =>
          'record' in one && one.record.kind === 'aside' ? [one.record.text] : [],
        );
        expect(aside.map((text) => (JSON.parse(text) as { id: string }).id).sort()).toEqual(['bent', 'torn']);
        expect(aside.some((text) => (JSON.parse(text) as { text: string }).text === torn)).toBe(true);
      });

      it('of a later version are refused and left as they are', async () => {
        const late = { version: 3, sum: 4, tiles: true };
        await backend.plant([record('late', late)]);
        const counts = shelf();
        await expect(counts.load('late')).rejects.toThrow(RecordTooNew);
        await expect(counts.change('late', add(1))).rejects.toThrow(RecordTooNew);
        expect(faults).toEqual([]);
        await closeAll();
        expect(await textOf('late')).toBe(JSON.stringify(late));
        expect(await backend.held()).toHaveLength(1);
      });
    });

    joiningContract(() => {
      const one = store();
      return [one, backend.shared ? store() : one];
    });

    it('answers a ping, and is closed twice without harm', async () => {
      const one = store();
      await one.ping();
      await one.close();
      await one.close();
    });

    async function textOf(id: string): Promise<string | undefined> {
      for (const one of await backend.held()) if ('record' in one && one.record.id === id) return one.record.text;
      return undefined;
    }

    async function backendRevision(id: string): Promise<number | undefined> {
      for (const one of await backend.held()) if ('record' in one && one.record.id === id) return one.record.rev;
      return undefined;
    }
  });
}

function record(id: string, value: unknown): StoredRecord {
  return { record: { kind: 'count', id, rev: 1, text: JSON.stringify(value) } };
}

async function listed(ids: AsyncIterable<string>): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const id of ids) found.push(id);
  return found.sort();
}
