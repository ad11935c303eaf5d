/** Who asks, and what the store keeps of them: people, accounts, projects, recent activity, changes, unguessable ids. */

import { createHash, randomBytes } from 'node:crypto';
import { z } from 'zod';
import { isExamplePlank } from '../input/parse-plank.ts';
import { underNewNames } from '../project/findings.ts';
import type { Stamp } from '../project/history.ts';
import { type Account, accountCodec, type Person, personCodec } from '../project/person.ts';
import { type Project, projectCodec } from '../project/project.ts';
import { DAY, type Permission } from '../project/project-limits.ts';
import { mayTouch } from '../project/share-scope.ts';
import { mayDo, type Share, shareMark, standingOf, type Who } from '../project/shares.ts';
import type { KeyValueStore, RecordStore, Store } from '../storage/types.ts';
import type { PlatformName } from '../text/answer-text.ts';

/** Never a display name. */
export interface Asker {
  readonly platform: PlatformName;
  /** The platform's account id. */
  readonly id: string;
  /** The workspace id, if account ids are only unique within one. */
  readonly workspace?: string;
}

/** One key per account, wherever the request comes from. */
export function accountKey({ platform, workspace, id }: Asker): string {
  return workspace === undefined ? `${platform}:${id}` : `${platform}:${workspace}:${id}`;
}

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
  const read = leadSchema.safeParse(await kept.get(leadKey(hash)));
  return read.success ? read.data : undefined;
}

/** Stores where a link leads; without `milliseconds` it never expires. Throws Outage. */
export async function keepLead(kept: KeyValueStore, hash: string, lead: Lead, milliseconds?: number): Promise<void> {
  await kept.set(leadKey(hash), lead, milliseconds);
}

/** Throws Outage. */
export async function dropLead(kept: KeyValueStore, hash: string): Promise<void> {
  await kept.delete(leadKey(hash));
}

function leadKey(hash: string): string {
  return `share:${hash}`;
}

/** All of it expires half a year after the last request. */
const KEPT_FOR = 182 * DAY;
const MOST_OPTIONS = 40;
const MOST_VALUES = 12;
const LONGEST_VALUE = 500;

export const recentSchema = z.object({
  last: z.object({ line: z.string(), headline: z.string(), at: z.number() }).readonly().optional(),
  /** Texts by option, latest first. */
  past: z.record(
    z.string(),
    z.array(z.object({ text: z.string(), times: z.number(), at: z.number() }).readonly()).readonly(),
  ),
  /** By project: the number of the last change seen. */
  seen: z.record(z.string(), z.number()),
});

export type Recent = Readonly<z.infer<typeof recentSchema>>;
export type PastValue = Recent['past'][string][number];

export const NOTHING_RECENT: Recent = { past: {}, seen: {} };

/** Throws Outage. */
export async function recentOf(kept: KeyValueStore, via: string): Promise<Recent> {
  const read = recentSchema.safeParse(await kept.get(recentKey(via)));
  return read.success ? read.data : NOTHING_RECENT;
}

export function keepRecent(kept: KeyValueStore, via: string, recent: Recent): Promise<void> {
  return kept.set(recentKey(via), recent, KEPT_FOR);
}

export async function forgetRecent(kept: KeyValueStore, via: string): Promise<void> {
  await kept.delete(recentKey(via));
}

export function withAnswered(recent: Recent, optionTexts: ReadonlyMap<string, string>, at: number): Recent {
  const past = new Map(Object.entries(recent.past));
  for (const [option, text] of optionTexts) {
    if (text === '' || text.length > LONGEST_VALUE || isExamplePlank(text)) continue;
    const before = past.get(option) ?? [];
    const times = (before.find((one) => one.text === text)?.times ?? 0) + 1;
    const others = before.filter((one) => one.text !== text);
    past.delete(option);
    past.set(option, [{ text, times, at }, ...others].slice(0, MOST_VALUES));
  }
  return { ...recent, past: Object.fromEntries([...past].slice(-MOST_OPTIONS)) };
}

function recentKey(via: string): string {
  return `recent:${via}`;
}

/** `gone`: this user has no such project; `not-allowed`: they may see it, but not do this. */
export type Done<R> =
  | { readonly ok: true; readonly result: R; readonly project: Project }
  | { readonly ok: false; readonly why: 'gone' | 'not-allowed' };

export interface Next<R> {
  readonly project: Project;
  readonly result: R;
}

interface Changer {
  readonly who: Who;
  readonly via: string;
  readonly at: number;
}

/**
 * Changes a project for its owner or a helper; a helper's change is written only if it stays within their share. Throws
 * Outage.
 */
export async function putChange<R>(
  shelf: RecordStore<Project>,
  id: string,
  permission: Permission,
  { who, via, at }: Changer,
  change: (project: Project, stamp: Stamp, share: Share | undefined) => Next<R>,
): Promise<Done<R>> {
  const done = await shelf.change<Done<R>>(id, (project) => {
    const standing = standingOf(project, who, at);
    if (!standing) return { result: { ok: false, why: 'gone' } };
    if (!mayDo(standing, permission)) return { result: { ok: false, why: 'not-allowed' } };
    const { share } = standing;
    const by = share ? shareMark(who, share) : project.owner;
    const next = change(project, { by, via: 'link' in who ? by : via, at }, share);
    if (next.project === project) return { result: { ok: true, ...next } };
    if (share && !mayTouch(project, next.project, share)) return { result: { ok: false, why: 'not-allowed' } };
    const after = withHazardsNamed(project, withSharesKept(project, next.project));
    const put = share ? withLast(after, share, at) : after;
    return { put, result: { ok: true, result: next.result, project: put } };
  });
  return done ?? { ok: false, why: 'gone' };
}

/** Records a helper's last activity on their share. */
function withLast(project: Project, { id }: Share, at: number): Project {
  const said = project.history.at(-1)?.said ?? '';
  return { ...project, shares: project.shares.map((one) => (one.id === id ? { ...one, last: { at, said } } : one)) };
}

function withHazardsNamed(before: Project, after: Project): Project {
  return { ...after, hazards: underNewNames(after.hazards, before.rooms, after.rooms) };
}

/** Updates shares after a change: none for a deleted project, and new room names. */
function withSharesKept(before: Project, after: Project): Project {
  if (after.state.kind === 'deleted') return { ...after, shares: [] };
  if (before.rooms.length !== after.rooms.length) return after;
  const renamed = new Map(before.rooms.map(({ name }, i) => [name, after.rooms[i]?.name ?? name]));
  const shares = after.shares.map((one) =>
    one.room === undefined ? one : { ...one, room: renamed.get(one.room) ?? one.room },
  );
  return { ...after, shares };
}
