/** From what is told of progress to where every room stands and what it waits for. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { cautionsFor, type Task } from '../../../src/figures/safety-figures.ts';
import { hostZone, sayMoment } from '../../../src/input/moment.ts';
import { readProgress } from '../../../src/language/old/progress-said.ts';
import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import { inScope } from '../../../src/project/project-room.ts';
import { isPast, type RoomProgress } from '../../../src/project/room-progress.ts';
import type { Stage } from '../../../src/reply/need.ts';
import type { Reply, Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { PROGRESS, PROGRESS_PROBLEMS } from '../../../src/text/progress-text.ts';
import { changeHere, projectHere } from './at-desk.ts';
import { type Marking, markingOf } from './progress-mark.ts';
import { progressBlocks, roomsProgress, tickActions } from './progress-say.ts';
import { TAKE_BACK } from './reply.ts';

export interface ProgressAsk {
  readonly do: string;
}

/** Result data of kind `progress`: per room the stages done, the next one and its state, milliseconds where it waits. */
interface ProgressResult extends Result {
  readonly kind: 'progress';
  readonly rooms: readonly {
    readonly room: string;
    readonly done: readonly Stage[];
    readonly next?: Stage;
    readonly state?: string;
    readonly until?: number;
  }[];
}

export async function answerProgress(ask: ProgressAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const rooms = inScope(project.rooms).map(({ name }) => name);
  if (rooms.length === 0) return { problems: [PROGRESS_PROBLEMS.noRooms()] };
  const zone = hostZone();
  const now = context.now();
  const told = readProgress(
    ask.do,
    project.rooms.map(({ name }) => name),
    now,
    zone,
  );
  if (!told) return { problems: [PROGRESS_PROBLEMS.unread(ask.do, `done tear-out ${rooms[0] ?? ''}`)] };
  if (told.state === 'show') return progressReply(project, told.rooms, undefined, context);
  const made = markingOf(told, ask.do, rooms, project.stages, now, acclimation(project));
  if ('problem' in made) return { problems: [made.problem] };
  const done = await changeHere(context, 'tick', ({ stages }) => {
    const after = made.change(stages);
    if (after === stages) return { result: false };
    return { parts: { stages: after }, said: sayMarking(made, zone).slice(0, LIMITS.note), result: true };
  });
  if ('problems' in done) return done;
  const reply = progressReply(done.project, [], made, context);
  // What was so already is not what was done last, and that would be taken back.
  return done.result ? reply : { ...reply, actions: reply.actions.filter((one) => one !== TAKE_BACK) };
}

/** Hours of acclimation, where they are picked. */
function acclimation({ picks }: Project): number | undefined {
  const told = Number.parseFloat(picks['plan acclimate'] ?? picks.acclimate ?? '');
  return Number.isFinite(told) && told > 0 ? told : undefined;
}

function sayMarking({ rooms, stages, state, since, until }: Marking, zone: string): string {
  const from = sayMoment(since, zone);
  const when = until === undefined ? '' : PROGRESS.until(from, sayMoment(until, zone));
  return PROGRESS.change(rooms, stages, PROGRESS.states[state], when);
}

/** Where rooms stand, some of them where only those are meant, behind what was marked. */
export function progressReply(
  project: Project,
  only: readonly string[],
  made: Marking | undefined,
  context: Context,
): Reply {
  const zone = hostZone();
  const now = context.now();
  const all = roomsProgress(project, now);
  const shown = only.length > 0 ? all.filter(({ room }) => only.includes(room)) : all;
  const stages = shown.flatMap((room) => room.stages);
  const next = shown.find((room) => room.next && room.next.state !== 'waiting') ?? shown.find((room) => room.next);
  const line = PROGRESS.headline(
    stages.filter(isPast).length,
    stages.length,
    next?.next && PROGRESS.next(next.room, next.next.stage),
  );
  const timed = made?.until !== undefined || project.stages.marks.some(({ until }) => until !== undefined);
  const data: ProgressResult = { kind: 'progress', rooms: all.map(resultOf) };
  return {
    headline: made ? `${sayMarking(made, zone)} ${line}` : line,
    blocks: progressBlocks(shown, project, now, zone),
    assumed: [...context.assumed, ...(made?.assumed ?? []), ...(timed ? [PROGRESS.zone(zone)] : [])],
    cautions: worded(hazardsOf(shown)),
    sources: [],
    actions: [...(made ? [TAKE_BACK] : []), ...tickActions(shown)],
    audience: 'asker',
    data,
  };
}

function resultOf({ room, stages, next }: RoomProgress): ProgressResult['rooms'][number] {
  const until = next?.mark?.until;
  return {
    room,
    done: stages.flatMap(({ stage, state }) => (state === 'done' ? [stage] : [])),
    ...(next && { next: next.stage, state: next.state }),
    ...(until !== undefined && { until }),
  };
}

const TASK_OF: Partial<Record<Stage, Task>> = {
  'tear-out': 'tear-out',
  subfloor: 'subfloor',
  flat: 'levelling',
  lay: 'laying',
  transitions: 'cutting',
  baseboards: 'nailing',
  caulk: 'sanding',
  paint: 'painting',
  acclimate: 'lifting',
};

/** What can hurt in the stages that come next, each told once. */
function hazardsOf(rooms: readonly RoomProgress[]) {
  const tasks = new Set(rooms.flatMap(({ next }) => (next && TASK_OF[next.stage]) ?? []));
  const hazards = [...tasks].flatMap(cautionsFor);
  return hazards.filter(({ topic }, i) => hazards.findIndex((one) => one.topic === topic) === i);
}
