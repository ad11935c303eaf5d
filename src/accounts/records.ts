/** The store's shelves for people, accounts and projects, and unguessable ids and link tokens. */

import { createHash, randomBytes } from 'node:crypto';
import { z } from 'zod';
import { type Account, accountCodec, type Person, personCodec } from '../project/person.ts';
import { type Project, projectCodec } from '../project/project.ts';
import type { KeyValueStore, RecordStore, Store } from '../storage/types.ts';

export interface Shelves {
  readonly account: RecordStore<Account>;
  readonly person: RecordStore<Person>;
  readonly project: RecordStore<Project>;
  readonly kept: KeyValueStore;
}

const opened = new WeakMap<Store, Shelves>();

export function shelvesOf(store: Store): Shelves {
  const before = opened.get(store);
  if (before) return before;
  const shelves = {
    account: store.shelf('account', accountCodec),
    person: store.shelf('person', personCodec),
    project: store.shelf('project', projectCodec),
    kept: store.kept,
  };
  opened.set(store, shelves);
  return shelves;
}

// Ids that can't be guessed.

/** A record id: 22 characters, 132 bits. */
export function mintLongId(): string {
  return randomBytes(17).toString('base64url').slice(0, 22);
}

// The token of a share link: shown once, and stored only as a hash.

/** Where a link leads. The project itself says whether the share still holds. */
export const leadSchema = z.object({ project: z.string() });

type Lead = z.infer<typeof leadSchema>;

/** SHA-256 of a token in hex: the id of the link's holder. */
export function hashOf(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** Where the link with this hash leads; undefined if nowhere. Throws Outage. */
export async function leadOf(kept: KeyValueStore, hash: string): Promise<Lead | undefined> {
  const read = leadSchema.safeParse(await kept.get(key(hash)));
  return read.success ? read.data : undefined;
}

/** Stores where a link leads; without `milliseconds` it never expires. Throws Outage. */
export async function keepLead(kept: KeyValueStore, hash: string, lead: Lead, milliseconds?: number): Promise<void> {
  await kept.set(key(hash), lead, milliseconds);
}

/** Throws Outage. */
export async function dropLead(kept: KeyValueStore, hash: string): Promise<void> {
  await kept.delete(key(hash));
}

function key(hash: string): string {
  return `share:${hash}`;
}
