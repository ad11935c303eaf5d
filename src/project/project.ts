/** A saved project: its rooms, picks, saved answers and history, with migrations from older versions; new ones and copies. */

import { z } from 'zod';
import { folded } from '../input/rooms/room-text.ts';
import { EMPTY_FOUND, EMPTY_LOG, foundSchema, hazardsSchema, type KeptHazards, logSchema } from './findings.ts';
import { EMPTY_MEASURES, measuresSchema } from './measurements.ts';
import { LIMITS, ROLES } from './project-limits.ts';
import { doorwaysTogether, EMPTY_STAGES, roomsSchema, sameName, stagesSchema } from './project-room.ts';
import { EMPTY_SHOPPING, EMPTY_SPEND, shoppingSchema, spendSchema } from './purchases.ts';
import { codecOf, type Migration, patchSchema } from './record-format.ts';
import { requestOptions } from './saved-request.ts';
import { sharesSchema } from './shares.ts';

const partsSchema = {
  shopping: shoppingSchema,
  stages: stagesSchema,
  spend: spendSchema,
  log: logSchema,
  found: foundSchema,
  // Absent in data exported before measures existed.
  measures: measuresSchema.default(EMPTY_MEASURES),
};

export function emptyParts() {
  return {
    shopping: EMPTY_SHOPPING,
    stages: EMPTY_STAGES,
    spend: EMPTY_SPEND,
    log: EMPTY_LOG,
    found: EMPTY_FOUND,
    measures: EMPTY_MEASURES,
  };
}

// Version 0, the draft: rooms with a size, a single plank, an archive flag.

const draftSchema = z.object({
  id: z.string(),
  owner: z.string(),
  name: z.string(),
  archived: z.boolean(),
  rooms: z.array(z.object({ name: z.string(), size: z.string() })),
  plank: z.string().optional(),
});

/** Migrates a draft to version 1. Throws if it isn't one. */
const projectFromDraft: Migration = (record) => {
  const { id, owner, name, archived, rooms, plank } = draftSchema.parse(record);
  return {
    version: 1,
    id,
    owner,
    name,
    helpers: [],
    state: { kind: archived ? 'archived' : 'active' },
    rooms: rooms.map(({ name: room, size }) => ({ name: room, text: size, notes: [], inScope: true })),
    picks: plank === undefined ? {} : { plank },
    kept: [],
    ...emptyParts(),
    count: 0,
    history: [],
    undone: [],
  };
};

// Version 4: each saved answer says which rooms it is about, and which of its options the project doesn't hold.

/** Options of a single piece of work, as of version 3; all others were picked along with the answer. */
const OF_ONE_WORK = [
  'planks',
  'only',
  'readings',
  'damage',
  'area',
  'found',
  'walls',
  'first-joist',
  'notch',
  'notch-length',
  'notch-place',
  'hole',
  'hole-edge',
  'leak',
  'water',
  'mould',
  'tested',
  'below',
  'ramp',
  'so-far',
];

interface Before {
  readonly names: readonly string[];
  readonly picks: Readonly<Record<string, unknown>>;
}

/** Migrates saved answers, including those in changes that can be undone. Throws if the record can't be read. */
const withSavedWork: Migration = (record) => ({ ...savedWorkIn(record), version: 4 });

/** Migrates content whose saved answers may be from version 3, as exported then; current ones are unchanged. */
export function savedWorkIn(record: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const rooms: readonly unknown[] = Array.isArray(record.rooms) ? record.rooms : [];
  const before: Before = {
    names: rooms.flatMap((room) =>
      isRecord(room) && typeof room.name === 'string' && room.inScope !== false ? [room.name] : [],
    ),
    picks: isRecord(record.picks) ? record.picks : {},
  };
  const parts = ['kept', 'history', 'undone'].filter((part) => part in record);
  return {
    ...record,
    picks: withDoorways(before.picks, record.kept),
    ...Object.fromEntries(parts.map((part) => [part, mapped(record[part], before)])),
  };
}

