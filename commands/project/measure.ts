/** `project measure`: asks for a length, and puts what the tape says into the room. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { openQuestions } from '../../src/chat/notifications.ts';
import { mintId } from '../../src/chat/saved-replies.ts';
import { sayLength } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { outlineOf, unitsGiven, wallsOf } from '../../src/input/rooms/measure-wall.ts';
import { type MeasuredPlace, readMeasurement } from '../../src/input/rooms/parse-measurement.ts';
import {
  LONGEST_WHAT,
  MOST_QUESTIONS,
  sameQuestion,
  withoutQuestions,
  withQuestion,
} from '../../src/project/measurements.ts';
import type { Project } from '../../src/project/project.ts';
import { inScope, type Room, roomNamed } from '../../src/project/project-room.ts';
import type { Action, Block } from '../../src/reply/reply.ts';
import { MEASURE, MEASURE_PROBLEMS } from '../../src/text/project-text.ts';
import { type ToTell, tellLength } from './measure-room.ts';
import { changeHere, projectHere, projectProblem, projectReply, TAKE_BACK } from './project-command.ts';

interface MeasureAsk {
  readonly do: string;
  /** The number or the id of an open question. */
  readonly question?: string;
}

async function answerMeasure(ask: MeasureAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const [first] = inScope(project.rooms).length > 0 ? inScope(project.rooms) : project.rooms;
  if (!first) return projectProblem(MEASURE_PROBLEMS.noRooms(ask.do));
  if (ask.question !== undefined) return answered(ask.question, ask.do, project, context);
  const said = readMeasurement(
    ask.do,
    project.rooms.map(({ name }) => name),
  );
  switch (said.do) {
    case 'list':
      return listed(project, context);
    case 'withdraw':
      return withdrawn(said.place, said.no, project, context);
    case 'ask':
    case 'tell': {
      if (said.do === 'tell' && !said.place) return givenAlone(said.length, project, first, context);
      const found = placeOf(said.place ?? {}, ask.do, said.do === 'tell' ? ` is ${said.length}` : '', project, context);
      if ('problem' in found) return projectProblem(found.problem);
      return said.do === 'tell'
        ? tellLength({ ...found, length: said.length }, context)
        : requested(found, project, context);
    }
    case 'unread':
      return projectProblem(MEASURE_PROBLEMS.unread(ask.do, first.name));
  }
}

type Found = Omit<ToTell, 'length'> | { readonly problem: ReturnType<typeof MEASURE_PROBLEMS.noRooms> };

/** If some of it isn't named, there must be only one possibility. */
function placeOf(
  { room, wall, what }: MeasuredPlace,
  got: string,
  rest: string,
  project: Project,
  context: Context,
): Found {
  const named = room === undefined ? roomMeant(wall, project) : roomNamed(project.rooms, room);
  if (!named) {
    const names = project.rooms.map(({ name }) => name);
    return { problem: MEASURE_PROBLEMS.whichRoom(got, wall ?? 1, names, rest) };
  }
  if (wall === undefined) {
    if (what !== undefined && what.length > LONGEST_WHAT)
      return { problem: MEASURE_PROBLEMS.tooLong(what, LONGEST_WHAT) };
    return { room: named.name, ...(what !== undefined && { what }) };
  }
  const outline = outlineOf(named, context.preferences);
  if (!outline) return { problem: MEASURE_PROBLEMS.unreadable(named.name) };
  if (wall < 1 || wall > outline.length) return { problem: MEASURE_PROBLEMS.noWall(wall, named.name, outline.length) };
  return { room: named.name, wall };
}

function roomMeant(wall: number | undefined, { rooms, measures }: Project): Room | undefined {
  const open = measures.open.filter((one) => one.wall === wall);
  const requested = new Set(open.map(({ room }) => room));
  const [only, ...more] = requested.size > 0 ? rooms.filter(({ name }) => requested.has(name)) : inScope(rooms);
  return more.length === 0 ? only : undefined;
}

