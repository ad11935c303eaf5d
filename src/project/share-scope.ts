/** The scope of a share: which commands it covers, what they see of the project, and what the helper may change. */

import { EMPTY_MEASURES, type Measures } from './measurements.ts';
import type { Content, Project } from './project.ts';
import { may, type Signed } from './project-limits.ts';
import { EMPTY_STAGES, sameName } from './project-room.ts';
import { EMPTY_SHOPPING, EMPTY_SPEND } from './purchases.ts';
import { difference } from './record-format.ts';
import { afterRooms } from './rooms-follow.ts';
import { type Share, type Shared, signatureOf } from './shares.ts';

interface Scope {
  /** Full names of commands that answer from the project. */
  readonly commands: readonly string[];
  /** Parts of the project the helper may change, within their role. */
  readonly touches: readonly (keyof Content)[];
}

/** They gather whatever was shared and restrict themselves to it. */
const GATHERS = ['project sheets', 'project handoff'];

export function gathers(command: string): boolean {
  return GATHERS.includes(command);
}

const SCOPES: Readonly<Record<Exclude<Shared, 'project'>, Scope>> = {
  shopping: { commands: ['project shopping'], touches: ['shopping', 'log'] },
  guide: { commands: ['floor planks', 'floor layout'], touches: ['rooms', 'measures', 'log'] },
  cuts: { commands: ['floor planks', 'trim list', 'trim edges', 'trim reset'], touches: ['rooms', 'measures', 'log'] },
  tearout: { commands: ['prep tearout'], touches: ['rooms', 'measures', 'log'] },
  checklist: { commands: ['project progress'], touches: ['stages', 'rooms', 'measures', 'log'] },
};

const WHOLE: readonly (keyof Content)[] = ['rooms', 'picks', 'kept', 'shopping', 'stages', 'log', 'found', 'measures'];

/** Parts that helpers who may only check off and take notes never change, not even their own earlier changes. */
const MEASURED: readonly (keyof Content)[] = ['rooms', 'picks', 'kept', 'measures'];

/** Reports wall lengths, whenever the shared part depends on them. */
const MEASURE = 'project measure';

/** Between the owner and those who pay, whatever is shared. */
const OWNERS = ['project spend'];

export function covers({ what }: Share, command: string): boolean {
  if (what === 'project') return !OWNERS.includes(command);
  const { commands, touches } = SCOPES[what];
  return gathers(command) || commands.includes(command) || (command === MEASURE && touches.includes('measures'));
}

/** The commands that show what was shared, the simplest first. */
export function shownBy({ what }: Share): readonly string[] {
  return what === 'project' ? ['project show'] : SCOPES[what].commands;
}

export function isSharedPart(share: Share | undefined): boolean {
  return share !== undefined && share.what !== 'project';
}

/**
 * The project as a helper sees it outside what was shared: for a partial share its name plus their own notes and
 * changes. Only the owner sees spending, payers and other helpers.
 */
function seenBy(project: Project, share: Share, mark: string): Project {
  const unspent = withoutMoney(project, share);
  if (share.what === 'project') return { ...unspent, measures: measuresSeen(project, share) };
  return {
    ...unspent,
    hazards: [],
    rooms: [],
    picks: {},
    kept: [],
    shopping: EMPTY_SHOPPING,
    stages: EMPTY_STAGES,
    log: project.log.filter(({ by }) => isOf(by, share)),
    found: [],
    measures: measuresSeen(project, share),
    history: unspent.history.filter(({ by }) => by === mark),
    undone: unspent.undone.filter(({ by }) => by === mark),
  };
}

/**
 * The project as seen by commands the share covers. `whole`: with every room laid, because a room's guide and cuts come
 * from the whole floor; the command then shows only the shared part.
 */
function workedBy(project: Project, share: Share, mark: string, whole = false): Project {
  if (share.what === 'project') return { ...withoutMoney(project, share), measures: measuresSeen(project, share) };
  const { what } = share;
  const room = whole ? undefined : share.room;
  const { rooms, picks } = project;
  const seen = seenBy(project, share, mark);
  const names = SCOPES[what].commands.flatMap((name) => [name, name.slice(name.indexOf(' ') + 1)]);
  const kept =
    what === 'shopping' ? project.kept : project.kept.filter(({ ask }) => names.some((name) => begins(ask, name)));
  return {
    ...seen,
    rooms: room === undefined ? rooms : rooms.filter(({ name }) => sameName(name, room)),
    picks,
    // Hazards of that room, but not of the others.
    hazards: project.hazards.filter((one) => room === undefined || one.room === undefined || sameName(one.room, room)),
    // A saved answer about several rooms would reveal the others.
    kept: room === undefined ? kept : [],
    ...(what === 'shopping' && { shopping: unpaid(project).shopping }),
    ...(what === 'checklist' && { stages: project.stages }),
  };
}

