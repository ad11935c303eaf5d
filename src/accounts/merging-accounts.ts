/** Merging two people into one, safe against crashes at any point: the next request of either continues the merge. */

import { changed } from '../project/history.ts';
import { NO_SETTINGS, type Person } from '../project/person.ts';
import { freeName, type Project, projectCodec } from '../project/project.ts';
import { ROLES, type Role } from '../project/project-limits.ts';
import { isOver, type Share } from '../project/shares.ts';
import { RecordDamaged, RecordTooNew } from '../storage/types.ts';
import { CHANGED } from '../text/project-text.ts';
import { mintLongId, type Shelves } from './records.ts';

// What becomes of the person who stays, and of projects that mention the other.

/** The person who stays, with the other's accounts, projects and settings; their own settings win. */
function withJoined(stays: Person, other: Person): Person {
  const accounts = [...new Set([...stays.accounts, ...other.accounts])];
  const ids = [...new Set([...stays.projects, ...other.projects].map(({ id }) => id))];
  const projects = ids.map((id) => {
    const roles = [...stays.projects, ...other.projects].flatMap((one) => (one.id === id ? [one.role] : []));
    return { id, role: highest(roles) };
  });
  const standards = { ...other.settings.standards, ...stays.settings.standards };
  const inUse = stays.inUse ?? other.inUse;
  return {
    ...stays,
    accounts,
    projects,
    linked: [...(stays.linked ?? []), ...(other.linked ?? [])].filter(
      (one, i, all) => all.findIndex(({ account }) => account === one.account) === i,
    ),
    settings: { ...other.settings, ...stays.settings, standards },
    ...(inUse !== undefined && { inUse }),
  };
}

/** The project with one person replaced by another wherever it mentions them; unchanged if it doesn't. */
function inPlaceOf(project: Project, other: string, stays: string, now: number): Project {
  const written = JSON.stringify(projectCodec.write(project));
  // Ids are 22 random characters, so only a mention of that person contains one.
  if (!written.includes(other)) return project;
  const read = projectCodec.read(JSON.parse(written.replaceAll(other, stays)));
  // The owner needs no share. Of two shares that now belong to one person the wider stays, but an expired one never
  // wins.
  const shares = read.shares
    .filter((one) => !isOver(one, now))
    .filter(({ with: who }) => !('person' in who && who.person === read.owner))
    .filter((one, i, all) => !all.some((rival, j) => isSame(one, rival) && j !== i && isWider(rival, one, j < i)));
  return { ...read, shares };
}

function isSame({ with: one }: Share, { with: other }: Share): boolean {
  return 'person' in one && 'person' in other && one.person === other.person;
}

function isWider(one: Share, other: Share, first: boolean): boolean {
  const width = ({ what, role }: Share): number => (what === 'project' ? 10 : 0) - ROLES.indexOf(role);
  return width(one) > width(other) || (width(one) === width(other) && first);
}

function highest(roles: readonly Role[]): Role {
  return ROLES.find((role) => roles.includes(role)) ?? 'look';
}

/** Retries when someone else changes the people between read and write; beyond this it is an error. */
const TRIES = 20;

/** The person an account's record leads to, as stored. Throws Outage. */
async function writtenPerson({ account, person }: Shelves, key: string): Promise<Person | undefined> {
  const found = await account.load(key);
  const one = found && (await person.load(found.person));
  return one?.accounts.includes(key) ? one : undefined;
}

/** Whether a person is part of a merge in progress, on either side. */
function isJoining({ joins, joining = [] }: Person): boolean {
  return joins !== undefined || joining.length > 0;
}

/** Records that the person of `account` replaces this one; false if either is already being merged. Throws Outage. */
export async function beginJoin(shelves: Shelves, { id }: Person, account: string, at: number): Promise<boolean> {
  const begun = await shelves.person.change(id, (before) => {
    if (isJoining(before)) return { result: false };
    const linked = before.accounts.map((key) => ({ account: key, at }));
    return { put: { ...before, joins: account, linked }, result: true };
  });
  return begun ?? false;
}

/** Finishes any merge in progress for the person of an account and returns the result. Throws Outage. */
export async function personOf(shelves: Shelves, key: string): Promise<Person | undefined> {
  for (let tries = 0; tries < TRIES; tries++) {
    const written = await writtenPerson(shelves, key);
    if (!written || !isJoining(written)) return written;
    const people = await chainOf(shelves, written);
    const stays = people.at(-1);
    const [next] = people.slice(-2, -1);
    const waiting = stays?.joining?.[0];
    if (stays && next) await join(shelves, next, stays);
    else if (stays && waiting !== undefined) await joinWaiting(shelves, waiting, stays);
  }
  throw new Error('two people were changed again and again while being joined');
}

