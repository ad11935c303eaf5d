/** The dated notes of a project. */

import { z } from 'zod';
import { signedSchema } from './project-limits.ts';

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
