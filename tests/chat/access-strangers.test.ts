/** Strangers, whoever was let in once, and links that lead nowhere: nothing tells that a project is there, byte for byte and read for read. */

import { describe, expect, it } from 'vitest';
import { type Asker, hashOf } from '../../src/accounts/records.ts';
import { emptyContent } from '../../src/project/project.ts';
import { DAY, PERMISSIONS } from '../../src/project/project-limits.ts';
import { FEW_LINES, IN_A_WEEK, LINES, MEMBER, OWNER, type World, world } from './access-cast.ts';
import { answersTo } from './asked.ts';

const STRANGERS: Readonly<Record<string, Asker>> = {
  'a stranger': { platform: 'discord', id: '100000000000000009' },
  'a stranger in the same workspace': { platform: 'slack', id: 'U0STRANGER', workspace: 'T1' },
  'the owner’s number in another workspace': { platform: 'slack', id: OWNER.id, workspace: 'T2' },
  'somebody at a terminal': { platform: 'terminal', id: OWNER.id },
};

/** Each answer with how much was read for it, every record put back before each. */
async function heard(here: World, asker: Asker, lines: readonly string[] = FEW_LINES): Promise<readonly string[]> {
  const back = here.snapshot();
  const all: string[] = [];
  for (const line of lines) {
    back();
    // A new account each time: what was asked before is remembered of an account, whatever became of its records.
    here.reads();
    const answers = await answersTo(line, { asker, ports: here.ports });
    // Codes and tokens are drawn anew each time.
    const json = JSON.stringify(answers);
    const token = /(?<=\/s\/)[\w-]{22}/.exec(json)?.[0] ?? 'none';
    const given = json.replaceAll(token, '…').replace(/[0-9A-Z]{4}-[0-9A-Z]{4}/g, '…');
    all.push(JSON.stringify([line, given, here.reads()]));
  }
  return all;
}

describe.each(Object.entries(STRANGERS))('%s', (_name, asker) => {
  it.each([false, true])(
    'hears the same whether the project is there or not (with one of their own: %s)',
    async (own) => {
      const [with_, without] = [await world(), await world(true)];
      if (own) for (const here of [with_, without]) await here.access(asker).create(emptyContent('Mine'));
      const before = JSON.stringify(with_.record());
      const lines = own ? FEW_LINES : LINES;
      expect(await heard(with_, asker, lines)).toEqual(await heard(without, asker, lines));
      expect(JSON.stringify(with_.record())).toBe(before);
    },
  );

  it('does nothing at their desk with its id that they cannot do with none', async () => {
    const here = await world();
    await here.access(asker).create(emptyContent('Mine'));
    for (const id of [here.id, 'no-such-project-at-all']) {
      const access = here.access(asker);
      await access.person();
      here.reads();
      expect(await access.use(id)).toBe(false);
      for (const permission of PERMISSIONS)
        expect(
          await access.change(permission, () => ({ parts: { name: 'stolen' }, said: 'x', result: 1 }), id),
        ).toEqual({
          ok: false,
          why: 'gone',
        });
      expect(await access.sharing?.leave(id)).toBe(false);
      expect(here.reads()).toBeLessThanOrEqual(2 * PERMISSIONS.length);
    }
  });
});

describe('a member who was let in', () => {
  const endings: Readonly<Record<string, (here: World) => Promise<unknown>>> = {
    'is stopped': (here) => stopAll(here),
    'is over': async (here) => {
      here.ports.clock.now = IN_A_WEEK;
    },
    'is of a project that was deleted': (here) => deleted(here),
    'is of a project that was deleted and brought back': async (here) => {
      await deleted(here);
      await here.access(OWNER).use(here.id);
      await here
        .access(OWNER)
        .change('own', () => ({ parts: { state: { kind: 'active' } }, said: 'x', result: 1 }), here.id);
    },
    'is of an owner who was forgotten': (here) => here.access(OWNER).forget([]),
    'left it themselves': (here) => here.access(MEMBER).sharing?.leave(here.id) ?? Promise.resolve(),
  };

  it.each(Object.entries(endings))('hears what a stranger hears once it %s', async (_name, end) => {
    const [here, without] = [await world(), await world(true)];
    for (const one of [here, without]) await one.access(MEMBER).create(emptyContent('Mine'));
    await here.give({ what: 'project', role: 'measure', to: 'member', until: IN_A_WEEK });
    await end(here);
    without.ports.clock.now = here.ports.clock.now;
    // The first look takes what is over off their list.
    await here.access(MEMBER).mine();
    const mine = await without.access(MEMBER).mine();
    await without.access(MEMBER).use(undefined);
    await here.access(MEMBER).use(undefined);
    expect((await here.access(MEMBER).mine()).map(({ name }) => name)).toEqual(mine.map(({ name }) => name));
    expect(await heard(here, MEMBER)).toEqual(await heard(without, MEMBER));
  });
});

