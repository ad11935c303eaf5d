/** The dated notes of a project. */

import { z } from 'zod';
import { signedSchema } from './project-limits.ts';

/** The most notes that a project keeps, and the longest. */
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

/** With one note more, the latest last. Throws a RangeError past the most that are kept. */
export function addNote(log: ProjectLog, note: Note): ProjectLog {
  if (log.length >= MOST_NOTES) throw new RangeError('too many notes');
  return [...log, note];
}

/** Without the note at a place, counted from 0; the same where there is none. */
export function removeNote(log: ProjectLog, at: number): ProjectLog {
  return log.filter((_, i) => i !== at);
}

/** Notes that hold every word, whatever its capitals, each with its place counted from 0; all for no words. */
export function searchLog(log: ProjectLog, words: string): readonly (Note & { readonly place: number })[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return log
    .map((note, place) => ({ ...note, place }))
    .filter(({ text }) => wanted.every((word) => text.toLowerCase().includes(word)));
}