async function requested(place: Omit<ToTell, 'length'>, project: Project, context: Context): Promise<Outcome> {
  if (project.measures.open.some((one) => sameQuestion(one, place)))
    return listed(project, context, MEASURE.already(place));
  if (project.measures.open.length >= MOST_QUESTIONS) return projectProblem(MEASURE_PROBLEMS.tooMany(MOST_QUESTIONS));
  const question = { ...place, id: mintId(), at: context.now() };
  const done = await changeHere(context, 'measure', ({ measures }) =>
    measures.open.length >= MOST_QUESTIONS
      ? { result: undefined }
      : {
          parts: { measures: withQuestion(measures, question) },
          said: MEASURE.saidRequested(place),
          result: undefined,
        },
  );
  if ('problems' in done) return done;
  const alone = (await context.access?.share()) === undefined && done.project.shares.length === 0;
  return projectReply(context, {
    headline: MEASURE.requested(place, keptLength(place, project, context)),
    blocks: questionBlocks(done.project, context),
    assumed: [...(place.wall === undefined ? [] : [MEASURE.numbered]), ...(alone ? [MEASURE.nobody] : [])],
    actions: [TAKE_BACK, ...planAction(place.room, project)],
  });
}

/** In the units of its room. */
function keptLength(
  { room, wall }: Omit<ToTell, 'length'>,
  { rooms }: Project,
  { preferences }: Context,
): string | undefined {
  const named = roomNamed(rooms, room);
  const outline = named && wall !== undefined ? outlineOf(named, preferences) : undefined;
  const length = outline && wallsOf(outline)[(wall ?? 0) - 1];
  return length === undefined || !named
    ? undefined
    : sayLength(length, { units: unitsGiven(named.text, preferences), decimal: preferences.decimal });
}

function planAction(room: string, { picks }: Project): readonly Action[] {
  return picks.plank === undefined ? [] : [{ label: MEASURE.walls, ask: `layout room: ${room}` }];
}

function listed(project: Project, context: Context, headline?: string): Outcome {
  const open = openQuestions(project, context.preferences);
  return projectReply(context, {
    headline: headline ?? (open.length === 0 ? MEASURE.none : MEASURE.open(open.length)),
    opens: 'list',
    blocks: questionBlocks(project, context),
  });
}

/** With what to type; for whoever may measure. */
function questionBlocks(project: Pick<Project, 'measures' | 'rooms'>, { preferences }: Context): readonly Block[] {
  const rows = openQuestions(project, preferences).map(({ label, kept = '', question, example }, i) => [
    String(i + 1),
    label,
    kept,
    MEASURE.tell(question, example),
  ]);
  return rows.length === 0 ? [] : [{ kind: 'table', title: MEASURE.openTitle, columns: MEASURE.columns, rows }];
}

async function withdrawn(
  place: MeasuredPlace | undefined,
  no: number | undefined,
  project: Project,
  context: Context,
): Promise<Outcome> {
  const open = openQuestions(project, context.preferences).map(({ question }) => question);
  const gone = open.filter((one, i) => {
    if (no !== undefined) return i + 1 === no;
    if (!place) return true;
    return sameQuestion(one, { ...place, room: place.room ?? one.room });
  });
  if (gone.length === 0) return projectProblem(MEASURE_PROBLEMS.unknownQuestion(context.optionTexts.get('do') ?? ''));
  const done = await changeHere(context, 'measure', ({ measures }) => ({
    parts: { measures: withoutQuestions(measures, ({ id }) => gone.some((one) => one.id === id)) },
    said: gone.map(MEASURE.saidWithdrawn).join('; '),
    result: undefined,
  }));
  if ('problems' in done) return done;
  return projectReply(context, {
    headline: MEASURE.withdrawn(gone),
    blocks: questionBlocks(done.project, context),
    actions: [TAKE_BACK],
  });
}

