/** What was found in a project's rooms, as told. */

import { z } from 'zod';
import { signedSchema } from './signed.ts';

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

export type Finding = z.infer<typeof findingSchema>;
export type Found = z.infer<typeof foundSchema>;

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
