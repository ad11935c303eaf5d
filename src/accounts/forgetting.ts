/** Deleting everything stored about a person. */

import type { Person } from '../project/person.ts';
import type { KeyValueStore } from '../storage/types.ts';
import { forgetRecent } from './recent.ts';
import type { Shelves } from './records.ts';
import { leaveProject } from './sharing.ts';

/** Deletes what another part of the program stores about an account. */
export type Forgetter = (kept: KeyValueStore, account: string) => Promise<void>;

/**
 * Removes the person, their accounts, their own projects, their part in others' projects and their request history.
 * Throws Outage; a retry continues where it stopped.
 */
export async function forgetPerson(
  shelves: Shelves,
  me: Person | undefined,
  via: string,
  others: readonly Forgetter[],
): Promise<void> {
  const { account, person, project, kept } = shelves;
  for (const key of new Set([via, ...(me?.accounts ?? [])])) {
    await forgetRecent(kept, key);
    for (const forget of others) await forget(kept, key);
    const code = await kept.get(`code-of:${key}`);
    if (typeof code === 'string') await kept.delete(code);
    await kept.delete(`code-of:${key}`);
  }
  if (!me) return;
  // Accounts go last: as long as one is left, the rest can still be found and removed on a retry.
  for (const { id, role } of me.projects) {
    if (role === 'owner') await project.remove(id);
    else await leaveProject(shelves, id, me.id);
  }
  await person.remove(me.id);
  for (const key of me.accounts) await account.remove(key);
}
