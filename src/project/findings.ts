/** What was found in a project's rooms, the hazards mentioned in it, and its dated notes. */

import { z } from 'zod';
import { HAZARDS, LEVELS, type Level } from '../hazards/hazard.ts';
import { signedSchema } from './project-limits.ts';
import { type Rooms, sameName } from './project-room.ts';

export const MOST_FOUND = 200;
export const LONGEST_FINDING = 500;

const findingSchema = z.object({
  /** In the user's words, updated when a room is renamed. */
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

/** Adds a finding at the end. Throws a RangeError beyond the limit. */
export function addFinding(found: Found, finding: Finding): Found {
  if (found.length >= MOST_FOUND) throw new RangeError('too many findings');
  return [...found, finding];
}

/** Removes the finding at an index from 0; unchanged if there is none. */
export function removeFinding(found: Found, at: number): Found {
  return found.filter((_, i) => i !== at);
}

// Hazards mentioned for a project's rooms. They stay until a specific fact clears them; undo doesn't remove them.

/** Limit; beyond it the most serious ones stay. */
const MOST_HAZARDS = 60;

export const keptHazardSchema = z
  .object({
    hazard: z.enum(HAZARDS),
    level: z.enum(LEVELS as [Level, ...Level[]]),
    /** The words that triggered it. */
    words: z.string().max(200),
    about: z.string().max(40).optional(),
    /** The room it was mentioned for; undefined if it came up in conversation. */
    room: z.string().min(1).max(200).optional(),
    /** Milliseconds since 1970. */
    at: z.number(),
  })
  .readonly();

export const hazardsSchema = z.array(keptHazardSchema).max(MOST_HAZARDS).readonly();

export type KeptHazard = z.infer<typeof keptHazardSchema>;
export type KeptHazards = z.infer<typeof hazardsSchema>;

/** Adds hazards. One mentioned again for the same room is kept once, at its most serious. */
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

/** Removes the hazards that facts have ended: for one room if named, otherwise for all. */
export function withoutHazards(hazards: KeptHazards, ended: readonly string[], room: string | undefined): KeptHazards {
  return hazards.filter(
    (one) =>
      !(ended.includes(one.hazard) && (room === undefined || one.room === undefined || sameName(one.room, room))),
  );
}

export function underNewNames(hazards: KeptHazards, before: Rooms, after: Rooms): KeptHazards {
  if (before.length !== after.length) return hazards;
  return hazards.map((one) => {
    const place = before.findIndex(({ name }) => one.room !== undefined && sameName(name, one.room));
    const name = after[place]?.name;
    return name === undefined || name === one.room ? one : { ...one, room: name };
  });
}

export const MOST_NOTES = 500;
export const LONGEST_NOTE = 1000;

const noteSchema = z.object({
  text: z.string().min(1).max(LONGEST_NOTE),
  /** Milliseconds since 1970. */
  at: z.number(),
  by: signedSchema.optional(),
});

export const logSchema = z.array(noteSchema).max(MOST_NOTES).readonly();

type Note = z.infer<typeof noteSchema>;
export type ProjectLog = z.infer<typeof logSchema>;

export const EMPTY_LOG: ProjectLog = [];

/** Adds a note at the end. Throws a RangeError beyond the limit. */
export function addNote(log: ProjectLog, note: Note): ProjectLog {
  if (log.length >= MOST_NOTES) throw new RangeError('too many notes');
  return [...log, note];
}

/** Removes the note at an index from 0; unchanged if there is none. */
export function removeNote(log: ProjectLog, at: number): ProjectLog {
  return log.filter((_, i) => i !== at);
}

/** Notes that contain every word, ignoring case, each with its index from 0; all of them if no words are given. */
export function searchLog(log: ProjectLog, words: string): readonly (Note & { readonly place: number })[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return log
    .map((note, place) => ({ ...note, place }))
    .filter(({ text }) => wanted.every((word) => text.toLowerCase().includes(word)));
}
