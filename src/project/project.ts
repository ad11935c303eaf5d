/** A saved project: its rooms, what is picked for them, the answers kept, and what was done. */

import { z } from 'zod';
import { hazardsSchema } from './hazards.ts';
import { LIMITS } from './limits.ts';
import { EMPTY_MEASURES } from './measure.ts';
import { partsSchema } from './parts.ts';
import { patchSchema } from './patch.ts';
import { projectFromDraft } from './project-draft.ts';
import { withSavedWork } from './project-saved.ts';
import { withShares } from './project-shares.ts';
import { roomsSchema } from './room.ts';
import { sharesSchema } from './share.ts';
import { codecOf, type Migration } from './version.ts';

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
