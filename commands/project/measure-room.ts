/** Puts the measured length of a wall into a room, or finds out which walls to measure again. */

import type { Context, Outcome } from '../../src/chat/command.ts';
import { sayLength } from '../../src/input/format.ts';
import { readLength } from '../../src/input/parse-length.ts';
import type { LengthUnit } from '../../src/input/parse-number.ts';
import type { Read } from '../../src/input/reading.ts';
import {
  FINEST,
  outlineOf,
  type ParsedWall,
  readWallLength,
  remeasured,
  unitsGiven,
  wallsOf,
} from '../../src/input/rooms/measure-wall.ts';
import {
  givenOf,
  type Measures,
  MOST_QUESTIONS,
  sameQuestion,
  withGiven,
  withNoted,
  withoutGiven,
  withoutQuestions,
  withQuestion,
} from '../../src/project/measurements.ts';
import { type Line, mergeNeeds } from '../../src/project/needs.ts';
import type { Content, Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { type Room, roomNamed, sameName } from '../../src/project/project-room.ts';
import { covers, isSharedPart } from '../../src/project/share-scope.ts';
import type { Block, Problem, Reply, Result } from '../../src/reply/reply.ts';
import { tooManyNotes } from '../../src/text/project-problems-text.ts';
import { MEASURE, MEASURE_PROBLEMS, SAVED } from '../../src/text/project-text.ts';
import { type Length, ticks } from '../../src/units/length.ts';
import { changeHere, projectHere, projectProblem, projectReply, TAKE_BACK } from './project-command.ts';
import { roomSteps } from './room-change.ts';
import { sayAmount } from './shopping-list.ts';
import { listOf } from './shopping-needs.ts';

/** `same`: the room already has this length; `changed`: the room has it now; `kept`: saved until other walls fit it. */
interface WallStep {
  readonly kind: 'same' | 'changed' | 'kept';
  readonly parts: Partial<Content>;
  /** The room's new text. */
  readonly text?: string;
  /** The gap that keeps the walls from closing, if known. */
  readonly miss?: Length;
  readonly again: readonly number[];
}

interface ReadLine extends ParsedWall {
  readonly at: number;
}

/** Also tries earlier lengths that didn't fit at the time. Pure. */
function wallStep(
  project: Project,
  room: Room,
  given: ReadLine,
  { preferences }: Context,
): WallStep | { readonly problem: Problem } {
  const measures = withoutQuestions(
    project.measures,
    ({ room: of, wall }) => sameName(of, room.name) && wall === given.wall,
  );
  const units = unitsGiven(room.text, preferences);
  const walls = wallsOf(outlineOf(room, preferences) ?? []);
  const fits = ({ wall, length }: ParsedWall): boolean => Math.abs((walls[wall - 1] ?? 0) - length) <= FINEST;
  const earlier = givenOf(measures, room.name)
    .filter(({ wall }) => wall !== given.wall)
    .map(({ wall, length }) => ({ wall, length: ticks(length) }));
  const heard = withGiven(measures, { room: room.name, wall: given.wall, length: given.length, at: given.at });
  // Confirming a wall's current length may be what an earlier measurement was waiting for.
  const waiting = fits(given) ? earlier.filter((one) => !fits(one)) : [given];
  for (const one of waiting) {
    const others = [...earlier.filter(({ wall }) => wall !== one.wall), ...(one === given ? [] : [given])];
    const found = remeasured(room, one, others, units, preferences);
    if (found.ok) return put(project, room, found.text, heard, preferences);
    if (one === given)
      return {
        kind: 'kept',
        parts: { measures: requestedAgain(heard, room, found.again, given.at) },
        again: found.again,
        ...(found.why === 'open' && { miss: found.miss }),
      };
  }
  return { kind: 'same', parts: { measures: heard }, again: [] };
}

function put(
  project: Project,
  room: Room,
  text: string,
  measures: Measures,
  preferences: Context['preferences'],
): WallStep | { readonly problem: Problem } {
  const steps = roomSteps({ ...project, measures }, [{ do: 'shape', name: room.name, text }], preferences);
  if ('problem' in steps) return steps;
  const { rooms } = steps.parts;
  const after = rooms.find(({ name }) => sameName(name, room.name))?.text ?? text;
  return { kind: 'changed', parts: { rooms, measures: withoutGiven(measures, room.name) }, text: after, again: [] };
}

/** As open questions, for whoever has the tape in hand. */
function requestedAgain(measures: Measures, { name }: Room, again: readonly number[], at: number): Measures {
  return again.slice(0, Math.max(0, MOST_QUESTIONS - measures.open.length)).reduce(
    // Unique, but the same if the change has to be made again.
    (all, wall) => withQuestion(all, { id: `again-${at}-${wall}`, room: name, wall, at }),
    measures,
  );
}

// Saved answers stay as they were; only the list of what to buy is compared.

interface Figures {
  /** A few words each: “23 → 24 planks”. */
  readonly brief: readonly string[];
  readonly blocks: readonly Block[];
  readonly notes: readonly string[];
}

const MOST_BRIEF = 4;

/** Throws Outage. */
async function figuresOf(project: Project, parts: Partial<Content>, room: Room, context: Context): Promise<Figures> {
  const after = { ...project, ...parts };
  const [was, now] = [await linesOf(project, room, context), await linesOf(after, room, context)];
  const changes = [...new Set([...was, ...now].map(({ item }) => item))].flatMap((item) =>
    changesOf(item, was, now, context),
  );
  const saved = isSharedPart(await context.access?.share()) ? 0 : project.kept.length;
  const rows = changes.map(({ label, from, to }) => [label, from, to]);
  return {
    brief: changes.slice(0, MOST_BRIEF).map(({ brief }) => brief),
    blocks:
      rows.length === 0 ? [] : [{ kind: 'table', title: MEASURE.figuresTitle, columns: MEASURE.figureColumns, rows }],
    notes: [
      ...(rows.length === 0 && now.length > 0 ? [MEASURE.sameLists] : []),
      ...(saved > 0 ? [SAVED.stay(saved)] : []),
    ],
  };
}

/** For a helper with only a part of the project, just the planks of the room. */
async function linesOf(project: Project, room: Room, context: Context): Promise<readonly Line[]> {
  const share = await context.access?.share();
  if (!share || !isSharedPart(share)) return (await listOf(project, context)).lines;
  if (!covers(share, 'floor planks')) return [];
  const { outcome } = await context.ask(`floor planks room: ${room.name}`, project);
  return 'headline' in outcome ? mergeNeeds(outcome.needs ?? []) : [];
}

interface Change {
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly brief: string;
}

function changesOf(
  item: string,
  was: readonly Line[],
  now: readonly Line[],
  { preferences }: Context,
): readonly Change[] {
  const [before, after] = [was.find((one) => one.item === item), now.find((one) => one.item === item)];
  const some = after ?? before;
  if (!some) return [];
  const amount = (line: Line | undefined): string =>
    sayAmount(some, line ? (line.count ?? line.amount) : 0, preferences);
  const [from, to] = [amount(before), amount(after)];
  const ofPlanks = item.startsWith('plank') && some.unit === 'count' && some.package !== undefined;
  const planks = ofPlanks ? planksOf(before, after) : undefined;
  const brief = ofPlanks ? MEASURE.cartons(String(before?.count ?? 0), to) : MEASURE.figure(some.label, from, to);
  const sold = from === to ? [] : [{ label: some.label, from, to, brief }];
  return [...(planks ? [planks] : []), ...sold];
}

/** Counts planks, not cartons. */
function planksOf(before: Line | undefined, after: Line | undefined): Change | undefined {
  const [from, to] = [before, after].map((line) => String(Math.ceil((line?.amount ?? 0) - 1e-9)));
  if (from === undefined || to === undefined || from === to) return undefined;
  return { label: MEASURE.planksLabel, from, to, brief: MEASURE.planks(from, to) };
}

/** As it was typed. */
export interface ToTell {
  readonly room: string;
  readonly wall?: number | undefined;
  readonly what?: string | undefined;
  readonly length: string;
}

/** Attempts if somebody else keeps changing the room in the meantime. */
const TRIES = 3;

/** The figures are computed before saving, for the room as it will be; if the room has changed by then, it starts over. */
export async function tellLength(given: ToTell, context: Context): Promise<Outcome> {
  for (let tries = 0; tries < TRIES; tries++) {
    const project = await projectHere(context);
    if ('problems' in project) return project;
    const room = roomNamed(project.rooms, given.room);
    if (!room) return projectProblem(MEASURE_PROBLEMS.unknownQuestion(given.room));
    const outcome =
      given.wall === undefined
        ? await noted(given, room, project, context)
        : await putInPlace({ ...given, wall: given.wall }, room, project, context);
    if (outcome) return outcome;
  }
  return projectProblem(MEASURE_PROBLEMS.moved());
}

type WallMeasured = ToTell & { readonly wall: number };

async function putInPlace(
  given: WallMeasured,
  room: Room,
  project: Project,
  context: Context,
): Promise<Outcome | undefined> {
  const { preferences } = context;
  const units = unitsGiven(room.text, preferences);
  const outline = outlineOf(room, preferences);
  const now = outline && wallsOf(outline)[given.wall - 1];
  if (now === undefined) return projectProblem(MEASURE_PROBLEMS.noWall(given.wall, room.name, outline?.length ?? 0));
  const notes: string[] = [];
  const reading = { option: 'do', preferences, note: (line: string) => void notes.push(line) };
  const length = readWallLength(given.length, now, units, reading);
  if (!length.ok) return unreadLength(length, given);
  const say = (one: Length): string =>
    sayLength(one, { units: unitsGiven(given.length, { ...preferences, units }), decimal: preferences.decimal });
  const at = context.now();
  const step = wallStep(project, room, { wall: given.wall, length: length.value, at }, context);
  if ('problem' in step) return projectProblem(step.problem);
  const figures = step.text === undefined ? undefined : await figuresOf(project, step.parts, room, context);
  const place = { room: room.name, wall: given.wall };
  const said =
    step.kind === 'same'
      ? MEASURE.saidSame(place, say(length.value))
      : step.kind === 'kept'
        ? MEASURE.saidKept(place, say(length.value))
        : MEASURE.saidChanged(place, say(now), say(length.value), figures?.brief ?? []);
  const done = await changeHere<boolean>(context, 'measure', (before) => {
    const there = roomNamed(before.rooms, room.name);
    if (there?.text !== room.text) return { result: false };
    const again = wallStep(before, there, { wall: given.wall, length: length.value, at }, context);
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

/** For lengths that aren't walls: saved as a note of the room, which closes the question. */
async function noted(given: ToTell, room: Room, project: Project, context: Context): Promise<Outcome | undefined> {
  const { preferences } = context;
  const units = unitsGiven(room.text, preferences);
  const bare: LengthUnit = units === 'metric' ? 'm' : 'ft';
  const notes: string[] = [];
  const length = readLength(given.length, { option: 'do', preferences, note: (line) => void notes.push(line) }, bare);
  if (!length.ok) return unreadLength(length, given);
  const said = sayLength(length.value, {
    units: unitsGiven(given.length, { ...preferences, units }),
    decimal: preferences.decimal,
  });
  const what = given.what ?? '';
  const rooms = withNoted(project.rooms, room, what, said);
  if ((roomNamed(rooms, room.name)?.notes.length ?? 0) > LIMITS.notes)
    return projectProblem(tooManyNotes(room.name, LIMITS.notes));
  const done = await changeHere<boolean>(context, 'measure', (before) => {
    const there = roomNamed(before.rooms, room.name);
    const after = there && withNoted(before.rooms, there, what, said);
    if (!after || (roomNamed(after, room.name)?.notes.length ?? 0) > LIMITS.notes) return { result: false };
    const measures = withoutQuestions(before.measures, (one) => sameQuestion(one, given));
    return { parts: { rooms: after, measures }, said: MEASURE.saidNoted(given, said), result: true };
  });
  if ('problems' in done) return done;
  if (!done.result) return undefined;
  return replyOf(context, roomNamed(done.project.rooms, room.name), {
    headline: MEASURE.noted(given, said),
    assumed: notes,
    actions: [TAKE_BACK],
  });
}

/** Only the room, because the project may be shared in part. */
interface MeasureResult extends Result {
  readonly kind: 'measure';
  readonly rooms: readonly Pick<Room, 'name' | 'text' | 'notes'>[];
}

function replyOf(context: Context, room: Room | undefined, given: Parameters<typeof projectReply>[1]): Reply {
  const rooms = room ? [{ name: room.name, text: room.text, notes: room.notes }] : [];
  const data: MeasureResult = { kind: 'measure', rooms };
  return { ...projectReply(context, given), data };
}

/** The fix is the whole line. */
function unreadLength(read: Extract<Read<Length>, { ok: false }>, given: ToTell): Outcome {
  const [first] = read.problems;
  return projectProblem({ ...first, option: 'ask', fix: first.fix && MEASURE.tell(given, first.fix) });
}
