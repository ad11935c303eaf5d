/** What the owner wants measured, and wall lengths that don't fit their room yet. */

import { z } from 'zod';
import { LIMITS, signedSchema } from './project-limits.ts';
import { changedRoom, type Room, type Rooms, roomNamed, sameName } from './project-room.ts';

export const MOST_QUESTIONS = 40;
const MOST_GIVEN = 100;
export const LONGEST_WHAT = 60;

const questionSchema = z
  .object({
    id: z.string().min(8),
    room: z.string().min(1).max(LIMITS.name),
    /** Counted from 1, as in the drawings. */
    wall: z.int().positive().optional(),
    /** Something else about the room, such as its ceiling height. */
    what: z.string().min(1).max(LONGEST_WHAT).optional(),
    at: z.number(),
    by: signedSchema.optional(),
  })
  .readonly();

const toldSchema = z
  .object({
    room: z.string().min(1).max(LIMITS.name),
    wall: z.int().positive(),
    /** In ticks. */
    length: z.int().positive(),
    at: z.number(),
    by: signedSchema.optional(),
  })
  .readonly();

export const measuresSchema = z
  .object({
    open: z.array(questionSchema).max(MOST_QUESTIONS).readonly(),
    told: z.array(toldSchema).max(MOST_GIVEN).readonly(),
  })
  .readonly();

export type Question = z.infer<typeof questionSchema>;
type ParsedLength = z.infer<typeof toldSchema>;
export type Measures = z.infer<typeof measuresSchema>;

export const EMPTY_MEASURES: Measures = { open: [], told: [] };

export function sameQuestion(one: Omit<Question, 'id' | 'at'>, other: Omit<Question, 'id' | 'at'>): boolean {
  const what = ({ what: thing = '' }: typeof one): string => thing.toLowerCase();
  return sameName(one.room, other.room) && one.wall === other.wall && what(one) === what(other);
}

/** Adds a question unless it is already open. Throws a RangeError beyond the limit. */
export function withQuestion(measures: Measures, question: Question): Measures {
  if (measures.open.some((one) => sameQuestion(one, question))) return measures;
  if (measures.open.length >= MOST_QUESTIONS) throw new RangeError('too many questions');
  return { ...measures, open: [...measures.open, question] };
}

export function withoutQuestions(measures: Measures, gone: (question: Question) => boolean): Measures {
  return { ...measures, open: measures.open.filter((one) => !gone(one)) };
}

/** Adds a length, replacing an earlier one for that wall; beyond the limit the oldest are dropped. */
export function withGiven(measures: Measures, given: ParsedLength): Measures {
  const others = measures.told.filter((one) => !(sameName(one.room, given.room) && one.wall === given.wall));
  return { ...measures, told: [...others, given].slice(-MOST_GIVEN) };
}

export function givenOf({ told: given }: Measures, room: string): readonly ParsedLength[] {
  return given.filter((one) => sameName(one.room, room));
}

/** Removes a room's pending lengths, once its walls are saved. */
export function withoutGiven(measures: Measures, room: string): Measures {
  return { ...measures, told: measures.told.filter((one) => !sameName(one.room, room)) };
}

export function renamedIn({ open, told: given }: Measures, from: string, to: string): Measures {
  const renamed = <T extends { readonly room: string }>(one: T): T =>
    sameName(one.room, from) ? { ...one, room: to } : one;
  return { open: open.map(renamed), told: given.map(renamed) };
}

/** Drops everything about rooms that no longer exist. */
export function measuresIn({ open, told: given }: Measures, rooms: Rooms): Measures {
  const there = ({ room }: { readonly room: string }): boolean => roomNamed(rooms, room) !== undefined;
  return { open: open.filter(there), told: given.filter(there) };
}

/** Notes a length under its name in the room, replacing an earlier one. */
export function withNoted(rooms: Rooms, { name, notes }: Room, what: string, said: string): Rooms {
  const others = notes.filter((note) => !note.toLowerCase().startsWith(`${what.toLowerCase()}: `));
  return changedRoom(rooms, name, { notes: [...others, `${what}: ${said}`] });
}
