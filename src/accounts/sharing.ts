/** Sharing a project: given, changed and stopped by the owner, or left by the helper. */

import type { Person } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { LIMITS } from '../project/project-limits.ts';
import { isOver, isWith, type Share, standingOf } from '../project/shares.ts';
import { ensurePerson, personOf } from './merging-accounts.ts';
import { type Done, dropLead, hashOf, keepLead, mintLongId, type Shelves } from './records.ts';

/** What to share, and with whom: the holder of a link, or the account with a key. */
export interface Offer extends Pick<Share, 'what' | 'room' | 'role' | 'until' | 'label'> {
  readonly to: 'link' | { readonly account: string };
}

/**
 * `full`: the project has no room for more shares; `crowded`: the person already helps with too many projects; `self`:
 * it is the owner.
 */
export type Given =
  | {
      readonly ok: true;
      readonly project: Project;
      readonly share: Share;
      /** The link's token, shown only now. */
      readonly token?: string;
      readonly instead?: Share;
    }
  | { readonly ok: false; readonly why: 'gone' | 'not-allowed' | 'full' | 'crowded' | 'self' };

/** Changes to a share. For `until` and `room`, `undefined` means no end and every room. */
export type ShareChange = Partial<Pick<Share, 'what' | 'role' | 'label'>> & {
  readonly until?: number | undefined;
  readonly room?: string | undefined;
};

type Invited = { readonly person: string } | 'self' | 'crowded';

interface SharingAccess {
  readonly shelves: Shelves;
  readonly now: () => number;
  me(): Promise<Person | undefined>;
  id(): Promise<string | undefined>;
  put(
    id: string,
    change: (project: Project) => { project: Project; result: readonly Share[] },
  ): Promise<Done<readonly Share[]>>;
  changed(project: Project): void;
}

export class Sharing {
  readonly #desk: SharingAccess;

  constructor(access: SharingAccess) {
    this.#desk = access;
  }

  /** Shares something of the project in use. The link's token is returned once and not stored. Throws Outage. */
  async give({ to, ...offer }: Offer): Promise<Given> {
    const [me, id] = [await this.#desk.me(), await this.#desk.id()];
    const at = this.#desk.now();
    if (!me || id === undefined) return { ok: false, why: 'gone' };
    const project = await this.#desk.shelves.project.load(id);
    const standing = project && standingOf(project, { person: me.id }, at);
    if (!standing) return { ok: false, why: 'gone' };
    if (standing.role !== 'owner') return { ok: false, why: 'not-allowed' };
    const token = mintLongId();
    const who = to === 'link' ? { link: hashOf(token) } : await this.#person(to, id, me);
    if (typeof who === 'string') return { ok: false, why: who };
    if ('link' in who) await keepLead(this.#desk.shelves.kept, who.link, { project: id }, lasting(offer, at));
    let instead: Share | undefined;
    const done = await this.#desk.put(id, (before) => {
      const live = before.shares.filter((one) => !isOver(one, at));
      instead = live.find((one) => isWith(one, who));
      const others = live.filter((one) => one !== instead);
      if (others.length >= LIMITS.shares) return { project: before, result: [] };
      const given = before.given + (instead ? 0 : 1);
      const made: Share = { ...offer, id: instead?.id ?? String(given), with: who, at, by: me.id };
      return { project: { ...before, shares: [...others, made], given }, result: [made] };
    });
    if (!done.ok) return done;
    const [share] = done.result;
    if (!share) return { ok: false, why: 'full' };
    if ('person' in who) await enlist(this.#desk.shelves, who.person, id, offer.role);
    this.#desk.changed(done.project);
    return {
      ok: true,
      project: done.project,
      share,
      ...('link' in who && { token }),
      ...(instead && { instead }),
    };
  }

  /**
   * Changes shares of the project in use by id; returns those that existed. A link's expiry is updated too. Throws
   * Outage.
   */
  async change(ids: readonly string[], change: ShareChange): Promise<Done<readonly Share[]>> {
    const id = await this.#desk.id();
    if (id === undefined) return { ok: false, why: 'gone' };
    const now = this.#desk.now();
    const changes = (one: Share): boolean => ids.includes(one.id) && !isOver(one, now);
    const done = await this.#desk.put(id, (project) => {
      const shares = project.shares.map((one) => (changes(one) ? withoutUndefined({ ...one, ...change }) : one));
      return { project: { ...project, shares }, result: shares.filter(changes) };
    });
    if (!done.ok) return done;
    for (const share of done.result)
      if ('link' in share.with)
        await keepLead(this.#desk.shelves.kept, share.with.link, { project: id }, lasting(share, now));
    this.#desk.changed(done.project);
    return done;
  }