/** Used to count the doorways of every saved answer; now only picked ones count. */
function withDoorways(picks: Before['picks'], kept: unknown): Before['picks'] {
  const key = 'edges doorways';
  const saved = (Array.isArray(kept) ? kept : []).flatMap((one) =>
    isRecord(one) && one.own === undefined && typeof one.ask === 'string' && /^(?:trim )?edges /.test(one.ask)
      ? (requestOptions(one.ask).get('doorways') ?? [])
      : [],
  );
  const picked = picks[key];
  if (typeof picked !== 'string' || saved.length === 0) return picks;
  const all = saved.reduce(doorwaysTogether, picked);
  return all.length > LIMITS.pick ? picks : { ...picks, [key]: all };
}

function mapped(value: unknown, before: Before): unknown {
  if (Array.isArray(value)) return value.map((one) => mapped(one, before));
  if (!isRecord(value)) return value;
  const { id, ask, headline } = value;
  if (typeof id === 'string' && typeof ask === 'string' && typeof headline === 'string' && value.own === undefined)
    return { ...value, ...workOf(ask, before) };
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, mapped(one, before)]));
}

function workOf(ask: string, { names, picks }: Before) {
  const options = requestOptions(ask);
  const command = /^(?:(?:floor|trim|prep) )?(\S+)/.exec(ask)?.[1] ?? '';
  const own = [...options].flatMap(([option, text]) => {
    if (option === 'room') return [];
    if (command === 'edges' && option === 'doorways') return [];
    const picked = picks[`${command} ${option}`] ?? picks[option];
    return OF_ONE_WORK.includes(option) || (picked !== undefined && picked !== text) ? [option] : [];
  });
  const rooms = roomsOf(options, own, names);
  return { own, ...(rooms && { rooms }) };
}

