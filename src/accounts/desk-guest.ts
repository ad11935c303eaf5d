/** The desk of whoever holds a link: bound to its one share, and nothing at all where the link leads nowhere. */

import type { KeptHazards } from '../project/findings.ts';
import { changed, type Stamp } from '../project/history.ts';
import type { Person, Settings } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import type { Deed } from '../project/project-limits.ts';
import { type Covering, signedBy, viewOf } from '../project/share-scope.ts';
import { markOf, type Share, standingOf } from '../project/shares.ts';
import { type Done, putChange } from './desk-change.ts';
import type { Desk, Made } from './desk-deeds.ts';
import type { Sharing } from './desk-share.ts';
import { leadOf } from './link-token.ts';
import type { Links } from './links.ts';
import { NOTHING_RECENT, type Recent } from './recent.ts';
import type { Shelves } from './shelves.ts';

/** Loaded where a link leads nowhere, so that this takes no less work. */
const NOWHERE = 'nowhere-nowhere-nowhere';

/** Reads the same whatever a link is: one value, then one project. */
export class GuestDesk implements Desk {
  readonly guest = true;
  readonly sharing: Sharing | undefined = undefined;
  readonly via: string;
  readonly now: () => number;
  readonly #hash: string;
  readonly #shelves: Shelves;
  #found: Promise<Project | undefined> | undefined;
  #covering: Covering = 'not';

  constructor(via: string, hash: string, shelves: Shelves, now: () => number) {
    this.via = via;
    this.#hash = hash;
    this.#shelves = shelves;
    this.now = now;
  }

  async share(): Promise<Share | undefined> {
    const project = await this.#project();
    return project && standingOf(project, { link: this.#hash }, this.now())?.share;
  }

  async inUse(covering = this.#covering): Promise<Project | undefined> {
    const [project, share] = [await this.#project(), await this.share()];
    return project && share && viewOf(project, share, markOf({ link: this.#hash }, share), covering);
  }

  async mine(): Promise<readonly Project[]> {
    const project = await this.inUse();
    return project ? [project] : [];
  }

  async ownersSettings(): Promise<Settings | undefined> {
    const owner = (await this.share()) && (await this.#project())?.owner;
    return owner === undefined ? undefined : (await this.#shelves.person.load(owner))?.settings;
  }

  cover(whole = false): void {
    this.#covering = whole ? 'whole' : 'shared';
  }

  change<R>(deed: Deed, make: (project: Project) => Made<R>): Promise<Done<R>> {
    return this.#put(deed, (project, stamp, share) => {
      const { parts, said = '', result } = make(project);
      const own = parts && share ? signedBy(project, parts, share) : undefined;
      return { project: own ? changed(project, own, said, stamp) : project, result };
    });
  }

  turn<R>(
    deed: Deed,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>> {
    return this.#put<R | undefined>(deed, (project, stamp) => turn(project, stamp) ?? { project, result: undefined });
  }

  async warn(change: (hazards: KeptHazards) => KeptHazards): Promise<boolean> {
    const done = await this.#put('note', (project) => ({
      project: { ...project, hazards: change(project.hazards) },
      result: undefined,
    }));
    return done.ok;
  }

  async person(): Promise<undefined> {
    return undefined;
  }

  async own(): Promise<readonly Project[]> {
    return [];
  }

  async use(): Promise<boolean> {
    return false;
  }

  create(): Promise<Project> {
    return Promise.reject(new Error('whoever holds a link begins no project'));
  }

  settle(): Promise<Person> {
    return Promise.reject(new Error('whoever holds a link has no settings'));
  }

  async recent(): Promise<Recent> {
    return NOTHING_RECENT;
  }

  async last(): Promise<undefined> {
    return undefined;
  }

  links(): Links {
    throw new Error('whoever holds a link has no accounts');
  }

  async forget(): Promise<void> {
    // Nothing is kept of whoever holds a link.
  }

  async #put<R>(
    deed: Deed,
    change: (project: Project, stamp: Stamp, share: Share | undefined) => { project: Project; result: R },
  ): Promise<Done<R>> {
    const id = (await this.#project())?.id ?? NOWHERE;
    const changer = { who: { link: this.#hash }, via: this.via, at: this.now() };
    const done = await putChange(this.#shelves.project, id, deed, changer, change);
    if (!done.ok) return done;
    this.#found = Promise.resolve(done.project);
    return { ...done, project: (await this.inUse()) ?? done.project };
  }

  #project(): Promise<Project | undefined> {
    this.#found ??= this.#load();
    return this.#found;
  }

  async #load(): Promise<Project | undefined> {
    const lead = await leadOf(this.#shelves.kept, this.#hash);
    return this.#shelves.project.load(lead?.project ?? NOWHERE);
  }
}
