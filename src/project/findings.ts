/** What was found in a project's rooms, as told. */

import { z } from 'zod';
import { HAZARDS, LEVELS, type Level } from '../hazards/hazard.ts';
import { signedSchema } from './project-limits.ts';
import { type Rooms, sameName } from './project-room.ts';

/** The most findings that a project keeps, and the longest. */
export const MOST_FOUND = 200;
export const LONGEST_FINDING = 500;

const findingSchema = z.object({
  /** Word for word, under a room's later name. */
  text: z.string().min(1).max(LONGEST_FINDING),
  room: z.string().min(1).max(200).optional(),
  /** Milliseconds since 1970. */
  at: z.number(),
  by: signedSchema.optional(),
});

export const foundSchema = z.array(findingSchema).max(MOST_FOUND).readonly();

type Finding = z.infer<typeof findingSchema>;
type Found = z.infer<typeof foundSchema>;

export const EMPTY_FOUND: Found = [];

/** With one finding more, the latest last. Throws a RangeError past the most that are kept. */
export function addFinding(found: Found, finding: Finding): Found {
  if (found.length >= MOST_FOUND) throw new RangeError('too many findings');
  return [...found, finding];
}

/** Without the finding at a place, counted from 0; the same where there is none. */
export function removeFinding(found: Found, at: number): Found {
  return found.filter((_, i) => i !== at);
}

// Hazards told of a project's rooms: they stay until a named fact clears them, and no undo takes one back.

/** The most that a project keeps; the gravest stay. */
const MOST_HAZARDS = 60;

export const keptHazardSchema = z
  .object({
    hazard: z.enum(HAZARDS),
    level: z.enum(LEVELS as [Level, ...Level[]]),
    /** The words that set it off. */
    words: z.string().max(200),
    about: z.string().max(40).optional(),
    /** The room it was told of; undefined in a conversation. */
    room: z.string().min(1).max(200).optional(),
    /** Milliseconds since 1970. */
    at: z.number(),
  })
  .readonly();

export const hazardsSchema = z.array(keptHazardSchema).max(MOST_HAZARDS).readonly();

export type KeptHazard = z.infer<typeof keptHazardSchema>;
export type KeptHazards = z.infer<typeof hazardsSchema>;

/** With some more: one told again of the same room is told once, at its gravest. */
export function withHazards(hazards: KeptHazards, more: readonly KeptHazard[]): KeptHazards {
  const all = new Map<string, KeptHazard>();
  for (const one of [...hazards, ...more]) {
    const key = `${one.hazard} ${one.room ?? ''}`;
    const before = all.get(key);
    if (!before || LEVELS.indexOf(one.level) <= LEVELS.indexOf(before.level)) all.set(key, one);
  }
  const sorted = [...all.values()];
  if (sorted.length <= MOST_HAZARDS) return sorted;
  return sorted.sort((one, other) => LEVELS.indexOf(one.level) - LEVELS.indexOf(other.level)).slice(0, MOST_HAZARDS);
}

/** Without those that facts ended: of one room where one is named, else of all. */
export function withoutHazards(hazards: KeptHazards, ended: readonly string[], room: string | undefined): KeptHazards {
  return hazards.filter(
    (one) =>
      !(ended.includes(one.hazard) && (room === undefined || one.room === undefined || sameName(one.room, room))),
  );
}

/** Under the names that the rooms have now, where one was renamed. */
export function underNewNames(hazards: KeptHazards, before: Rooms, after: Rooms): KeptHazards {
  if (before.length !== after.length) return hazards;
  return hazards.map((one) => {
    const place = before.findIndex(({ name }) => one.room !== undefined && sameName(name, one.room));
    const name = after[place]?.name;
    return name === undefined || name === one.room ? one : { ...one, room: name };
  });
}