/** The rooms a request names before its shapes, or the only one named in its own texts; undefined for all or none. */
function roomsOf(
  options: ReadonlyMap<string, string>,
  own: readonly string[],
  names: readonly string[],
): readonly string[] | undefined {
  const shapes = options.get('room');
  const longest = [...names].sort((one, other) => other.length - one.length);
  if (shapes !== undefined) {
    const found = shapes.split(/(?:(?<!\s)\s+)?;\s*/).map((shape) => {
      const plain = folded(shape).replace(/^(?:the|my|our) /, '');
      return longest.find(
        (name) => plain.startsWith(folded(name)) && !/^[\p{L}\p{N}]/u.test(plain.slice(folded(name).length)),
      );
    });
    const known = names.filter((name) => found.includes(name));
    return known.length === names.length && found.every((name) => name !== undefined) ? undefined : known;
  }
  const texts = ` ${folded(own.map((option) => options.get(option) ?? '').join(' ; ')).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  const [only, ...more] = names.filter((name) => texts.includes(` ${folded(name).replace(/[^\p{L}\p{N}]+/gu, ' ')} `));
  return only !== undefined && more.length === 0 ? [only] : undefined;
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

// Version 2: helpers, who had access to the whole project, become shares.

const helpersSchema = z.array(z.object({ person: z.string().min(16), role: z.enum(ROLES) }));

/** Each helper becomes the share with the same number. Throws if they can't be read. */
const withShares: Migration = ({ helpers, ...same }) => {
  const given = helpersSchema.parse(helpers).slice(0, LIMITS.shares);
  const shares = given.map(({ person, role }, i) => ({
    id: String(i + 1),
    what: 'project',
    role: role === 'owner' ? 'measure' : role,
    with: { person },
    at: 0,
    by: String(same.owner),
  }));
  return { ...same, version: 2, shares, given: shares.length };
};

const stateSchema = z
  .discriminatedUnion('kind', [
    z.object({ kind: z.literal('active') }),
    z.object({ kind: z.literal('archived') }),
    /** Milliseconds since 1970. */
    z.object({ kind: z.literal('deleted'), at: z.number() }),
  ])
  .readonly();

const keptSchema = z
  .object({
    id: z.string().min(8),
    /** The complete request, as it can be typed. */
    ask: z.string().min(1).max(LIMITS.ask),
    headline: z.string().max(LIMITS.headline),
    at: z.number(),
    /** Rooms of the project it is about; absent if it is about the whole job or names none. */
    rooms: z.array(z.string().min(1).max(LIMITS.name)).max(LIMITS.rooms).readonly().optional(),
    /**
     * Its options that aren't stored in the project, such as sizes measured on site: they belong to this piece of work.
     */
    own: z.array(z.string().min(1).max(LIMITS.name)).max(LIMITS.picks).readonly().default([]),
  })
  .readonly();

/** One change: who made it, from which account, a description, and the patch that undoes it. */
const changeSchema = z
  .object({
    /** Counted from 1 over the project's lifetime. */
    no: z.int().positive(),
    at: z.number(),
    by: z.string(),
    via: z.string(),
    said: z.string().max(LIMITS.note),
    back: patchSchema,
  })
  .readonly();

const contentShape = {
  name: z.string().min(1).max(LIMITS.name),
  state: stateSchema,
  rooms: roomsSchema,
  /** Option texts by option name, `plank`, or by command and option name, `edges stock`. */
  picks: z.record(z.string(), z.string().min(1).max(LIMITS.pick)).readonly(),
  kept: z.array(keptSchema).max(LIMITS.kept).readonly(),
  ...partsSchema,
};

export const contentSchema = z.object(contentShape).readonly();

export const projectSchema = z
  .object({
    version: z.literal(5),
    id: z.string().min(16),
    owner: z.string().min(16),
    shares: sharesSchema,
    /** Shares ever given. */
    given: z.int().nonnegative(),
    /** Hazards mentioned; undo doesn't affect them. */
    hazards: hazardsSchema,
    ...contentShape,
    /** Changes ever made. */
    count: z.int().nonnegative(),
    history: z.array(changeSchema).max(LIMITS.changes).readonly(),
    /** Undone changes, latest last; a new change clears them. */
    undone: z.array(changeSchema).max(LIMITS.changes).readonly(),
  })
  .readonly();

export type Project = z.infer<typeof projectSchema>;
export type Content = z.infer<typeof contentSchema>;
export type ProjectState = z.infer<typeof stateSchema>;
export type KeptAsk = z.infer<typeof keptSchema>;
export type Change = z.infer<typeof changeSchema>;

/** Earlier versions had no measurements to ask for. */
const withMeasures: Migration = (record) => ({ ...record, version: 3, measures: EMPTY_MEASURES });

/** Earlier versions had hazards only in findings and notes. */
const withHazardsKept: Migration = (record) => ({ ...record, version: 5, hazards: [] });

export const projectCodec = codecOf<Project>('project', projectSchema, [
  projectFromDraft,
  withShares,
  withMeasures,
  withSavedWork,
  withHazardsKept,
]);

/** The parts of a project that change and can be undone. */
export function contentOf(project: Project): Content {
  const { version: _v, id: _i, owner: _o, shares: _h, given: _g, hazards: _z, ...rest } = project;
  const { count: _c, history: _s, undone: _u, ...content } = rest;
  return content;
}

interface Born {
  readonly id: string;
  readonly owner: string;
}

export function emptyContent(name: string): Content {
  return { name, state: { kind: 'active' }, rooms: [], picks: {}, kept: [], ...emptyParts() };
}

export function bornWith(content: Content, { id, owner }: Born, hazards: KeptHazards = []): Project {
  return { version: 5, id, owner, shares: [], given: 0, hazards, ...content, count: 0, history: [], undone: [] };
}

/** Copies the rooms and picks, but no answers, purchases or record of work done. */
export function copyOf({ rooms, picks }: Content, name: string): Content {
  return { ...emptyContent(name), rooms, picks };
}

export function freeName(name: string, taken: readonly { readonly name: string }[]): string {
  for (let number = 1; ; number++) {
    const next = number === 1 ? name : `${name.slice(0, LIMITS.name - 4).trim()} ${number}`;
    if (!taken.some((other) => sameName(other.name, next))) return next;
  }
}

/** Gives shared projects whose name is already used a distinct one. */
export function distinctNames(projects: readonly Project[], me: string | undefined): readonly Project[] {
  const names = new Set(projects.filter(({ owner }) => owner === me).map(({ name }) => folded(name)));
  return projects.map((project) => {
    if (project.owner === me) return project;
    let name = project.name;
    for (let i = 1; names.has(folded(name)); i++) name = `${project.name} (shared${i > 1 ? ` ${i}` : ''})`;
    names.add(folded(name));
    return name === project.name ? project : { ...project, name };
  });
}
