/** What comes next in a room, and what it waits for. */

import { STAGES, type Stage } from '../reply/need.ts';
import { type Mark, markOf, type Stages } from './stages.ts';

/** `over`: the wait has ended and nobody ticked the stage off. */
export type StageState = 'open' | Mark['state'] | 'over';

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
    const mark = markOf(stages, room, stage);
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