  /** Stops shares of the project in use by id, effective at once; returns those that existed. Throws Outage. */
  async stop(ids: readonly string[]): Promise<Done<readonly Share[]>> {
    const id = await this.#desk.id();
    if (id === undefined) return { ok: false, why: 'gone' };
    const done = await this.#desk.put(id, (project) => {
      const gone = project.shares.filter((one) => ids.includes(one.id));
      const shares = project.shares.filter((one) => !gone.includes(one));
      return { project: gone.length === 0 ? project : { ...project, shares }, result: gone };
    });
    if (!done.ok) return done;
    for (const share of done.result) await this.#tidy(share, id);
    this.#desk.changed(done.project);
    return done;
  }

  /** The person of an account; undefined if there is none. Throws Outage. */
  async personAt(account: string): Promise<string | undefined> {
    return (await personOf(this.#desk.shelves, account))?.id;
  }

  /** Leaves a project shared with the user. False if it wasn't shared. Throws Outage. */
  async leave(id: string): Promise<boolean> {
    const me = await this.#desk.me();
    if (!me?.projects.some((one) => one.id === id && one.role !== 'owner')) return false;
    await leaveProject(this.#desk.shelves, id, me.id);
    await unlist(this.#desk.shelves, me.id, id);
    return true;
  }

  /** The person of an account, who may be new. */
  async #person({ account }: Exclude<Offer['to'], 'link'>, project: string, me: Person): Promise<Invited> {
    if (me.accounts.includes(account)) return 'self';
    const { id, projects } = await ensurePerson(this.#desk.shelves, account);
    if (id === me.id) return 'self';
    const others = projects.filter((one) => one.id !== project && one.role !== 'owner');
    return others.length >= LIMITS.sharedWith ? 'crowded' : { person: id };
  }

  async #tidy({ with: who }: Share, id: string): Promise<void> {
    if ('link' in who) await dropLead(this.#desk.shelves.kept, who.link);
    else await unlist(this.#desk.shelves, who.person, id);
  }
}

/** Ends a person's shares of a project. Throws Outage. */
export async function leaveProject({ project }: Shelves, id: string, person: string): Promise<void> {
  await project.change(id, (before) => {
    const shares = before.shares.filter((one) => !isWith(one, { person }));
    return shares.length === before.shares.length
      ? { result: undefined }
      : { put: { ...before, shares }, result: undefined };
  });
}

/** Adds a project to a person's list, where it shows as long as it is shared. Throws Outage. */
async function enlist({ person }: Shelves, id: string, project: string, role: Share['role']): Promise<void> {
  await person.change(id, (me) => ({
    put: { ...me, projects: [...me.projects.filter((one) => one.id !== project), { id: project, role }] },
    result: undefined,
  }));
}

async function unlist({ person }: Shelves, id: string, project: string): Promise<void> {
  await person.change(id, ({ inUse, ...me }) => ({
    put: {
      ...me,
      ...(inUse !== undefined && inUse !== project && { inUse }),
      projects: me.projects.filter((one) => one.id !== project),
    },
    result: undefined,
  }));
}

/** Slightly longer than the share, which is what actually ends it. */
function lasting({ until }: Pick<Share, 'until'>, now: number): number | undefined {
  return until === undefined ? undefined : until - now + 60_000;
}

function withoutUndefined(share: Share | (Omit<Share, 'until'> & ShareChange)): Share {
  return Object.fromEntries(Object.entries(share).filter(([, value]) => value !== undefined)) as Share;
}
