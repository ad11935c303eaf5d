/** A saved project: its rooms, what is picked for them, the answers kept, and what was done. */

import { z } from 'zod';
import { EMPTY_FOUND, foundSchema, hazardsSchema } from './findings.ts';
import { patchSchema } from './json-patch.ts';
import { EMPTY_MEASURES, measuresSchema } from './measurements.ts';
import { EMPTY_LOG, logSchema } from './notes.ts';
import { LIMITS, ROLES } from './project-limits.ts';
import { doorwaysTogether, EMPTY_STAGES, folded, roomsSchema, stagesSchema } from './project-room.ts';
import { EMPTY_SHOPPING, shoppingSchema } from './purchases.ts';
import { codecOf, type Migration } from './record-version.ts';
import { requestOptions } from './saved-request.ts';
import { sharesSchema } from './shares.ts';
import { EMPTY_SPEND, spendSchema } from './spending.ts';

// What else a project keeps beside its rooms and answers: each part's schema, and what it is while nothing is
// in it.

/** The schema of each part, by its name. */
const partsSchema = {
  shopping: shoppingSchema,
  stages: stagesSchema,
  spend: spendSchema,
  log: logSchema,
  found: foundSchema,
  // What was taken out before there was any has none.
  measures: measuresSchema.default(EMPTY_MEASURES),
};

/** Every part with nothing in it. */
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

// The draft of a project, as it was before version 1: rooms with a size, one plank, a flag for the archive.

const draftSchema = z.object({
  id: z.string(),
  owner: z.string(),
  name: z.string(),
  archived: z.boolean(),
  rooms: z.array(z.object({ name: z.string(), size: z.string() })),
  plank: z.string().optional(),
});

/** Version 1 of the draft. Throws where it is none. */
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

// Version 4 of a project: each saved answer says which rooms it is about, and which of its options the
// project doesn't hold.

/** Options of one piece of work, as they stood in version 3; the others were picked with the answer. */
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

/** Saved answers of version 3, those in changes that can be taken back too. Throws where the record can't be read. */
const withSavedWork: Migration = (record) => ({ ...savedWorkIn(record), version: 4 });

/** Content of a project whose saved answers may be of version 3, as they were taken out then; those of today stay. */
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

/** Doorways of every saved answer counted; now those that are picked do. */
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

/** Any plain data with its saved answers made anew. */
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

/** The rooms that a request names at the head of its shapes, or the only one that its own texts name; undefined for all, or none. */
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

/** Whether a value is plain data by names. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

// Version 2 of a project: helpers, who had the whole of it, have shares.

const helpersSchema = z.array(z.object({ person: z.string().min(16), role: z.enum(ROLES) }));

/** Each helper becomes the share of the same number. Throws where they cannot be read. */
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
    /** The whole ask, as it can be typed. */
    ask: z.string().min(1).max(LIMITS.ask),
    headline: z.string().max(LIMITS.headline),
    at: z.number(),
    /** The project's rooms that it is about; absent where it is about the whole job, or names none. */
    rooms: z.array(z.string().min(1).max(LIMITS.name)).max(LIMITS.rooms).readonly().optional(),
    /** Its options that the project doesn't hold, such as sizes measured on the spot: they are part of the work. */
    own: z.array(z.string().min(1).max(LIMITS.name)).max(LIMITS.picks).readonly().default([]),
  })
  .readonly();

/** One change: who made it, from which account, in words, and what takes it back. */
const changeSchema = z
  .object({
    /** Counted from 1 over the project's whole life. */
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
  /** By the option's name, `plank`, or by the command's and the option's, `edges stock`: the text told for it. */
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
    /** Shares given so far. */
    given: z.int().nonnegative(),
    /** What was told of hazards: no part of what an undo takes back. */
    hazards: hazardsSchema,
    ...contentShape,
    /** Changes made so far. */
    count: z.int().nonnegative(),
    history: z.array(changeSchema).max(LIMITS.changes).readonly(),
    /** Changes taken back, the latest last; a new change forgets them. */
    undone: z.array(changeSchema).max(LIMITS.changes).readonly(),
  })
  .readonly();

export type Project = z.infer<typeof projectSchema>;
/** What changes and can be taken back. */
export type Content = z.infer<typeof contentSchema>;
export type ProjectState = z.infer<typeof stateSchema>;
export type KeptAsk = z.infer<typeof keptSchema>;
export type Change = z.infer<typeof changeSchema>;

/** Before, nothing could be asked to be measured. */
const withMeasures: Migration = (record) => ({ ...record, version: 3, measures: EMPTY_MEASURES });

/** Before, hazards were told in findings and notes alone. */
const withHazardsKept: Migration = (record) => ({ ...record, version: 5, hazards: [] });

export const projectCodec = codecOf<Project>('project', projectSchema, [
  projectFromDraft,
  withShares,
  withMeasures,
  withSavedWork,
  withHazardsKept,
]);

/** What of a project changes and can be taken back. */
export function contentOf(project: Project): Content {
  const { version: _v, id: _i, owner: _o, shares: _h, given: _g, hazards: _z, ...rest } = project;
  const { count: _c, history: _s, undone: _u, ...content } = rest;
  return content;
}
