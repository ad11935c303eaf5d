/** The rooms of a project (stored as text that the parsers read): doorway picks, progress by stage, what comes next. */

import { z } from 'zod';
import { folded } from '../input/rooms/room-text.ts';
import { roomGiven } from '../input/rooms/rooms-apart.ts';
import { STAGES, type Stage } from '../reply/need.ts';
import { LIMITS, signedSchema } from './project-limits.ts';

const roomSchema = z
  .object({
    name: z.string().min(1).max(LIMITS.name),
    /** Its shape as entered, without the name: `12 x 14 ft + bay 6 x 2 ft`, `walk …`. */
    text: z.string().min(1).max(LIMITS.room),
    /** The current floor. */
    floor: z.string().min(1).max(LIMITS.note).optional(),
    /** Its doors as entered: `32 in on wall 2`. */
    openings: z.string().min(1).max(LIMITS.note).optional(),
    notes: z.array(z.string().min(1).max(LIMITS.note)).max(LIMITS.notes).readonly(),
    /** Whether the room is part of the job; a bathroom that stays as it is isn't. */
    inScope: z.boolean(),
  })
  .readonly();

export const roomsSchema = z.array(roomSchema).max(LIMITS.rooms).readonly();

export type Room = z.infer<typeof roomSchema>;
export type Rooms = z.infer<typeof roomsSchema>;

/** Ignores case and spaces. */
export function sameName(one: string, other: string): boolean {
  return folded(one) === folded(other);
}

export function roomNamed(rooms: Rooms, name: string): Room | undefined {
  return rooms.find((room) => sameName(room.name, name));
}

/** Replaces the room of the same name, or appends it. Throws a RangeError beyond the limit. */
export function withRoom(rooms: Rooms, room: Room): Rooms {
  if (roomNamed(rooms, room.name)) return rooms.map((one) => (sameName(one.name, room.name) ? room : one));
  if (rooms.length >= LIMITS.rooms) throw new RangeError('too many rooms');
  return [...rooms, room];
}

/** Updates some facts of a room; unchanged if the room doesn't exist. */
export function changedRoom(rooms: Rooms, name: string, facts: Partial<Room>): Rooms {
  return rooms.map((one) => (sameName(one.name, name) ? { ...one, ...facts } : one));
}

export function withoutRoom(rooms: Rooms, name: string): Rooms {
  return rooms.filter((one) => !sameName(one.name, name));
}

export function inScope(rooms: Rooms): Rooms {
  return rooms.filter((room) => room.inScope);
}

export function roomsText(rooms: Rooms): string {
  return rooms.map(roomGiven).join('; ');
}

/** Limit: enough for every stage of more rooms than a home has. */
const MOST_MARKS = STAGES.length * 60;

