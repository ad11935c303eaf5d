/** What can be done at a desk, whoever sits at it. */

import type { KeptHazards } from '../project/findings.ts';
import type { Stamp } from '../project/history.ts';
import type { Person, Settings } from '../project/person.ts';
import type { Content, Project } from '../project/project.ts';
import type { Permission } from '../project/project-limits.ts';
import type { Visibility } from '../project/share-scope.ts';
import type { Share } from '../project/shares.ts';
import type { Forgetter } from './forgetting.ts';
import type { Links } from './linking.ts';
import type { Done } from './project-changes.ts';
import type { Recent } from './recent.ts';
import type { Sharing } from './sharing.ts';

/** What a change makes of a project: the parts to put in place and the change in words, or nothing; and what to tell. */
export interface Made<R> {
  readonly parts?: Partial<Content>;
  readonly said?: string;
  readonly result: R;
}

/** Everything throws Outage when the store does not answer. */
export interface ProjectAccess {
  /** Milliseconds since 1970. */
  now(): number;
  /** The asker's account, as changes are marked with it. */
  readonly via: string;
  /** The asker as a person; undefined for somebody who never kept anything. */
  person(): Promise<Person | undefined>;
  /** The project that asks are filled from, as far as it is covered, or as told. */
  inUse(covering?: Visibility): Promise<Project | undefined>;
  /** What the asker was given of the project in use; undefined where it is their own. */
  share(): Promise<Share | undefined>;
  /** The settings that the project in use is worked out by: its owner's. */
  ownersSettings(): Promise<Settings | undefined>;
  /**
   * Lets the project in use be seen as far as it was shared, for the command that was shared; before, only its name is.
   * `whole`: with all its rooms, for a command that itself keeps to the room that was shared.
   */
  cover(whole?: boolean): void;
  /** All projects of the asker and those shared with them, in the order they came; deleted ones as long as they can be brought back. */
  mine(): Promise<readonly Project[]>;
  /** The asker's own among them. */
  own(): Promise<readonly Project[]>;
  /** Sharing of the project in use; undefined for whoever holds a link. */
  readonly sharing: Sharing | undefined;
  /** Whether the asker is whoever holds a link, and no person. */
  readonly guest: boolean;
  /** Begins a project and takes it into use. */
  create(content: Content, hazards?: KeptHazards): Promise<Project>;
  /** Takes one of the asker's projects into use, or none. False where it is not theirs. */
  use(id: string | undefined): Promise<boolean>;
  /** Changes the project in use, or another of the asker's. `make` is pure: it may run again when another change came first. */
  change<R>(permission: Permission, make: (project: Project) => Made<R>, id?: string): Promise<Done<R>>;
  /** As `change`, for a change of the whole record: undo and redo. */
  turn<R>(
    permission: Permission,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>>;
  /** Changes what the project in use tells of hazards. False where there is none, or the asker may not. */
  warn(change: (hazards: KeptHazards) => KeptHazards): Promise<boolean>;
  /** Changes the settings, for a person who may be new. */
  settle(change: (settings: Person['settings']) => Person['settings']): Promise<Person>;
  /** What this account asked lately. */
  recent(): Promise<Recent>;
  /** The last answer that can be kept. */
  last(): Promise<Recent['last']>;
  /** Codes, and the accounts that are linked. */
  links(): Links;
  /** Removes the person, their accounts, their own projects and what is remembered of their requests, by others as well. */
  forget(others: readonly Forgetter[]): Promise<void>;
}
