/** Progress told, as marks of rooms and stages; or the Problems where room, stage or time is not plain. */

import { LONGEST_ACCLIMATION } from '../../../src/figures/floor-figures.ts';
import type { ToldProgress } from '../../../src/language/old/progress-said.ts';
import { type Mark, mark, markOf, type Stages, unmark } from '../../../src/project/project-room.ts';
import { progressOf } from '../../../src/project/room-progress.ts';
import type { Stage } from '../../../src/reply/need.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { PROGRESS, PROGRESS_PROBLEMS } from '../../../src/text/progress-text.ts';

/** What is marked, and how doubtful parts were taken. */
export interface Marking {
  readonly rooms: readonly string[];
  readonly stages: readonly Stage[];
  readonly state: Mark['state'] | 'open';
  readonly since: number;
  readonly until?: number;
  readonly assumed: readonly string[];
  change(stages: Stages): Stages;
}

const HOUR = 3_600_000;

/** `rooms` are those in scope; `hours` of acclimation as picked. */
export function markingOf(
  told: ToldProgress,
  text: string,
  rooms: readonly string[],
  stages: Stages,
  now: number,
  hours: number | undefined,
): Marking | { readonly problem: Problem } {
  const [only] = rooms;
  if (only === undefined) return { problem: PROGRESS_PROBLEMS.noRooms() };
  const assumed: string[] = [];
  const named = told.rooms.length > 0 ? told.rooms : told.everywhere || rooms.length === 1 ? rooms : undefined;
  if (!named) return { problem: PROGRESS_PROBLEMS.whichRoom(text, rooms, `${text} ${only}`) };
  let meant = told.stages;
  if (meant.length === 0) {
    const [room = only] = named;
    const next = progressOf(room, stages, now).next?.stage;
    if (next === undefined) return { problem: PROGRESS_PROBLEMS.finished(text, room) };
    meant = [next];
    assumed.push(PROGRESS.nextTaken(next));
  }
  const state = told.state === 'show' ? 'done' : told.state;
  const since = told.since ?? now;
  const until = state === 'waiting' ? endOf(told, meant[0], since, hours, assumed) : undefined;
  if (state === 'waiting' && until === undefined) {
    return { problem: PROGRESS_PROBLEMS.howLong(text, `${text} for 24 h`) };
  }
  if (until !== undefined && until <= since)
    return {
      problem: PROGRESS_PROBLEMS.backwards(text, `${told.stages[0] ?? 'flat'} ${named[0] ?? ''} waiting for 24 h`),
    };
  const marks = named.flatMap((room) =>
    meant.map((stage) => ({ room, stage, at: since, ...(until !== undefined && { until }) })),
  );
  return {
    rooms: named,
    stages: meant,
    state,
    since,
    ...(until !== undefined && { until }),
    assumed,
    change: (before) =>
      marks.reduce((after, one) => {
        if (state === 'open') return unmark(after, one.room, one.stage);
        // Whoever told it first did it, and then.
        const known =
          told.since === undefined && until === undefined && markOf(after, one.room, one.stage)?.state === state;
        return known ? after : mark(after, { ...one, state });
      }, before),
  };
}

/** When a wait ends; cartons wait as long as the longest maker asks where nothing is told. */
function endOf(
  { until, lasts }: ToldProgress,
  stage: Stage | undefined,
  since: number,
  hours: number | undefined,
  assumed: string[],
): number | undefined {
  if (until !== undefined) return until;
  if (lasts !== undefined) return since + lasts;
  if (stage !== 'acclimate') return undefined;
  if (hours === undefined) assumed.push(PROGRESS.taken(LONGEST_ACCLIMATION.value));
  return since + (hours ?? LONGEST_ACCLIMATION.value) * HOUR;
}
