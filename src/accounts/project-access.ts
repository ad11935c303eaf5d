/** A user's access to their projects. Every permission is checked here, and others' projects don't seem to exist. */

import type { KeptHazards } from '../project/findings.ts';
import { changed, type Stamp } from '../project/history.ts';
import type { Person, Settings } from '../project/person.ts';
import { bornWith, type Content, distinctNames, type Project } from '../project/project.ts';
import { DAY, LIMITS, type Permission } from '../project/project-limits.ts';
import { signedBy, type Visibility, viewOf } from '../project/share-scope.ts';
import { type Share, shareMark, standingOf } from '../project/shares.ts';
import { RecordDamaged, RecordTooNew, type Store } from '../storage/types.ts';
import { type Forgetter, forgetPerson, type Made, type ProjectAccess } from './account-access.ts';
import { type Links, linksOf } from './linking.ts';
import { ensurePerson, personOf } from './merging-accounts.ts';
import {
  type Asker,
  accountKey,
  type Done,
  leadOf,
  mintLongId,
  type Next,
  NOTHING_RECENT,
  putChange,
  type Recent,
  recentOf,
  type Shelves,
  shelvesOf,
} from './records.ts';
import { Sharing } from './sharing.ts';

// Access for the holder of a link: limited to its one share, or to nothing if the link leads nowhere.

/** Loaded if a link leads nowhere, so that this takes as long as a valid link. */
const NOWHERE = 'nowhere-nowhere-nowhere';