/** What a command sees: only the helper's own things, the shared part, or all rooms of it. */
export type Visibility = 'not' | 'shared' | 'whole';

export function viewOf(project: Project, share: Share, mark: string, covering: Visibility): Project {
  return covering === 'not' ? seenBy(project, share, mark) : workedBy(project, share, mark, covering === 'whole');
}

/** Whether a helper may make this change: it has to stay within the share and within their current role. */
export function mayTouch(before: Project, after: Project, { what, room, role }: Share): boolean {
  const shared = what === 'project' ? WHOLE : SCOPES[what].touches;
  const touches = may(role, 'measure') ? shared : shared.filter((key) => !MEASURED.includes(key));
  const rest = ({ version: _v, shares: _s, hazards: _z, count: _c, history: _h, undone: _u, ...parts }: Project) =>
    parts;
  // Anyone who may change the rooms may rename one everywhere.
  const { rooms, picks, kept, found, stages, measures } = before;
  const parts = { rooms, picks, kept, found, stages, measures };
  const follows = touches.includes('rooms') ? { ...afterRooms(parts, after.rooms), rooms } : parts;
  const [old, now] = [rest({ ...before, ...follows }), rest(after)];
  const untouched = (Object.keys(now) as (keyof typeof now)[]).every(
    (key) => touches.some((one) => one === key) || same(old[key], now[key]),
  );
  return untouched && (room === undefined || same(othersThan(room, before), othersThan(room, after)));
}

/**
 * New parts for a project, with the helper's signature on purchases, marks, notes and findings that weren't there
 * before.
 */
export function signedBy(before: Project, parts: Partial<Content>, share: Share): Partial<Content> {
  const by = signatureOf(share);
  const { shopping, stages, log, found, measures } = parts;
  return {
    ...parts,
    ...(shopping && { shopping: { ...shopping, bought: signed(before.shopping.bought, shopping.bought, by) } }),
    ...(stages && { stages: { ...stages, marks: signed(before.stages.marks, stages.marks, by) } }),
    ...(log && { log: signed(before.log, log, by) }),
    ...(found && { found: signed(before.found, found, by) }),
    ...(measures && {
      measures: {
        open: signed(before.measures.open, measures.open, by),
        told: signed(before.measures.told, measures.told, by),
      },
    }),
  };
}

/** Signs new entries; existing ones keep their signature. */
function signed<T extends { readonly at: number; readonly by?: Signed | undefined }>(
  before: readonly T[],
  after: readonly T[],
  by: Signed,
): readonly T[] {
  if (before === after) return after;
  const known = new Set(before.map(keyOf));
  return after.map((one) => (known.has(keyOf(one)) ? one : { ...one, by }));
}

/** What identifies an entry through changes: what it is, and when it was added. */
function keyOf(one: object): string {
  const { at, item, lot, room, stage, state, text, wall, what } = one as Readonly<Record<string, unknown>>;
  return JSON.stringify([at, item, lot, room, stage, state, text, wall, what]);
}

function isOf(by: Signed | undefined, { id }: Share): boolean {
  return by?.helper === id;
}

function begins(ask: string, name: string): boolean {
  return `${ask} `.startsWith(`${name} `);
}

function othersThan(room: string, { rooms, measures }: Project): readonly unknown[] {
  const other = (one: { readonly room: string }): boolean => !sameName(one.room, room);
  return [
    ...rooms.filter(({ name }) => !sameName(name, room)),
    measures.open.filter(other),
    measures.told.filter(other),
  ];
}

/** Whether this helper may be asked to measure the shared rooms. */
export function measures(share: Share): boolean {
  return may(share.role, 'measure') && covers(share, MEASURE);
}

/** Open measurements of the shared rooms, for helpers who may measure. */
function measuresSeen({ measures: { open, told: given } }: Project, share: Share): Measures {
  if (!measures(share)) return EMPTY_MEASURES;
  const seen = (one: { readonly room: string }): boolean => share.room === undefined || sameName(one.room, share.room);
  return { open: open.filter(seen), told: given.filter(seen) };
}

function same(one: unknown, other: unknown): boolean {
  return difference(one, other) === undefined;
}

function unpaid({ shopping }: Project): Pick<Project, 'shopping'> {
  return { shopping: { ...shopping, bought: shopping.bought.map(({ cost: _c, payer: _p, ...one }) => one) } };
}

function withoutMoney(project: Project, share: Share): Project {
  const unspent = project.history.filter(({ back }) => !('keys' in back && 'spend' in back.keys));
  const undone = project.undone.filter(({ back }) => !('keys' in back && 'spend' in back.keys));
  return { ...project, ...unpaid(project), spend: EMPTY_SPEND, shares: [share], history: unspent, undone };
}
