/** What an asker may do with their projects: every right is checked in here, and a stranger's project is no project at all. */

import { bornWith } from '../project/create.ts';
import { changed, mayDo, type Stamp } from '../project/history.ts';
import { DAY, LIMITS } from '../project/limits.ts';
import type { Deed } from '../project/may.ts';
import type { Person } from '../project/person.ts';
import type { Content, Project } from '../project/project.ts';
import { ensurePerson } from './desk-person.ts';
import { forgetPerson } from './forgetting.ts';
import { type Asker, accountKey } from './invocation.ts';
import { personOf } from './joining.ts';
import { type Links, linksOf } from './links.ts';
import { type Ports, RecordDamaged, RecordTooNew } from './ports.ts';
import { type Recent, recentOf } from './recent.ts';
import { type Shelves, shelvesOf } from './shelves.ts';
import { mintLongId } from './unguessable.ts';

/** What a change makes of a project: the parts to put in place and the change in words, or nothing; and what to tell. */
export interface Made<R> {
  readonly parts?: Partial<Content>;
  readonly said?: string;
  readonly result: R;
}

/** `gone`: there is no such project for this asker; `not-allowed`: they may see it, and not do this. */
export type Done<R> =
  | { readonly ok: true; readonly result: R; readonly project: Project }
  | { readonly ok: false; readonly why: 'gone' | 'not-allowed' };

/** Everything throws Outage when the store does not answer. */
export interface Desk {
  /** Milliseconds since 1970. */
  now(): number;
  /** The asker's account, as changes are marked with it. */
  readonly via: string;
  /** The asker as a person; undefined for somebody who never kept anything. */
  person(): Promise<Person | undefined>;
  /** The project that asks are filled from. */
  inUse(): Promise<Project | undefined>;
  /** All projects of the asker, in the order they began; deleted ones as long as they can be brought back. */
  mine(): Promise<readonly Project[]>;
  /** Begins a project and takes it into use. */
  create(content: Content): Promise<Project>;
  /** Takes one of the asker's projects into use, or none. False where it is not theirs. */
  use(id: string | undefined): Promise<boolean>;
  /** Changes the project in use, or another of the asker's. `make` is pure: it may run again when another change came first. */
  change<R>(deed: Deed, make: (project: Project) => Made<R>, id?: string): Promise<Done<R>>;
  /** As `change`, for a change of the whole record: undo and redo. */
  turn<R>(
    deed: Deed,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>>;
  /** Changes the settings, for a person who may be new. */
  settle(change: (settings: Person['settings']) => Person['settings']): Promise<Person>;
  /** What this account asked lately. */
  recent(): Promise<Recent>;
  /** The last answer that can be kept. */
  last(): Promise<Recent['last']>;
  /** Codes, and the accounts that are linked. */
  links(): Links;
  /** Removes the person, their accounts, their own projects and what is remembered of their asks. */
  forget(): Promise<void>;
}

/** The desk of an asker; undefined where nothing is kept. */
export function openDesk(asker: Asker, ports: Ports): Desk | undefined {
  return ports.store && new AskersDesk(accountKey(asker), shelvesOf(ports.store), () => ports.now?.() ?? Date.now());
}

/** Loads each record once an ask. */
class AskersDesk implements Desk {
  readonly via: string;
  readonly now: () => number;
  readonly #shelves: Shelves;
  #me: Promise<Person | undefined> | undefined;
  #projects = new Map<string, Promise<Project | undefined>>();

  constructor(via: string, shelves: Shelves, now: () => number) {
    this.via = via;
    this.now = now;
    this.#shelves = shelves;
  }

  person(): Promise<Person | undefined> {
    this.#me ??= personOf(this.#shelves, this.via);
    return this.#me;
  }

  async inUse(): Promise<Project | undefined> {
    const { inUse } = (await this.person()) ?? {};
    const project = inUse === undefined ? undefined : await this.#project(inUse);
    return project?.state.kind === 'deleted' ? undefined : project;
  }

