/** The shelves of a store that projects stand on. */

import { type Account, accountCodec, type Person, personCodec } from '../project/person.ts';
import { type Project, projectCodec } from '../project/project.ts';
import type { Kept, Shelf, Store } from '../storage/types.ts';

export interface Shelves {
  readonly account: Shelf<Account>;
  readonly person: Shelf<Person>;
  readonly project: Shelf<Project>;
  readonly kept: Kept;
}

const opened = new WeakMap<Store, Shelves>();

/** The shelves of a store, opened once. */
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