const markSchema = z.object({
  room: z.string().min(1).max(200),
  stage: z.enum(STAGES),
  /** Waiting ends at `until`; blocked lasts until the stage is done. */
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

/** Sets a room's mark for a stage, replacing the old one. Idempotent. */
export function mark(stages: Stages, one: Mark): Stages {
  const marks = stages.marks.filter((other) => !same(other, one));
  if (marks.length >= MOST_MARKS) throw new RangeError('too many marks');
  return { marks: [...marks, one] };
}

/** Removes a room's mark for a stage; unchanged if there is none. */
export function unmark(stages: Stages, room: string, stage: Stage): Stages {
  const marks = stages.marks.filter((other) => !same(other, { room, stage }));
  return marks.length === stages.marks.length ? stages : { marks };
}

export function roomMark({ marks }: Stages, room: string, stage: Stage): Mark | undefined {
  return marks.find((one) => same(one, { room, stage }));
}

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

// Doorways where the floor ends, accumulated over several picks: `bath 30 in to tile 1/2 in; kitchen 36 in to wood`.

/** The picked doorways, plus those of `more` that have different names. */
export function doorwaysTogether(picked: string, more: string): string {
  const known = new Set(entriesOf(picked).map(nameOf));
  return [...entriesOf(picked), ...entriesOf(more).filter((entry) => !known.has(nameOf(entry)))].join('; ');
}

function entriesOf(text: string): readonly string[] {
  return text.split(/(?:(?<!\s)\s+)?;\s*/).filter((entry) => entry !== '' && !/^none$/i.test(entry));
}

/** What comes before the first number; all of it if there is no name. */
function nameOf(entry: string): string {
  const name = folded(entry.replace(/\d.*$/s, ''));
  return name === '' ? folded(entry) : name;
}

/** `over`: the wait has ended but the stage isn't checked off. */
type StageState = 'open' | Mark['state'] | 'over';

export interface StageProgress {
  readonly stage: Stage;
  readonly state: StageState;
  readonly mark?: Mark;
}

export interface RoomProgress {
  readonly room: string;
  readonly stages: readonly StageProgress[];
  /** The first stage neither done nor skipped; undefined if the room is finished. */
  readonly next: StageProgress | undefined;
  /** Earlier stages than the last one done that were never checked off. */
  readonly behind: readonly Stage[];
}

/** Stages that are done once their wait is over, because there is nothing to check. */
const OVER_IS_DONE: readonly Stage[] = ['acclimate'];

export function progressOf(room: string, stages: Stages, now: number): RoomProgress {
  const all = STAGES.map((stage): StageProgress => {
    const mark = roomMark(stages, room, stage);
    return mark ? { stage, state: stateOf(mark, now), mark } : { stage, state: 'open' };
  });
  const last = all.reduce((at, { state }, i) => (state === 'done' ? i : at), -1);
  const open = all.filter((one) => !isPast(one));
  const behind = all.slice(0, Math.max(0, last)).flatMap((one) => (isPast(one) ? [] : [one.stage]));
  return { room, stages: all, next: open.find((one) => !behind.includes(one.stage)) ?? open[0], behind };
}

/** Whether a stage needs nothing more. */
export function isPast({ stage, state }: StageProgress): boolean {
  return state === 'done' || state === 'skipped' || (state === 'over' && OVER_IS_DONE.includes(stage));
}

/** Stages that keep a room from being laid: not flat, not dry, cartons not acclimated. */
export function beforeLaying({ stages }: RoomProgress): readonly StageProgress[] {
  return stages.filter((one) => ['flat', 'dry', 'acclimate'].includes(one.stage) && !isPast(one));
}

function stateOf({ state, until }: Mark, now: number): StageState {
  return state === 'waiting' && until !== undefined && until <= now ? 'over' : state;
}

/** A wait that has ended. `key` is stable for the same wait, so that each reminder is sent once. */
export interface Reminder {
  readonly key: string;
  readonly room: string;
  readonly stage: Stage;
  /** When it ended, in milliseconds since 1970. */
  readonly due: number;
}

/** Waits that have ended and are neither checked off nor superseded by later work in the room, earliest first. */
export function dueReminders({ marks }: Stages, now: number): readonly Reminder[] {
  return waits({ marks })
    .filter((one) => one.due <= now && !wentOn(marks, one))
    .sort((one, other) => one.due - other.due);
}

/** When the next wait ends; undefined if none is running. */
export function nextReminder({ marks }: Stages, now: number): number | undefined {
  const later = waits({ marks }).flatMap(({ due }) => (due > now ? [due] : []));
  return later.length > 0 ? Math.min(...later) : undefined;
}

/** Whether a later stage of the room was done after the wait ended. */
function wentOn(marks: Stages['marks'], { room, stage, due }: Reminder): boolean {
  const later = STAGES.slice(STAGES.indexOf(stage) + 1);
  return marks.some(
    (one) =>
      one.state === 'done' &&
      one.at >= due &&
      later.includes(one.stage) &&
      one.room.toLowerCase() === room.toLowerCase(),
  );
}

function waits({ marks }: Stages): readonly Reminder[] {
  return marks.flatMap(({ room, stage, state, until }) =>
    state === 'waiting' && until !== undefined
      ? [{ key: `${room.toLowerCase()}/${stage}/${until}`, room, stage, due: until }]
      : [],
  );
}
