/** `project progress`: how far each room is, what blocks its next stage, and what it is waiting for. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { LONGEST_ACCLIMATION } from '../../src/figures/floor-figures.ts';
import { type CautionTask, cautionsFor } from '../../src/figures/safety-figures.ts';
import { hostZone, sayMoment } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { type ParsedProgress, readProgress } from '../../src/input/parse-progress.ts';
import { read } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import {
  inScope,
  isPast,
  type Mark,
  mark,
  progressOf,
  type RoomProgress,
  roomMark,
  type Stages,
  unmark,
} from '../../src/project/project-room.ts';
import type { Stage } from '../../src/reply/need.ts';
import { type Problem, type Reply, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { START_ASK } from '../../src/text/project-problems-text.ts';
import { NEXT } from '../../src/text/project-text.ts';
import { PROGRESS, PROGRESS_PROBLEMS } from '../../src/text/sheets-text.ts';
import { progressBlocks, roomsProgress, tickActions } from './progress-table.ts';
import { changeHere, projectHere, TAKE_BACK } from './project-command.ts';

/** `notes` say how unclear parts were read. */
interface Marking {
  readonly rooms: readonly string[];
  readonly stages: readonly Stage[];
  readonly state: Mark['state'] | 'open';
  readonly since: number;
  readonly until?: number;
  readonly assumed: readonly string[];
  change(stages: Stages): Stages;
}

const HOUR = 3_600_000;

/** `rooms` are those that are part of the job; `hours` is the pick for acclimation. */
function markingOf(
  given: ParsedProgress,
  text: string,
  rooms: readonly string[],
  stages: Stages,
  now: number,
  hours: number | undefined,
): Marking | { readonly problem: Problem } {
  const [only] = rooms;
  if (only === undefined) return { problem: PROGRESS_PROBLEMS.noRooms() };
  const assumed: string[] = [];
  const named = given.rooms.length > 0 ? given.rooms : given.everywhere || rooms.length === 1 ? rooms : undefined;
  if (!named) return { problem: PROGRESS_PROBLEMS.whichRoom(text, rooms, `${text} ${only}`) };
  let meant = given.stages;
  if (meant.length === 0) {
    const [room = only] = named;
    const next = progressOf(room, stages, now).next?.stage;
    if (next === undefined) return { problem: PROGRESS_PROBLEMS.finished(text, room) };
    meant = [next];
    assumed.push(PROGRESS.nextTaken(next));
  }
  const state = given.state === 'show' ? 'done' : given.state;
  const since = given.since ?? now;
  const until = state === 'waiting' ? endOf(given, meant[0], since, hours, assumed) : undefined;
  if (state === 'waiting' && until === undefined) {
    return { problem: PROGRESS_PROBLEMS.howLong(text, `${text} for 24 h`) };
  }
  if (until !== undefined && until <= since)
    return {
      problem: PROGRESS_PROBLEMS.backwards(text, `${given.stages[0] ?? 'flat'} ${named[0] ?? ''} waiting for 24 h`),
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
        // If it was already marked, the first mark keeps its name and time.
        const known =
          given.since === undefined && until === undefined && roomMark(after, one.room, one.stage)?.state === state;
        return known ? after : mark(after, { ...one, state });
      }, before),
  };
}

/** Without a time, cartons wait as long as the most cautious maker asks. */
function endOf(
  { until, lasts }: ParsedProgress,
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

interface ProgressAsk {
  readonly do: string;
}

/** Per room the stages done, the next one and its state; in milliseconds where it's waiting. */
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

async function answerProgress(ask: ProgressAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) {
    // Whoever has no project asks for the order of the work itself.
    const asks = ask.do === 'list' && context.access && (await context.access.mine()).length === 0;
    return asks ? orderOfWork(context) : project;
  }
  const rooms = inScope(project.rooms).map(({ name }) => name);
  if (rooms.length === 0) return { problems: [PROGRESS_PROBLEMS.noRooms()] };
  const zone = hostZone();
  const now = context.now();
  const given = readProgress(
    ask.do,
    project.rooms.map(({ name }) => name),
    now,
    zone,
  );
  if (!given) return { problems: [PROGRESS_PROBLEMS.unread(ask.do, `done tear-out ${rooms[0] ?? ''}`)] };
  if (given.state === 'show') return progressReply(project, given.rooms, undefined, context);
  const made = markingOf(given, ask.do, rooms, project.stages, now, acclimation(project));
  if ('problem' in made) return { problems: [made.problem] };
  const done = await changeHere(context, 'tick', ({ stages }) => {
    const after = made.change(stages);
    if (after === stages) return { result: false };
    return { parts: { stages: after }, said: sayMarking(made, zone).slice(0, LIMITS.note), result: true };
  });
  if ('problems' in done) return done;
  const reply = progressReply(done.project, [], made, context);
  // If nothing changed, undo would reverse some earlier change, so it isn't offered.
  return done.result ? reply : { ...reply, actions: reply.actions.filter((one) => one !== TAKE_BACK) };
}

