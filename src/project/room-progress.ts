/** What comes next in a room, and what it is waiting for. */

import { STAGES, type Stage } from '../reply/need.ts';
import { type Mark, roomMark, type Stages } from './project-room.ts';

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
