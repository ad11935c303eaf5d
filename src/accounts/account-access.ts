/** What a user can do with their projects, account and settings, and how everything stored about them is deleted. */

import type { KeptHazards } from '../project/findings.ts';
import type { Stamp } from '../project/history.ts';
import type { Person, Settings } from '../project/person.ts';
import type { Content, Project } from '../project/project.ts';
import type { Permission } from '../project/project-limits.ts';
import type { Visibility } from '../project/share-scope.ts';
import type { Share } from '../project/shares.ts';
import type { KeyValueStore } from '../storage/types.ts';
import type { Links } from './linking.ts';
import { type Done, forgetRecent, type Recent, type Shelves } from './records.ts';
import { leaveProject, type Sharing } from './sharing.ts';

/** The result of a change to a project: the new parts and a description, or nothing; and the value to return. */
export interface Made<R> {
  readonly parts?: Partial<Content>;
  readonly said?: string;
  readonly result: R;
}

/** Every method throws Outage if the store doesn't answer. */
export interface ProjectAccess {
  /** Milliseconds since 1970. */
  now(): number;
  /** The user's account, which changes are attributed to. */
  readonly via: string;
  /** The user's record; undefined for someone who never saved anything. */
  person(): Promise<Person | undefined>;
  /** The project requests are filled in from, limited to what the share covers or to `covering`. */
  inUse(covering?: Visibility): Promise<Project | undefined>;
  /** The user's share of the project in use; undefined if it is their own. */
  share(): Promise<Share | undefined>;
  /** The settings the project in use is computed with: its owner's. */
  ownersSettings(): Promise<Settings | undefined>;
  /**
   * Opens the project in use to a command that the share covers; before, only its name is visible. `whole`: with all
   * its rooms, for a command that limits itself to the shared room.
   */
  cover(whole?: boolean): void;
  /** The user's own and shared projects in the order they were added; deleted ones as long as they can be restored. */
  mine(): Promise<readonly Project[]>;
  own(): Promise<readonly Project[]>;
  /** Sharing of the project in use; undefined for the holder of a link. */
  readonly sharing: Sharing | undefined;
  /** Whether the user has only a link, and is no known person. */
  readonly guest: boolean;
  create(content: Content, hazards?: KeptHazards): Promise<Project>;
  /** Makes one of the user's projects the one in use, or none. False if it isn't theirs. */
  use(id: string | undefined): Promise<boolean>;
  /**
   * Changes the project in use, or another of the user's. `make` has to be pure, since it may run again if another
   * change came first.
   */
  change<R>(permission: Permission, make: (project: Project) => Made<R>, id?: string): Promise<Done<R>>;
  /** Like `change`, for a change to the whole record: undo and redo. */
  turn<R>(
    permission: Permission,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>>;
  /** Changes the hazards of the project in use. False if there is none or the user isn't allowed to. */
  warn(change: (hazards: KeptHazards) => KeptHazards): Promise<boolean>;
  /** Changes the settings of a person, who may be new. */
  settle(change: (settings: Person['settings']) => Person['settings']): Promise<Person>;
  recent(): Promise<Recent>;
  /** The last answer that can be saved. */
  last(): Promise<Recent['last']>;
  links(): Links;
  /**
   * Removes the person, their accounts, their own projects and their request history; `others` remove what other parts
   * store.
   */
  forget(others: readonly Forgetter[]): Promise<void>;
}

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
