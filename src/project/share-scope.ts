/** How far a share goes: which commands answer it, what of the project they see, and what a change by its helper may touch. */

import { difference } from './json-patch.ts';
import { EMPTY_MEASURES, type Measures } from './measurements.ts';
import type { Content, Project } from './project.ts';
import { may, type Signed } from './project-limits.ts';
import { EMPTY_STAGES, sameName } from './project-room.ts';
import { EMPTY_SHOPPING } from './purchases.ts';
import { afterRooms } from './rooms-follow.ts';
import { type Share, type Shared, signatureOf } from './shares.ts';
import { EMPTY_SPEND } from './spending.ts';

interface Scope {
  /** Commands that answer from the project, by their full names. */
  readonly commands: readonly string[];
  /** Parts of the project that its helper may change, as far as their role goes. */
  readonly touches: readonly (keyof Content)[];
}

/** They gather what was shared, whatever it is, and keep to it themselves. */
const GATHERS = ['project sheets', 'project handoff'];

/** Whether a command gathers what was shared out of the whole. */
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

/** What whoever was given the whole project may change. */
const WHOLE: readonly (keyof Content)[] = ['rooms', 'picks', 'kept', 'shopping', 'stages', 'log', 'found', 'measures'];

/** Parts that nobody changes who may only tick and note, what they changed before as little. */
const MEASURED: readonly (keyof Content)[] = ['rooms', 'picks', 'kept', 'measures'];

/** Tells lengths of walls, wherever what was shared hangs on them. */
const MEASURE = 'project measure';

/** What is between an owner and those who pay, whatever is shared. */
const OWNERS = ['project spend'];

/** Whether a command, by its full name, answers from what was shared. */
export function covers({ what }: Share, command: string): boolean {
  if (what === 'project') return !OWNERS.includes(command);
  const { commands, touches } = SCOPES[what];
  return gathers(command) || commands.includes(command) || (command === MEASURE && touches.includes('measures'));
}

/** The commands that show what was shared, the plainest first. */
export function shownBy({ what }: Share): readonly string[] {
  return what === 'project' ? ['project show'] : SCOPES[what].commands;
}

/** Whether a project is seen through a share of a part of it. */
export function isSharedPart(share: Share | undefined): boolean {
  return share !== undefined && share.what !== 'project';
}

/**
 * The project as a helper sees it beside what was shared: of a part, its name and their own notes and changes. Nobody but
 * the owner sees what was spent, who pays, and who else helps.
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
 * The project as the commands see it that answer from what was shared; `whole` where every room is laid, for a room's guide
 * and cuts are those of the whole floor, and the command shows what was shared of it.
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
    // What may hurt them there, and nothing of other rooms.
    hazards: project.hazards.filter((one) => room === undefined || one.room === undefined || sameName(one.room, room)),
    // An answer kept of several rooms would show the others.
    kept: room === undefined ? kept : [],
    ...(what === 'shopping' && { shopping: unpaid(project).shopping }),
    ...(what === 'checklist' && { stages: project.stages }),
  };
}

/** What a command may see: nothing but the helper's own, what was shared, or all rooms of it. */
export type Visibility = 'not' | 'shared' | 'whole';

/** The project as a helper's command sees it. */
export function viewOf(project: Project, share: Share, mark: string, covering: Visibility): Project {
  return covering === 'not' ? seenBy(project, share, mark) : workedBy(project, share, mark, covering === 'whole');
}

/** Whether a helper may make this change: it stays within what was shared, and within their role as it is now. */
export function mayTouch(before: Project, after: Project, { what, room, role }: Share): boolean {
  const shared = what === 'project' ? WHOLE : SCOPES[what].touches;
  const touches = may(role, 'measure') ? shared : shared.filter((key) => !MEASURED.includes(key));
  const rest = ({ version: _v, shares: _s, hazards: _z, count: _c, history: _h, undone: _u, ...parts }: Project) =>
    parts;
  // Whoever may change the rooms gives one another name everywhere.
  const { rooms, picks, kept, found, stages, measures } = before;
  const parts = { rooms, picks, kept, found, stages, measures };
  const follows = touches.includes('rooms') ? { ...afterRooms(parts, after.rooms), rooms } : parts;
  const [old, now] = [rest({ ...before, ...follows }), rest(after)];
  const untouched = (Object.keys(now) as (keyof typeof now)[]).every(
    (key) => touches.some((one) => one === key) || same(old[key], now[key]),
  );
  return untouched && (room === undefined || same(othersThan(room, before), othersThan(room, after)));
}

/** Parts in place of a project's own, with what a helper adds signed: purchases, marks, notes and findings that were not there before. */
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

/** Signs those that are new; what is left of one that was there before stays whose it was. */
function signed<T extends { readonly at: number; readonly by?: Signed | undefined }>(
  before: readonly T[],
  after: readonly T[],
  by: Signed,
): readonly T[] {
  if (before === after) return after;
  const known = new Set(before.map(keyOf));
  return after.map((one) => (known.has(keyOf(one)) ? one : { ...one, by }));
}

/** What stays the same of an entry that is changed: which it is, and when it came. */
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

/** Whether lengths of the rooms that were shared are asked of this helper. */
export function measures(share: Share): boolean {
  return may(share.role, 'measure') && covers(share, MEASURE);
}

/** What is asked of the rooms that were shared, for whoever may measure them. */
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
