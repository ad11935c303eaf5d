/** From an account to the person behind it. */

import type { Person } from '../project/person.ts';
import type { Shelves } from './shelves.ts';

/** The person of an account; undefined when it never kept anything. Throws Outage. */
export async function personOf({ account, person }: Shelves, key: string): Promise<Person | undefined> {
  const found = await account.load(key);
  const one = found && (await person.load(found.person));
  return one?.accounts.includes(key) ? one : undefined;
}

/** The person of an account, made where there is none yet. Throws Outage. */
export async function ensurePerson(shelves: Shelves, key: string, make: () => Person): Promise<Person> {
  const there = await personOf(shelves, key);
  if (there) return there;
  const made = make();
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
