/** Accounts linked on every back end: exactly one taker of a code, nothing lost by a crash at any step, two codes taken crosswise. */

import { beforeEach, describe, expect, it } from 'vitest';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Asker, accountKey } from '../../src/accounts/records.ts';
import { emptyContent } from '../../src/project/project.ts';
import { Outage, type RecordStore, type Store } from '../../src/storage/types.ts';

const ANN: Asker = { platform: 'discord', id: '1' };
const ANN_AT_WORK: Asker = { platform: 'slack', workspace: 'T1', id: 'U1' };
const BOB: Asker = { platform: 'slack', workspace: 'T2', id: 'U1' };

function deskAt(store: Store, asker: Asker): ProjectAccess {
  const access = openAccess(asker, { store });
  if (!access) throw new Error('no desk');
  return access;
}

async function namesAt(store: Store, asker: Asker): Promise<readonly string[]> {
  return (await deskAt(store, asker).mine()).map(({ name }) => name).sort();
}

/** `stores` gives two stores on one empty place, as two processes have it (or one twice, where a place is one process's). */
export function joiningContract(stores: () => readonly [Store, Store]): void {
  describe('linking accounts', () => {
    let one: Store;
    let other: Store;

    beforeEach(async () => {
      [one, other] = stores();
      await deskAt(one, ANN).create(emptyContent('Flat'));
      await deskAt(one, ANN_AT_WORK).create(emptyContent('Cabin'));
      await deskAt(one, BOB).create(emptyContent('Shed'));
    });

    it('gives a code to exactly one of two who take it at once in two processes', async () => {
      const { code } = await deskAt(one, ANN).links().make();
      const taken = await Promise.all([
        deskAt(one, ANN_AT_WORK).links().take(code),
        deskAt(other, BOB).links().take(code),
        deskAt(other, ANN_AT_WORK).links().take(code),
        deskAt(one, BOB).links().take(code),
      ]);
      expect(taken.filter(({ ok }) => ok)).toHaveLength(1);
      const all = [await namesAt(one, ANN), await namesAt(other, ANN_AT_WORK), await namesAt(one, BOB)];
      expect([
        [['Cabin', 'Flat'], ['Cabin', 'Flat'], ['Shed']],
        [['Flat', 'Shed'], ['Cabin'], ['Flat', 'Shed']],
      ]).toContainEqual(all);
    });

    it('leaves one person of two who take each other’s codes at once', async () => {
      const { code: anns } = await deskAt(one, ANN).links().make();
      const { code: works } = await deskAt(other, ANN_AT_WORK).links().make();
      await Promise.allSettled([deskAt(one, ANN_AT_WORK).links().take(anns), deskAt(other, ANN).links().take(works)]);
      for (const store of [one, other])
        for (const asker of [ANN, ANN_AT_WORK]) expect(await namesAt(store, asker)).toEqual(['Cabin', 'Flat']);
      expect((await deskAt(one, ANN).person())?.accounts.toSorted()).toEqual([
        accountKey(ANN),
        accountKey(ANN_AT_WORK),
      ]);
      expect(await namesAt(one, BOB)).toEqual(['Shed']);
    });

    it('is finished when the one who typed the code asks again, after a crash at any write', async () => {
      let writes = 0;
      for (let survived = 0; ; survived++) {
        const asker: Asker = { platform: 'discord', id: `crash-${survived}` };
        const second: Asker = { platform: 'terminal', id: `crash-${survived}` };
        await deskAt(one, asker).create(emptyContent('One'));
        await deskAt(one, second).create(emptyContent('Two'));
        const { code } = await deskAt(one, asker).links().make();
        const dying = dyingAfter(one, survived);
        const went = await deskAt(dying.store, second)
          .links()
          .take(code)
          .then(
            ({ ok }) => ok,
            () => false,
          );
        // Before the one who typed the code asks again, the other has at least what they had.
        if (survived % 2 === 1) expect(await namesAt(other, asker)).toContain('One');
        const seen = [await namesAt(other, second), await namesAt(other, asker)];
        const linked = seen[0]?.length === 2;
        expect(seen.flat().toSorted()).toEqual(linked ? ['One', 'One', 'Two', 'Two'] : ['One', 'Two']);
        const person = await deskAt(other, asker).person();
        for (const project of await deskAt(other, asker).mine()) expect(project.owner).toBe(person?.id);
        expect(person?.joins ?? person?.joining?.[0]).toBeUndefined();
        writes = survived;
        if (went) {
          expect(linked).toBe(true);
          break;
        }
      }
      // Its mark, the one who stays, a project, an account, the one who goes, the end: fewer would have tried nothing.
      expect(writes).toBeGreaterThanOrEqual(6);
    });

    it('loses nothing that is begun at that moment', async () => {
      const { code } = await deskAt(one, ANN).links().make();
      const begun = ['a', 'b', 'c', 'd'].map((name) => deskAt(other, ANN_AT_WORK).create(emptyContent(name)));
      await Promise.all([deskAt(one, ANN_AT_WORK).links().take(code), ...begun]);
      for (const asker of [ANN, ANN_AT_WORK])
        expect(await namesAt(one, asker)).toEqual(['Cabin', 'Flat', 'a', 'b', 'c', 'd']);
      const me = await deskAt(one, ANN).person();
      for (const { owner } of await deskAt(one, ANN).mine()) expect(owner).toBe(me?.id);
    });
  });
}

/** The same store for a process that dies after so many writes of records. */
function dyingAfter(store: Store, writes: number): { readonly store: Store } {
  let left = writes;
  const write = (): void => {
    if (left-- <= 0) throw new Outage('the process died');
  };
  const dying = <T>(shelf: RecordStore<T>): RecordStore<T> => ({
    load: (id) => shelf.load(id),
    ids: () => shelf.ids(),
    create: async (id, value) => {
      write();
      return shelf.create(id, value);
    },
    remove: async (id) => {
      write();
      return shelf.remove(id);
    },
    change: (id, change) =>
      shelf.change(id, (value) => {
        const made = change(value);
        if (made.put !== undefined) write();
        return made;
      }),
  });
  return { store: { kept: store.kept, shelf: (kind, codec) => dying(store.shelf(kind, codec)) } };
}