  async mine(): Promise<readonly Project[]> {
    const { projects = [] } = (await this.person()) ?? {};
    const found = await Promise.all(projects.map(({ id }) => this.#readable(id)));
    const there = found.filter((project) => project !== undefined);
    const over = new Set(there.filter((project) => this.#isOver(project)).map(({ id }) => id));
    for (const id of over) await this.#shelves.project.remove(id);
    if (over.size > 0)
      await this.#changeMe((me) => ({ ...me, projects: me.projects.filter(({ id }) => !over.has(id)) }));
    return there.filter(({ id }) => !over.has(id));
  }

  async create(content: Content): Promise<Project> {
    const { id: owner } = await this.#ensured();
    const project = bornWith(content, { id: mintLongId(), owner });
    await this.#shelves.project.create(project.id, project);
    this.#projects.set(project.id, Promise.resolve(project));
    const { id } = await this.#changeMe((me) => ({
      ...me,
      inUse: project.id,
      projects: [...me.projects, { id: project.id, role: 'owner' }],
    }));
    if (id === owner) return project;
    // This account was linked to somebody's meanwhile, whose the project is then.
    await this.#shelves.project.change(project.id, (one) => ({ put: { ...one, owner: id }, result: undefined }));
    return { ...project, owner: id };
  }

  async use(id: string | undefined): Promise<boolean> {
    const { projects = [] } = (await this.person()) ?? {};
    if (id !== undefined && !projects.some((one) => one.id === id)) return false;
    await this.#changeMe(({ inUse: _before, ...me }) => (id === undefined ? me : { ...me, inUse: id }));
    return true;
  }

  async change<R>(deed: Deed, make: (project: Project) => Made<R>, id?: string): Promise<Done<R>> {
    return this.#put(deed, id ?? (await this.inUse())?.id, (project, stamp) => {
      const { parts, said = '', result } = make(project);
      return { project: parts ? changed(project, parts, said, stamp) : project, result };
    });
  }

  async turn<R>(
    deed: Deed,
    turn: (project: Project, stamp: Stamp) => { project: Project; result: R } | undefined,
  ): Promise<Done<R | undefined>> {
    return this.#put<R | undefined>(
      deed,
      (await this.inUse())?.id,
      (project, stamp) => turn(project, stamp) ?? { project, result: undefined },
    );
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

  async forget(): Promise<void> {
    await forgetPerson(this.#shelves, await this.person(), this.via);
    this.#me = Promise.resolve(undefined);
    this.#projects.clear();
  }

  async #put<R>(
    deed: Deed,
    id: string | undefined,
    change: (project: Project, stamp: Stamp) => { project: Project; result: R },
  ): Promise<Done<R>> {
    const me = await this.person();
    const known = me?.projects.some((one) => one.id === id);
    if (!me || !known || id === undefined) return { ok: false, why: 'gone' };
    const stamp = { by: me.id, via: this.via, at: this.now() };
    const done = await this.#shelves.project.change<Done<R>>(id, (project) => {
      if (!mayDo(project, me.id, 'look')) return { result: { ok: false, why: 'gone' } };
      if (!mayDo(project, me.id, deed)) return { result: { ok: false, why: 'not-allowed' } };
      const next = change(project, stamp);
      const result = { ok: true, result: next.result, project: next.project } as const;
      return next.project === project ? { result } : { put: next.project, result };
    });
    if (done?.ok) this.#projects.set(id, Promise.resolve(done.project));
    if (done && !done.ok && done.why === 'gone' && (await this.#isSomebodyElse(me.id)))
      return this.#put(deed, id, change);
    return done ?? { ok: false, why: 'gone' };
  }

  /** Whether this account was linked to somebody's since it was looked at. */
  async #isSomebodyElse(before: string): Promise<boolean> {
    this.#me = undefined;
    const me = await this.person();
    return me !== undefined && me.id !== before;
  }

  async #project(id: string): Promise<Project | undefined> {
    const me = await this.person();
    const loading = this.#projects.get(id) ?? this.#shelves.project.load(id);
    this.#projects.set(id, loading);
    const project = await loading;
    return project && me && mayDo(project, me.id, 'look') ? project : undefined;
  }

  #isOver({ state }: Project): boolean {
    return state.kind === 'deleted' && this.now() - state.at > LIMITS.restore * DAY;
  }

  /** A project among others, none of which it may hinder. */
  async #readable(id: string): Promise<Project | undefined> {
    try {
      return await this.#project(id);
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
      // Another person is taking this one's place: what is changed here would be lost.
      if (before.joins !== undefined) return { result: undefined };
      const after = change(before);
      return { put: after, result: after };
    });
    if (!me && tries === 0) throw new Error('a person vanished again and again while being changed');
    this.#me = me && Promise.resolve(me);
    return me ?? this.#changeMe(change, tries - 1);
  }
}