async function orderOfWork(context: Context): Promise<Outcome> {
  const { outcome } = await context.ask('handbook entry: work-order');
  if (!('actions' in outcome)) return outcome;
  return { ...outcome, actions: [{ label: NEXT.start, ask: START_ASK }, ...outcome.actions] };
}

/** Undefined if there's no pick for it. */
function acclimation({ picks }: Project): number | undefined {
  const given = Number.parseFloat(picks['plan acclimate'] ?? picks.acclimate ?? '');
  return Number.isFinite(given) && given > 0 ? given : undefined;
}

function sayMarking({ rooms, stages, state, since, until }: Marking, zone: string): string {
  const from = sayMoment(since, zone);
  const when = until === undefined ? '' : PROGRESS.until(from, sayMoment(until, zone));
  return PROGRESS.change(rooms, stages, PROGRESS.states[state], when);
}

/** `only` limits it to some rooms; the marks just made come first. */
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
  return reply({
    headline: made ? `${sayMarking(made, zone)} ${line}` : line,
    lines: [],
    ...(made === undefined && { opens: 'list' }),
    blocks: progressBlocks(shown, project, now, zone),
    assumed: [...context.assumed, ...(made?.assumed ?? []), ...(timed ? [PROGRESS.zone(zone)] : [])],
    cautions: worded(hazardsOf(shown)),
    actions: [...(made ? [TAKE_BACK] : []), ...tickActions(shown)],
    data,
  });
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

const TASK_OF: Partial<Record<Stage, CautionTask>> = {
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

/** The cautions for the stages that come next, each once. */
function hazardsOf(rooms: readonly RoomProgress[]) {
  const tasks = new Set(rooms.flatMap(({ next }) => (next && TASK_OF[next.stage]) ?? []));
  const hazards = [...tasks].flatMap(cautionsFor);
  return hazards.filter(({ topic }, i) => hazards.findIndex((one) => one.topic === topic) === i);
}

export default defineCommand({
  group: 'project',
  name: 'progress',
  summary: 'How far along each room is, and what the next stage is waiting for; tick stages off',
  phrases: [
    'bedroom is done',
    'finished laying the hall',
    'mark the living room tear out as done',
    'how far along am i',
    'where do i stand',
    'where do we stand with the rooms',
    'where are we at',
    'how is the project going',
    'hows it going so far, what is done',
    'whats left to do',
    'kitchen subfloor done, next?',
    'i finished the trim in the den',
    'whats next',
    'where are we on the project',
    'did 6 rows today in the living room',
    'what percent is finished',
    'checked off baseboards in bedroom 2',
    'carpet is out of all three rooms',
    'status of the job',
    'which rooms are not done yet',
    'i laid the closet today',
    'progress report',
    'remaining work',
    'half of the living room is laid',
    'floor is in, trim not yet',
    "bedroom's done",
    "what's next",
    'how far along are we',
    'mark the carpet in the den as torn out',
    'trim is up in the living room, only the kitchen left',
    "what's left to do",
    'got eleven rows down tonight in the family room',
    'done with squeaks upstairs',
    'where did i leave off on this whole thing',
    'percent complete?',
    "the leveler's poured and dry, what comes now",
    'subfloor patch finished',
    "what rooms haven't been touched yet",
    'tick off demo for all three bedrooms',
    'i laid the closet and half of bedroom 2 today',
    'show progress',
    'baseboards painted but not nailed yet',
    'what should i do tomorrow when i get up',
    'is anything left in the bathroom',
    'undercut the jambs done',
    'are we on schedule',
    "floor's in! now what",
    'remaining jobs by room',
    'the dining room is about half laid',
    'tear out complete',
    'set hall to finished please',
    'which stage am i on',
    'moisture check passed so mark that as done',
    'next step',
    "kitchen's ready for plank",
    'how much of the floor is down as a percentage',
    "i've caulked everything except the stair landing",
    "let me see what's done and not done",
    'put the living room at 80 percent',
    'today: pulled pad, scraped, vacuumed. mark it',
    'finished two rooms this weekend woohoo',
    'transitions are all in',
    'just the skirting to go in the lounge, tick the rest',
    'what do i still have to do before i can lay plank in the office',
  ],
  options: z.object({
    do: text(
      {
        summary: '“done tear-out bedroom”, “not flat hall”, “acclimating since Friday 18:00 for 48 h”',
        example: 'done tear-out bedroom',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project progress', headline: '0 of 44 stages done. Next: clear the room in hall.' },
    {
      ask: 'project progress done tear-out bedroom',
      headline: 'bedroom: tear-out done. 1 of 44 stages done. Next: clear the room in hall.',
    },
  ],
  run: (options, context) => answerProgress(options, context),
});
