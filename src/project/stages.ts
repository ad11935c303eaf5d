/** How far each room of a project is, stage by stage. */

import { z } from 'zod';
import { STAGES, type Stage } from '../reply/need.ts';
import { signedSchema } from './signed.ts';

/** The most marks that a project keeps: every stage of more rooms than a home has. */
export const MOST_MARKS = STAGES.length * 60;

const markSchema = z.object({
  room: z.string().min(1).max(200),
  stage: z.enum(STAGES),
  /** Waiting ends at `until`; what is blocked stays so until it is done. */
  state: z.enum(['done', 'waiting', 'blocked', 'skipped']),
  /** Milliseconds since 1970. */
  at: z.number(),
  until: z.number().optional(),
  note: z.string().max(300).optional(),
  by: signedSchema.optional(),
});

export const stagesSchema = z.object({
  marks: z.array(markSchema).max(MOST_MARKS).readonly(),
});

export type Mark = z.infer<typeof markSchema>;
export type Stages = z.infer<typeof stagesSchema>;

export const EMPTY_STAGES: Stages = { marks: [] };

/** With this mark in place of the one the room had for the stage. Marking the same twice is marking it once. */
export function mark(stages: Stages, one: Mark): Stages {
  const marks = stages.marks.filter((other) => !same(other, one));
  if (marks.length >= MOST_MARKS) throw new RangeError('too many marks');
  return { marks: [...marks, one] };
}

/** Without a mark for the room's stage; the same stages where there is none. */
export function unmark(stages: Stages, room: string, stage: Stage): Stages {
  const marks = stages.marks.filter((other) => !same(other, { room, stage }));
  return marks.length === stages.marks.length ? stages : { marks };
}

/** The mark of a room's stage; rooms are the same whatever their capitals. */
export function markOf({ marks }: Stages, room: string, stage: Stage): Mark | undefined {
  return marks.find((one) => same(one, { room, stage }));
}

/** A room's marks under its new name. */
export function renameMarks(stages: Stages, from: string, to: string): Stages {
  const marks = stages.marks.map((one) => (sameRoom(one.room, from) ? { ...one, room: to } : one));
  return { marks };
}

function same(one: Pick<Mark, 'room' | 'stage'>, other: Pick<Mark, 'room' | 'stage'>): boolean {
  return one.stage === other.stage && sameRoom(one.room, other.room);
}

function sameRoom(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
