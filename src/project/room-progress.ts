/** What comes next in a room, and what it waits for. */

import { STAGES, type Stage } from '../reply/need.ts';
import { type Mark, roomMark, type Stages } from './project-room.ts';

/** `over`: the wait has ended and nobody ticked the stage off. */
type StageState = 'open' | Mark['state'] | 'over';

export interface StageProgress {
  readonly stage: Stage;
  readonly state: StageState;
  readonly mark?: Mark;
}

export interface RoomProgress {
  readonly room: string;
  readonly stages: readonly StageProgress[];
  /** The first stage that is neither done nor left out; undefined when the room is finished. */
  readonly next: StageProgress | undefined;
  /** Stages before the last one done that were never ticked. */
  readonly behind: readonly Stage[];
}

/** Stages that count once their wait is over: nothing has to be checked after it. */
const OVER_IS_DONE: readonly Stage[] = ['acclimate'];

/** How far a room is by now. */
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

/** Whether nothing more is to be done for a stage. */
export function isPast({ stage, state }: StageProgress): boolean {
  return state === 'done' || state === 'skipped' || (state === 'over' && OVER_IS_DONE.includes(stage));
}

/** Stages of a room that stand in the way of laying: not flat, not dry, cartons not long enough in the room. */
export function beforeLaying({ stages }: RoomProgress): readonly StageProgress[] {
  return stages.filter((one) => ['flat', 'dry', 'acclimate'].includes(one.stage) && !isPast(one));
}

function stateOf({ state, until }: Mark, now: number): StageState {
  return state === 'waiting' && until !== undefined && until <= now ? 'over' : state;
}

// Waits that are over: what a person wants to be told of, whatever platform tells it.

/** A wait of a room that has ended. `key` stays the same for the same wait, so that it is told once. */
export interface Reminder {
  readonly key: string;
  readonly room: string;
  readonly stage: Stage;
  /** When it ended, in milliseconds since 1970. */
  readonly due: number;
}

/** The waits that are over by now, not ticked off and not passed by later work in the room; the one that ended first at the head. */
export function dueReminders({ marks }: Stages, now: number): readonly Reminder[] {
  return waits({ marks })
    .filter((one) => one.due <= now && !wentOn(marks, one))
    .sort((one, other) => one.due - other.due);
}

/** When the next wait ends after now; undefined where none is under way. */
export function nextReminder({ marks }: Stages, now: number): number | undefined {
  const later = waits({ marks }).flatMap(({ due }) => (due > now ? [due] : []));
  return later.length > 0 ? Math.min(...later) : undefined;
}

/** Whether a later stage of the room was done since the wait ended. */
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