describe('a link', () => {
  const guessed = { platform: 'web', id: hashOf('AAAAAAAAAAAAAAAAAAAAAA') } as const;
  const unlike = { platform: 'web', id: 'no hash at all' } as const;

  it('that leads nowhere is one answer after the same reads, whatever it was', async () => {
    const ends: readonly ((here: World) => Promise<unknown>)[] = [
      stopAll,
      deleted,
      (here) => here.access(OWNER).forget([]),
      async (here) => {
        here.ports.clock.now = IN_A_WEEK;
        here.ports.store.kept.pass(7 * DAY);
      },
      async (here) => {
        // The value that leads to the project outlives its share: the project is asked.
        here.ports.clock.now = IN_A_WEEK;
      },
    ];
    const nowhere = await heard(await world(true), guessed);
    expect(await heard(await world(), guessed)).toEqual(nowhere);
    expect(await heard(await world(), unlike)).toEqual(nowhere);
    expect(new Set(nowhere.map((one) => JSON.stringify(JSON.parse(one).slice(1))))).toHaveProperty('size', 1);
    for (const end of ends) {
      const here = await world();
      const guest = await here.give({ what: 'project', role: 'measure', to: 'link', until: IN_A_WEEK });
      expect(await heard(here, guest)).not.toEqual(nowhere);
      await end(here);
      expect(await heard(here, guest)).toEqual(nowhere);
    }
  });

  it('leads to its own share alone, and no right of a desk leads further', async () => {
    const here = await world();
    const guest = await here.give({ what: 'shopping', role: 'tick', to: 'link', until: IN_A_WEEK });
    const other = await here.give({ what: 'checklist', role: 'look', to: 'link', until: IN_A_WEEK });
    expect(await here.access(guest).share()).toMatchObject({ what: 'shopping', role: 'tick' });
    expect(await here.access(other).share()).toMatchObject({ what: 'checklist', role: 'look' });
    const access = here.access(guest);
    expect(await access.person()).toBeUndefined();
    expect(await access.own()).toEqual([]);
    expect(await access.use(undefined)).toBe(false);
    expect(access.sharing).toBeUndefined();
    await expect(access.create(emptyContent('x'))).rejects.toThrow();
    await expect(access.settle((settings) => settings)).rejects.toThrow();
    expect(() => access.links()).toThrow();
    await access.forget([]);
    expect(await here.access(guest).inUse()).toMatchObject({ name: 'Loft', rooms: [], picks: {}, kept: [], log: [] });
  });

  it('is kept as a hash alone: its token is nowhere in the store, whatever came of the answer', async () => {
    const here = await world();
    const answers = await answersTo('project share shopping list', { asker: OWNER, ports: here.ports });
    const token = /\/s\/([\w-]{22})"/.exec(JSON.stringify(answers))?.[1] ?? '';
    expect(token).toHaveLength(22);
    const all = JSON.stringify([...here.ports.store.records]);
    expect(all).not.toContain(token);
    expect(all).toContain(hashOf(token));
  });
});

async function stopAll({ access }: World): Promise<void> {
  const shares = (await access(OWNER).inUse())?.shares ?? [];
  await access(OWNER).sharing?.stop(shares.map(({ id }) => id));
}

async function deleted(here: World): Promise<void> {
  const at = here.ports.clock.now;
  await here.access(OWNER).change('own', () => ({ parts: { state: { kind: 'deleted', at } }, said: 'x', result: 1 }));
}