/** From a person to the one who stays, each merging into the next. */
async function chainOf(shelves: Shelves, from: Person): Promise<readonly Person[]> {
  const chain = [from];
  for (let last = from; last.joins !== undefined; ) {
    const next = await writtenPerson(shelves, last.joins);
    const ring = next ? chain.findIndex(({ id }) => id === next.id) : -1;
    if (next && ring < 0) {
      chain.push(next);
      last = next;
      continue;
    }
    // Nothing left to merge; or two used each other's codes at once, and everyone has to agree on who stays.
    const round = ring < 0 ? [last] : chain.slice(ring);
    const stays = round.reduce((least, one) => (one.id < least.id ? one : least));
    await release(shelves, stays);
    return [];
  }
  return chain;
}

async function release(shelves: Shelves, { id, joins }: Person): Promise<void> {
  await shelves.person.change(id, (before) => {
    if (before.joins !== joins) return { result: undefined };
    const { joins: _joins, linked: _linked, ...same } = before;
    return { put: same, result: undefined };
  });
}

/** Continues an interrupted merge. */
async function joinWaiting(shelves: Shelves, id: string, stays: Person): Promise<void> {
  const other = await shelves.person.load(id);
  if (other) await join(shelves, other, stays);
  else await settle(shelves, id, stays.id);
}

/**
 * Every step can be repeated. The person who stays is written first, and doesn't merge into anyone until the last step
 * is done.
 */
async function join(shelves: Shelves, other: Person, stays: Person): Promise<void> {
  const taken = await shelves.person.change(stays.id, (before) => {
    if (before.joins !== undefined) return { result: false };
    const joining = before.joining ?? [];
    const begun = joining.includes(other.id);
    // Another process has finished it in the meantime.
    if (!begun && other.accounts.every((key) => before.accounts.includes(key))) return { result: false };
    const after = withJoined(before, other);
    return { put: begun ? after : { ...after, joining: [...joining, other.id] }, result: true };
  });
  if (taken !== true) return;
  const others = await othersThan(shelves, stays, other);
  for (const { id } of other.projects) {
    const name = await readable(() =>
      shelves.project.change(id, (project) => {
        const put = madeTheirs(project, other, stays.id, others);
        return put === project ? { result: put.name } : { put, result: put.name };
      }),
    );
    if (name !== undefined) others.push({ name });
  }
  for (const key of other.accounts) {
    await shelves.account.change(key, (account) =>
      account.person === other.id
        ? { put: { ...account, person: stays.id }, result: undefined }
        : { result: undefined },
    );
  }
  await settle(shelves, other.id, stays.id);
}

/** A project taken over from the other person, renamed if the one who stays has one of the same name. */
function madeTheirs(project: Project, other: Person, stays: string, others: readonly Named[]): Project {
  const [{ account, at } = { account: '', at: 0 }] = other.linked ?? [];
  const put = inPlaceOf(project, other.id, stays, at);
  const name = freeName(put.name, others);
  if (project.owner !== other.id || name === put.name) return put;
  return changed(put, { name }, CHANGED.renamed(put.name, name), { by: stays, via: account, at });
}

/** The projects of the person who stays, without the other's. */
async function othersThan({ project }: Shelves, stays: Person, other: Person): Promise<Named[]> {
  const own = stays.projects.filter(({ id }) => !other.projects.some((one) => one.id === id));
  const loaded = await Promise.all(own.map(({ id }) => readable(() => project.load(id))));
  return loaded.filter((one) => one !== undefined);
}

type Named = Pick<Project, 'name'>;

/** An unreadable project doesn't block a merge. */
async function readable<T>(work: () => Promise<T>): Promise<T | undefined> {
  try {
    return await work();
  } catch (cause) {
    if (cause instanceof RecordDamaged || cause instanceof RecordTooNew) return undefined;
    throw cause;
  }
}

/** Deletes the person who has been merged completely. */
async function settle(shelves: Shelves, other: string, stays: string): Promise<void> {
  await shelves.person.remove(other);
  await shelves.person.change(stays, ({ joining = [], ...before }) => {
    const left = joining.filter((id) => id !== other);
    return { put: left.length > 0 ? { ...before, joining: left } : before, result: undefined };
  });
}

/** The person of an account, created if there is none. Throws Outage. */
export async function ensurePerson(shelves: Shelves, key: string): Promise<Person> {
  const there = await personOf(shelves, key);
  if (there) return there;
  const made: Person = { version: 3, id: mintLongId(), accounts: [key], settings: NO_SETTINGS, projects: [] };
  await shelves.person.create(made.id, made);
  if (await shelves.account.create(key, { version: 1, person: made.id })) return made;
  // Another request of the same account came first, or the person it led to is gone.
  const other = await personOf(shelves, key);
  if (other) {
    await shelves.person.remove(made.id);
    return other;
  }
  await shelves.account.change(key, (account) => ({ put: { ...account, person: made.id }, result: undefined }));
  return made;
}