/** `which` is the number or the id of the question. */
function answered(which: string, text: string, project: Project, context: Context): Promise<Outcome> | Outcome {
  const open = openQuestions(project, context.preferences);
  const found = open.find(({ id }, i) => id === which || String(i + 1) === which.replace(/^#|^no\.? ?/i, ''));
  if (!found) return projectProblem(MEASURE_PROBLEMS.unknownQuestion(which));
  const { id: _id, at: _at, by: _by, ...place } = found.question;
  const said = readMeasurement(
    text,
    project.rooms.map(({ name }) => name),
  );
  return tellLength({ ...place, length: said.do === 'tell' ? said.length : text }, context);
}

/** A length on its own answers the only open question. */
function givenAlone(length: string, project: Project, first: Room, context: Context): Promise<Outcome> | Outcome {
  const open = openQuestions(project, context.preferences);
  const [only, ...more] = open;
  if (!only) return projectProblem(MEASURE_PROBLEMS.noQuestion(length, first.name));
  if (more.length > 0)
    return projectProblem(
      MEASURE_PROBLEMS.whichQuestion(
        length,
        open.map(({ question }) => MEASURE.tell(question, length)),
      ),
    );
  return answered(only.id, length, project, context);
}

const NONE = 'none';

export default defineCommand({
  group: 'project',
  name: 'measure',
  summary: 'Ask whoever has the tape for a wall’s length, or enter one, and the room is updated',
  phrases: [
    'what do i need to measure',
    'measuring list for the house',
    'what measurements do you need from me',
    'which dimensions are still missing',
    'give me a sheet to write measurements on',
    'what should i measure before going to the store',
    'measure list for bedroom',
    'what info do you need to figure the boxes',
    'what numbers are missing',
    "i'm at home with a tape what should i measure",
    'do i measure doors too',
    'what do i need to know about my rooms',
    'what to measure for trim',
    'list of things to measure',
    'form for measurements',
    'what else should i take down',
    'what do you need to know',
    'measuring checklist',
    'which measures do you still want',
    'what do i look for on the carton',
    "i'm standing here with a tape, which walls do you want",
    'measuring list for the bedroom',
    'which sizes are still missing before you can figure the boxes for me',
    "give me a sheet to fill in with measurements when i go over to mom's house tonight",
    'do i measure into the doorway or stop at the jamb',
    'what dimensions do you want for stairs',
    'list what to measure in each room before i go to the store saturday',
    "how do i measure a room that isn't square",
    "what should i write down from the side of the plank carton while i'm at the store",
    'measurements you need for trim',
    'do you need door widths and heights or only the widths for the transition pieces',
    'i have 20 minutes at the rental, what are the must have measurements',
    'measure sheet please',
    "where's the best place to measure the width if the walls lean in and out",
    "what's missing",
    'tell me what to measure for the dip in the floor and how to do it with a straightedge',
    'form i can print for room sizes',
    'should the closet be measured separately or as part of the bedroom',
    'what else do you need to know about the kitchen',
    'how exact do i have to be, nearest inch or nearest eighth, when i measure walls',
    'which measurements are needed for leveler',
    "i'm going to see the house tomorrow for one hour so list what i should measure there",
    'how should i measure an l shaped room',
    'have i given you every size you need or are there holes',
    'make me a checklist with blanks for length, width, doors and closets of four rooms',
    'what do i need off the carton',
    'do i go to the drywall or to the baseboard when measuring for the plank',
    'measuring guide',
    "before i tear anything out what should i take the size of so i don't forget it",
    "what info's needed for transitions",
    'need a blank form with spots for every wall and doorway in the lounge and hall',
    'how do i measure around the fireplace',
    "what numbers should my daughter get for me, she's at the house and i'm not",
    "which rooms don't have measurements yet",
    'do you want the height of the old floor and the tile next to it too',
    'things to measure list',
    'do i need to know where the joists are and how far apart before we talk squeaks',
    'what to measure for baseboards in a bay window',
    'measurement to do list for upstairs',
    'open questions',
    'show the open questions',
    'open measurements',
  ],
  options: z.object({
    do: text(
      {
        summary: '“wall 3 of bedroom” asks for it, “wall 3 of bedroom is 11\' 8"” enters it; “withdraw wall 3”',
        example: 'wall 3 of bedroom',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
    question: text({ summary: 'The number of the open question this answers', example: '1', standard: NONE }, (typed) =>
      read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: 'project measure wall 3 of bedroom',
      headline: `Asked: wall 3 of bedroom, kept as 11'. Whoever measures will see it with their next answer.`,
    },
    {
      ask: `project measure wall 3 of bedroom is 11' 2"`,
      headline: `Wall 3 of bedroom: 11' is now 11' 2": 206 → 210 planks, Underlay (pad) 449.5 sq ft → 451.6 sq ft.`,
    },
    { ask: 'project measure', headline: 'Nothing is waiting to be measured.' },
  ],
  run: (options, context) =>
    answerMeasure({ do: options.do, ...(options.question !== NONE && { question: options.question }) }, context),
});
