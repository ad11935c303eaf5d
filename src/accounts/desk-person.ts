/** The person behind an account, who may be new. */

import { NO_SETTINGS, type Person } from '../project/person.ts';
import { personOf } from './joining.ts';
import type { Shelves } from './shelves.ts';
import { mintLongId } from './unguessable.ts';

/** The person of an account, made where there is none yet. Throws Outage. */
export async function ensurePerson(shelves: Shelves, key: string): Promise<Person> {
  const there = await personOf(shelves, key);
  if (there) return there;
  const made: Person = { version: 3, id: mintLongId(), accounts: [key], settings: NO_SETTINGS, projects: [] };
  await shelves.person.create(made.id, made);
  if (await shelves.account.create(key, { version: 1, person: made.id })) return made;
  // Another ask of the same account came first, or the person it led to is gone.
  const other = await personOf(shelves, key);
  if (other) {
    await shelves.person.remove(made.id);
    return other;
  }
  await shelves.account.change(key, (account) => ({ put: { ...account, person: made.id }, result: undefined }));
  return made;
}