/** Reads one value and one project whatever the link, so that timing reveals nothing. */
class GuestAccess implements ProjectAccess {
  readonly guest = true;
  readonly sharing: Sharing | undefined = undefined;
  readonly via: string;
  readonly now: () => number;
  readonly #hash: string;
  readonly #shelves: Shelves;
  #found: Promise<Project | undefined> | undefined;
  #covering: Visibility = 'not';

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
    return project && share && viewOf(project, share, shareMark({ link: this.#hash }, share), covering);
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

  change<R>(permission: Permission, make: (project: Project) => Made<R>): Promise<Done<R>> {
    return this.#put(permission, (project, stamp, share) => {
      const { parts, said = '', result } = make(project);
      const own = parts && share ? signedBy(project, parts, share) : undefined;
      return { project: own ? changed(project, own, said, stamp) : project, result };
    });
  }

  turn<R>(
    permission: Permission,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>> {
    return this.#put<R | undefined>(
      permission,
      (project, stamp) => turn(project, stamp) ?? { project, result: undefined },
    );
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
    // Nothing is stored about link holders.
  }

  async #put<R>(
    permission: Permission,
    change: (project: Project, stamp: Stamp, share: Share | undefined) => { project: Project; result: R },
  ): Promise<Done<R>> {
    const id = (await this.#project())?.id ?? NOWHERE;
    const changer = { who: { link: this.#hash }, via: this.via, at: this.now() };
    const done = await putChange(this.#shelves.project, id, permission, changer, change);
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

/** The access of a user; undefined if there is no store. */
export function openAccess(asker: Asker, ports: { readonly store?: Store; now?(): number }): ProjectAccess | undefined {
  if (!ports.store) return undefined;
  const [via, shelves, now] = [accountKey(asker), shelvesOf(ports.store), () => ports.now?.() ?? Date.now()];
  return asker.platform === 'web' ? new GuestAccess(via, asker.id, shelves, now) : new OwnerAccess(via, shelves, now);
}

/** Loads each record once per request. */
class OwnerAccess implements ProjectAccess {
  readonly guest = false;
  readonly via: string;
  readonly now: () => number;
  readonly sharing: Sharing;
  readonly #shelves: Shelves;
  #me: Promise<Person | undefined> | undefined;
  #projects = new Map<string, Promise<Project | undefined>>();
  #covering: Visibility = 'not';

  constructor(via: string, shelves: Shelves, now: () => number) {
    this.via = via;
    this.now = now;
    this.#shelves = shelves;
    this.sharing = new Sharing({
      shelves,
      now,
      me: () => this.person(),
      id: async () => (await this.inUse())?.id,
      put: (id, change) => this.#put('own', id, change),
      changed: (project) => void this.#projects.set(project.id, Promise.resolve(project)),
    });
  }

  person(): Promise<Person | undefined> {
    this.#me ??= personOf(this.#shelves, this.via);
    return this.#me;
  }

  async inUse(covering = this.#covering): Promise<Project | undefined> {
    const { inUse, projects = [] } = (await this.person()) ?? {};
    const [only, ...others] = projects;
    // Whoever was given one project, and has none of their own, means that one.
    const given = only && others.length === 0 && only.role !== 'owner' ? only.id : undefined;
    const id = inUse ?? given;
    const project = id === undefined ? undefined : await this.#project(id, covering);
    return project?.state.kind === 'deleted' ? undefined : project;
  }

  async share(): Promise<Share | undefined> {
    const [me, project] = [await this.person(), await this.inUse()];
    return project && me && project.owner !== me.id ? project.shares[0] : undefined;
  }

  async ownersSettings(): Promise<Settings | undefined> {
    const [me, project] = [await this.person(), await this.inUse()];
    if (!project || project.owner === me?.id) return me?.settings;
    return (await this.#shelves.person.load(project.owner))?.settings;
  }

  cover(whole = false): void {
    this.#covering = whole ? 'whole' : 'shared';
  }

  async mine(): Promise<readonly Project[]> {
    const { projects = [] } = (await this.person()) ?? {};
    const found = await Promise.all(projects.map(({ id, role }) => this.#readable(id, role === 'owner')));
    const over = found.filter((one) => typeof one === 'string');
    if (over.length > 0)
      await this.#changeMe((me) => ({ ...me, projects: me.projects.filter(({ id }) => !over.includes(id)) }));
    const there = found.filter((one) => one !== undefined && typeof one !== 'string');
    return distinctNames(there, (await this.person())?.id);
  }

  async own(): Promise<readonly Project[]> {
    const me = await this.person();
    return (await this.mine()).filter(({ owner }) => owner === me?.id);
  }

  async create(content: Content, hazards: KeptHazards = []): Promise<Project> {
    const { id: owner } = await this.#ensured();
    const project = bornWith(content, { id: mintLongId(), owner }, hazards);
    await this.#shelves.project.create(project.id, project);
    this.#projects.set(project.id, Promise.resolve(project));
    const { id } = await this.#changeMe((me) => ({
      ...me,
      inUse: project.id,
      projects: [...me.projects, { id: project.id, role: 'owner' }],
    }));
    if (id === owner) return project;
    // The account was linked to another person in the meantime, who owns the project now.
    await this.#shelves.project.change(project.id, (one) => ({ put: { ...one, owner: id }, result: undefined }));
    return { ...project, owner: id };
  }

  async use(id: string | undefined): Promise<boolean> {
    const { projects = [] } = (await this.person()) ?? {};
    if (id !== undefined && !projects.some((one) => one.id === id)) return false;
    await this.#changeMe(({ inUse: _before, ...me }) => (id === undefined ? me : { ...me, inUse: id }));
    return true;
  }

  async change<R>(permission: Permission, make: (project: Project) => Made<R>, id?: string): Promise<Done<R>> {
    return this.#put(permission, id ?? (await this.inUse())?.id, (project, stamp, share) => {
      const { parts, said = '', result } = make(project);
      const own = parts && share ? signedBy(project, parts, share) : parts;
      return { project: own ? changed(project, own, said, stamp) : project, result };
    });
  }

  async turn<R>(
    permission: Permission,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>> {
    return this.#put<R | undefined>(
      permission,
      (await this.inUse())?.id,
      (project, stamp) => turn(project, stamp) ?? { project, result: undefined },
    );
  }

  async warn(change: (hazards: KeptHazards) => KeptHazards): Promise<boolean> {
    const done = await this.#put('note', (await this.inUse())?.id, (project) => ({
      project: { ...project, hazards: change(project.hazards) },
      result: undefined,
    }));
    return done.ok;
  }

  async settle(change: (settings: Person['settings']) => Person['settings']): Promise<Person> {
    await this.#ensured();
    return this.#changeMe((me) => ({ ...me, settings: change(me.settings) }));
  }

  recent(): Promise<Recent> {
    return recentOf(this.#shelves.kept, this.via);
  }

  async last(): Promise<Recent['last']> {
    return (await this.recent()).last;
  }

  links(): Links {
    return linksOf(
      { shelves: this.#shelves, via: this.via, now: this.now, me: () => this.person(), ensured: () => this.#ensured() },
      () => {
        this.#me = undefined;
        this.#projects.clear();
      },
    );
  }

  async forget(others: readonly Forgetter[]): Promise<void> {
    await forgetPerson(this.#shelves, await this.person(), this.via, others);
    this.#me = Promise.resolve(undefined);
    this.#projects.clear();
  }

  async #put<R>(
    permission: Permission,
    id: string | undefined,
    change: (project: Project, stamp: Stamp, share: Share | undefined) => Next<R>,
  ): Promise<Done<R>> {
    const me = await this.person();
    const known = me?.projects.some((one) => one.id === id);
    if (!me || !known || id === undefined) return { ok: false, why: 'gone' };
    const changer = { who: { person: me.id }, via: this.via, at: this.now() };
    const done = await putChange(this.#shelves.project, id, permission, changer, change);
    if (!done.ok && done.why === 'gone' && (await this.#isSomebodyElse(me.id)))
      return this.#put(permission, id, change);
    if (!done.ok) return done;
    this.#projects.set(id, Promise.resolve(done.project));
    return { ...done, project: (await this.#project(id, this.#covering)) ?? done.project };
  }

  /** Whether the account was linked to another person since it was loaded. */
  async #isSomebodyElse(before: string): Promise<boolean> {
    this.#me = undefined;
    const me = await this.person();
    return me !== undefined && me.id !== before;
  }

  /** A project as far as the user may see it; `covering` for the one in use with a command the share covers. */
  async #project(id: string, covering: Visibility): Promise<Project | undefined> {
    const me = await this.person();
    const loading = this.#projects.get(id) ?? this.#shelves.project.load(id);
    this.#projects.set(id, loading);
    const project = await loading;
    const standing = project && me && standingOf(project, { person: me.id }, this.now());
    if (!project || !me || !standing?.share) return standing && project;
    const mark = shareMark({ person: me.id }, standing.share);
    return viewOf(project, standing.share, mark, covering);
  }

  /**
   * One project of a list, where an unreadable one must not block the others; its id if the user's access has ended.
   */
  async #readable(id: string, own: boolean): Promise<Project | string | undefined> {
    try {
      const project = await this.#project(id, 'not');
      if (!project) return own ? undefined : id;
      if (project.state.kind !== 'deleted' || this.now() - project.state.at <= LIMITS.restore * DAY) return project;
      await this.#shelves.project.remove(id);
      return id;
    } catch (cause) {
      if (cause instanceof RecordDamaged || cause instanceof RecordTooNew) return undefined;
      throw cause;
    }
  }

  async #ensured(): Promise<Person> {
    const me = await ensurePerson(this.#shelves, this.via);
    this.#me = Promise.resolve(me);
    return me;
  }

  async #changeMe(change: (me: Person) => Person, tries = 3): Promise<Person> {
    const { id } = await this.#ensured();
    const me = await this.#shelves.person.change<Person | undefined>(id, (before) => {
      // Another person is replacing this one: any change here would be lost.
      if (before.joins !== undefined) return { result: undefined };
      const after = change(before);
      return { put: after, result: after };
    });
    if (!me && tries === 0) throw new Error('a person vanished again and again while being changed');
    this.#me = me && Promise.resolve(me);
    return me ?? this.#changeMe(change, tries - 1);
  }
}
