/** A length told: put into its room, noted with it, or kept until it fits; and what it changes in the lists. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { sayLength } from '../../../src/input/format.ts';
import { readLength } from '../../../src/input/parse-length.ts';
import type { LengthUnit } from '../../../src/input/parse-number.ts';
import type { Read } from '../../../src/input/reading.ts';
import { outlineOf, readWallLength, unitsTold, wallsOf } from '../../../src/input/rooms/measure-wall.ts';
import { sameQuestion, withNoted, withoutQuestions } from '../../../src/project/measurements.ts';
import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import { type Room, roomNamed } from '../../../src/project/project-room.ts';
import type { Reply, Result } from '../../../src/reply/reply.ts';
import { tooManyNotes } from '../../../src/text/project-problems-text.ts';
import { MEASURE, MEASURE_PROBLEMS } from '../../../src/text/project-text.ts';
import type { Length } from '../../../src/units/length.ts';
import { changeHere, problem, projectHere } from './at-desk.ts';
import { figuresOf } from './measure-figures.ts';
import { wallStep } from './measure-step.ts';
import { projectReply, TAKE_BACK } from './reply.ts';

/** What was measured, as it was typed. */
export interface ToTell {
  readonly room: string;
  readonly wall?: number | undefined;
  readonly what?: string | undefined;
  readonly length: string;
}

/** How often others may change the room between looking and doing. */
const TRIES = 3;

/** Takes a length. The figures are worked out before, for the room as it would be, and again where others changed it meanwhile. */
export async function tellLength(told: ToTell, context: Context): Promise<Outcome> {
  for (let tries = 0; tries < TRIES; tries++) {
    const project = await projectHere(context);
    if ('problems' in project) return project;
    const room = roomNamed(project.rooms, told.room);
    if (!room) return problem(MEASURE_PROBLEMS.unknownQuestion(told.room));
    const outcome =
      told.wall === undefined
        ? await noted(told, room, project, context)
        : await putInPlace({ ...told, wall: told.wall }, room, project, context);
    if (outcome) return outcome;
  }
  return problem(MEASURE_PROBLEMS.moved());
}

type WallTold = ToTell & { readonly wall: number };

async function putInPlace(
  told: WallTold,
  room: Room,
  project: Project,
  context: Context,
): Promise<Outcome | undefined> {
  const { habits } = context;
  const units = unitsTold(room.text, habits);
  const outline = outlineOf(room, habits);
  const now = outline && wallsOf(outline)[told.wall - 1];
  if (now === undefined) return problem(MEASURE_PROBLEMS.noWall(told.wall, room.name, outline?.length ?? 0));
  const notes: string[] = [];
  const reading = { option: 'do', habits, note: (line: string) => void notes.push(line) };
  const length = readWallLength(told.length, now, units, reading);
  if (!length.ok) return unreadLength(length, told);
  const say = (one: Length): string =>
    sayLength(one, { units: unitsTold(told.length, { ...habits, units }), decimal: habits.decimal });
  const at = context.now();
  const step = wallStep(project, room, { wall: told.wall, length: length.value, at }, context);
  if ('problem' in step) return problem(step.problem);
  const figures = step.text === undefined ? undefined : await figuresOf(project, step.parts, room, context);
  const place = { room: room.name, wall: told.wall };
  const said =
    step.kind === 'same'
      ? MEASURE.saidSame(place, say(length.value))
      : step.kind === 'kept'
        ? MEASURE.saidKept(place, say(length.value))
        : MEASURE.saidChanged(place, say(now), say(length.value), figures?.brief ?? []);
  const done = await changeHere<boolean>(context, 'measure', (before) => {
    const there = roomNamed(before.rooms, room.name);
    if (there?.text !== room.text) return { result: false };
    const again = wallStep(before, there, { wall: told.wall, length: length.value, at }, context);
    if ('problem' in again || again.text !== step.text) return { result: false };
    return { parts: again.parts, said: said.slice(0, LIMITS.note), result: true };
  });
  if ('problems' in done) return done;
  if (!done.result) return undefined;
  const headline =
    step.kind === 'same'
      ? MEASURE.same(place, say(length.value))
      : step.kind === 'changed'
        ? MEASURE.changed(place, say(now), say(length.value), figures?.brief ?? [])
        : step.miss === undefined
          ? MEASURE.unsure(place, say(length.value), step.again)
          : MEASURE.misses(place, say(length.value), say(step.miss), step.again);
  return replyOf(context, roomNamed(done.project.rooms, room.name), {
    headline,
    blocks: figures?.blocks ?? [],
    assumed: [...notes, ...(figures?.notes ?? []), ...(step.kind === 'kept' ? [MEASURE.numbered] : [])],
    actions: [TAKE_BACK],
  });
}

/** Something else of a room: noted with it, and no longer asked. */
async function noted(told: ToTell, room: Room, project: Project, context: Context): Promise<Outcome | undefined> {
  const { habits } = context;
  const units = unitsTold(room.text, habits);
  const bare: LengthUnit = units === 'metric' ? 'm' : 'ft';
  const notes: string[] = [];
  const length = readLength(told.length, { option: 'do', habits, note: (line) => void notes.push(line) }, bare);
  if (!length.ok) return unreadLength(length, told);
  const said = sayLength(length.value, {
    units: unitsTold(told.length, { ...habits, units }),
    decimal: habits.decimal,
  });
  const what = told.what ?? '';
  const rooms = withNoted(project.rooms, room, what, said);
  if ((roomNamed(rooms, room.name)?.notes.length ?? 0) > LIMITS.notes)
    return problem(tooManyNotes(room.name, LIMITS.notes));
  const done = await changeHere<boolean>(context, 'measure', (before) => {
    const there = roomNamed(before.rooms, room.name);
    const after = there && withNoted(before.rooms, there, what, said);
    if (!after || (roomNamed(after, room.name)?.notes.length ?? 0) > LIMITS.notes) return { result: false };
    const measures = withoutQuestions(before.measures, (one) => sameQuestion(one, told));
    return { parts: { rooms: after, measures }, said: MEASURE.saidNoted(told, said), result: true };
  });
  if ('problems' in done) return done;
  if (!done.result) return undefined;
  return replyOf(context, roomNamed(done.project.rooms, room.name), {
    headline: MEASURE.noted(told, said),
    assumed: notes,
    actions: [TAKE_BACK],
  });
}

/** Result data of kind `measure`: the room as it is now, and nothing else of a project that may be shared in part. */
interface MeasureResult extends Result {
  readonly kind: 'measure';
  readonly rooms: readonly Pick<Room, 'name' | 'text' | 'notes'>[];
}

function replyOf(context: Context, room: Room | undefined, told: Parameters<typeof projectReply>[1]): Reply {
  const rooms = room ? [{ name: room.name, text: room.text, notes: room.notes }] : [];
  const data: MeasureResult = { kind: 'measure', rooms };
  return { ...projectReply(context, told), data };
}

/** The problem with a length, its fix the whole line. */
function unreadLength(read: Extract<Read<Length>, { ok: false }>, told: ToTell): Outcome {
  const [first] = read.problems;
  return problem({ ...first, option: 'ask', fix: first.fix && MEASURE.tell(told, first.fix) });
}
