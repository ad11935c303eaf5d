/** Waits that are over: what a person wants to be told of, whatever platform tells it. */

import { STAGES, type Stage } from '../reply/need.ts';
import type { Stages } from './stages.ts';

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
