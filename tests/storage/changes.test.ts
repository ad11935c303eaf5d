/** Changes when answers get lost and others come first: each is made once, told only when it is there, and given up in bounded time. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Engine, PATIENCE } from '../../src/storage/engine.ts';
import { shelfOn } from '../../src/storage/shelf.ts';
import { type Codec, Outage } from '../../src/storage/types.ts';
import { type Fate, scriptedEngine, steppedClock } from './scripted-engine.ts';

const SUM: Codec<number> = { read: (raw) => Number(raw), write: (value) => value };
const add = (by: number) => (value: number) => ({ put: value + by, result: value + by });
const fail = (cause: unknown): never => {
  throw cause;
};

function shelf() {
  const engine = scriptedEngine();
  const clock = steppedClock();
  engine.overtake = ({ rev, text }) => ({ rev: rev + 1, text: String(Number(text) + 1000) });
  const terms = { clock, patience: PATIENCE, fault: fail };
  return { engine, clock, sums: shelfOn(async () => engine as unknown as Engine, 'sum', SUM, terms) };
}

const value = ({ engine }: ReturnType<typeof shelf>): number => Number(engine.rows.get('sum/a')?.text);

describe('a change', () => {
  it.each<[string, Fate[], number]>([
    ['goes through', [], 1],
    ['is tried again when reading is lost', ['lost', 'lost'], 1],
    ['is tried again when the put is lost on its way', ['well', 'lost', 'lost'], 1],
    ['is made once when the put was done and its answer lost', ['well', 'deaf'], 1],
    ['is made once when the answer is lost again and again', ['well', 'deaf', 'lost', 'well', 'lost', 'deaf'], 1],
    ['is made anew when another came first', ['well', 'overtaken'], 1001],
    ['is made anew when another came first after a loss', ['well', 'lost', 'overtaken'], 1001],
    ['is made once when another came after it, and its answer was lost', ['well', 'deaf', 'overtaken'], 1001],
  ])('%s', async (_what, fates, sum) => {
    const all = shelf();
    await all.sums.create('a', 0);
    all.engine.fates.push(...fates);
    await all.sums.change('a', add(1));
    expect(value(all)).toBe(sum);
  });

  it('is given up in bounded time while nothing answers, with waits that grow and are spread, and then works again', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    all.engine.fates.push(...Array<Fate>(1000).fill('lost'));
    await expect(all.sums.change('a', add(1))).rejects.toThrow(Outage);
    const { waits } = all.clock;
    const sum = waits.reduce((total, wait) => total + wait, 0);
    expect(sum).toBeGreaterThanOrEqual(PATIENCE.lost);
    expect(sum).toBeLessThan(PATIENCE.lost + 1001);
    expect(waits.slice(0, 3)).toEqual([15, 30, 60]);
    expect(Math.max(...waits)).toBeLessThanOrEqual(1000);
    all.engine.fates.length = 0;
    expect(await all.sums.change('a', add(1))).toBe(1);
  });

  it('is given up when others never cease to come first', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    all.engine.fates.push(...Array.from({ length: 10_000 }, (_, i): Fate => (i % 2 === 0 ? 'well' : 'overtaken')));
    await expect(all.sums.change('a', add(1))).rejects.toThrow(/kept changing/);
    expect(all.clock.now()).toBeLessThan(PATIENCE.contended + 1000);
  });

  it('is told its own fault at once', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    const wrong = all.sums.change('a', () => fail(new RangeError('no wall 9')));
    await expect(wrong).rejects.toThrow('no wall 9');
    expect(all.clock.waits).toEqual([]);
  });

  it('that comes with others is put with them', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    const before = all.engine.requested;
    const given = await Promise.all(Array.from({ length: 64 }, () => all.sums.change('a', add(1))));
    expect(given).toEqual(Array.from({ length: 64 }, (_, i) => i + 1));
    // The first alone, the other 63 together: a read and a put each.
    expect(all.engine.requested - before).toBe(4);
  });

  it('of one record does not wait for another record', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    await all.sums.create('b', 0);
    const given: string[] = [];
    all.engine.fates.push('lost');
    const [first, second] = [all.sums.change('a', add(1)), all.sums.change('b', add(1))];
    await Promise.all([first.then(() => given.push('a')), second.then(() => given.push('b'))]);
    expect(given).toEqual(['b', 'a']);
  });
});

describe('whatever is lost, and whoever comes first', () => {
  const fates = fc.array(fc.constantFrom<Fate>('well', 'well', 'lost', 'deaf', 'overtaken'), { maxLength: 120 });

  it('an acknowledged change is there once, a refused one once at most', async () => {
    const law = fc.asyncProperty(fates, fc.integer({ min: 1, max: 9 }), async (script, changes) => {
      const all = shelf();
      await all.sums.create('a', 0);
      all.engine.overtake = ({ rev, text }) => ({ rev: rev + 1, text });
      all.engine.fates.push(...script);
      // Each change adds its own power of four, so that the sum tells how often each was made, up to three times.
      const given = await Promise.allSettled(
        Array.from({ length: changes }, (_, i) => all.sums.change('a', add(4 ** i))),
      );
      given.forEach(({ status }, i) => {
        const times = Math.floor(value(all) / 4 ** i) % 4;
        expect(times).toBeLessThanOrEqual(1);
        if (status === 'fulfilled') expect(times).toBe(1);
      });
    });
    await fc.assert(law, { numRuns: 500 });
  });

  it('one create of two is told that it made the record, and one remove of two that it removed it', async () => {
    const law = fc.asyncProperty(fates, async (script) => {
      const all = shelf();
      all.engine.fates.push(...script.filter((fate) => fate !== 'overtaken').slice(0, 6));
      const made = await Promise.all([all.sums.create('a', 1), all.sums.create('a', 2)]);
      expect(made.filter(Boolean)).toHaveLength(1);
      expect(value(all)).toBe(made.indexOf(true) + 1);
      all.engine.fates.push(...script.filter((fate) => fate !== 'overtaken').slice(6, 12));
      const gone = await Promise.all([all.sums.remove('a'), all.sums.remove('a')]);
      expect(gone.filter(Boolean)).toHaveLength(1);
    });
    await fc.assert(law, { numRuns: 300 });
  });

  it('a record made anew under an old id is not changed by what was sent for the old one', async () => {
    const all = shelf();
    await all.sums.create('a', 0);
    const old = all.engine.rows.get('sum/a');
    await all.sums.remove('a');
    await all.sums.create('a', 7);
    const late = { rev: (old?.rev ?? 0) + 1, text: '1' };
    expect(await all.engine.put('sum', 'a', late, old?.rev ?? 0, 'late')).toBe(false);
    expect(value(all)).toBe(7);
  });

  it('a list that is lost is an outage', async () => {
    const list = async () => {
      for await (const _ of shelf().sums.ids()) fail(new Error('there is none'));
    };
    await expect(list()).rejects.toThrow(Outage);
  });
});
