/** `project keep`: saves an answer to the project, with its rooms and its plank. */

import { z } from 'zod';
import type { ProjectAccess } from '../../src/accounts/account-access.ts';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { mintId } from '../../src/chat/saved-replies.ts';
import { text } from '../../src/input/options.ts';
import { isExamplePlank } from '../../src/input/parse-plank.ts';
import { read } from '../../src/input/reading.ts';
import { emptyContent, freeName, type KeptAsk } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { roomNamed } from '../../src/project/project-room.ts';
import type { Block, Problem } from '../../src/reply/reply.ts';
import {
  exampleKept,
  keptUnknown,
  nothingToKeep,
  refusedAsk,
  roomUnknown,
} from '../../src/text/project-problems-text.ts';
import { CHANGED, NEXT, PROJECT, SAVED } from '../../src/text/project-text.ts';
import { type AnsweredRooms, type KeepStep, keepStep } from './keep-rooms.ts';
import {
  doneOr,
  inProject,
  nameProblem,
  projectProblem,
  projectReply,
  TAKE_BACK,
  withProject,
} from './project-command.ts';
import { nextProjectRequests, pageOf } from './project-shown.ts';
import { savedActions, savedLines, savedTable, savedToday } from './saved-today.ts';

const UNNAMED = 'My floor';

/** `line` is a request, or words for the last answer. Starts a project if none is in use. */
async function keep(line: string, access: ProjectAccess, context: Context): Promise<Outcome> {
  const found = /^(?:last|that|this|it|the last (?:answer|one))?[.!]?$/i.test(line)
    ? lastAsk(await access.last())
    : await answered(line, context);
  if ('problem' in found) return projectProblem(found.problem);
  if (isExamplePlank(context.parse(found.ask)?.optionTexts.get('plank') ?? ''))
    return projectProblem(exampleKept(line));
  const ask: AnsweredRooms = { ...found, id: mintId(), at: access.now() };
  const begun = await begin(access);
  if (begun && 'problem' in begun) return projectProblem(begun.problem);
  const settings = await access.ownersSettings();
  const done = await access.change<KeepStep>('keep', (project) => {
    const step = keepStep(project, ask, context, settings);
    return 'problem' in step ? { result: step } : { parts: step.parts, said: step.said.join('; '), result: step };
  });
  return doneOr(context, done, async (step, project) => {
    if ('problem' in step) return projectProblem(step.problem);
    const saved = await savedToday(project, context);
    const outside = step.outside === undefined ? [] : [SAVED.outside];
    return projectReply(context, {
      headline: PROJECT.keptIn(ask.headline),
      blocks: [...alsoKept(step.said.slice(1)), ...pageOf(project), ...textBlocks(savedLines(saved))],
      assumed: [...(begun ? [PROJECT.started(begun.name)] : []), ...outside, ...step.stays],
      actions: [
        TAKE_BACK,
        ...step.others.map(([key, text]) => ({ label: SAVED.use(key), ask: `project pick ${key}: ${text}` })),
        ...(step.outside === undefined ? [] : [{ label: SAVED.addRoom, ask: `project room add ${step.outside}` }]),
        ...savedActions(saved),
        { label: NEXT.show, ask: 'project show' },
        ...nextProjectRequests(project),
      ],
      project,
    });
  });
}

/** For work at one spot that was saved without a room. */
function aboutRoom(number: number, name: string, context: Context): Promise<Outcome> {
  return inProject(context, async (project, access) => {
    const saved = project.kept[number - 1];
    if (!saved) return projectProblem(keptUnknown(String(number), project.kept.length));
    const room = roomNamed(project.rooms, name.replace(/^(?:the|my|our) /i, ''));
    if (!room) {
      const [first] = project.rooms;
      const fix = first && `project keep ${number} in ${first.name}`;
      return projectProblem(
        roomUnknown(
          name,
          project.rooms.map((one) => one.name),
          fix,
        ),
      );
    }
    const done = await access.change('keep', ({ kept }) => ({
      parts: { kept: kept.map((one) => (one.id === saved.id ? { ...one, rooms: [room.name] } : one)) },
      said: SAVED.inRoom(saved.headline, room.name),
      result: undefined,
    }));
    return doneOr(context, done, (_result, after) =>
      projectReply(context, {
        headline: PROJECT.done([SAVED.inRoom(saved.headline, room.name)]),
        blocks: savedTable(after),
        actions: [TAKE_BACK],
        project: after,
      }),
    );
  });
}

function unkeep(number: number, context: Context): Promise<Outcome> {
  return inProject(context, async (project, access) => {
    const gone = project.kept[number - 1];
    if (!gone) return projectProblem(keptUnknown(String(number), project.kept.length));
    const done = await access.change('keep', ({ kept }) => ({
      parts: { kept: kept.filter(({ id }) => id !== gone.id) },
      said: CHANGED.unkept(gone.headline),
      result: undefined,
    }));
    return doneOr(context, done, (_result, after) =>
      projectReply(context, {
        headline: PROJECT.done([CHANGED.unkept(gone.headline)]),
        blocks: pageOf(after),
        actions: [TAKE_BACK],
        project: after,
      }),
    );
  });
}

function textBlocks(lines: readonly string[]): readonly Block[] {
  return lines.map((text) => ({ kind: 'text', text }));
}

function alsoKept(items: readonly string[]): readonly Block[] {
  return items.length > 0 ? [{ kind: 'text', text: `${PROJECT.alsoKept}: ${items.join('; ')}.` }] : [];
}

type Found = Pick<KeptAsk, 'ask' | 'headline'> | { readonly problem: Problem };

function lastAsk(last: { readonly line: string; readonly headline: string } | undefined): Found {
  return last ? { ask: last.line, headline: last.headline } : { problem: nothingToKeep() };
}

/** Runs the request and fills in what it needs; if it can't be answered, that becomes the problem. */
async function answered(line: string, context: Context): Promise<Found> {
  const { outcome, line: whole } = await context.ask(line);
  if ('problems' in outcome) {
    const [{ option, fix, ...first }] = outcome.problems;
    const own = fix === undefined || (option === 'ask' && fix.startsWith('project '));
    return { problem: { ...first, option: 'ask', fix: own ? fix : `project keep ${fix}` } };
  }
  if ('why' in outcome) return { problem: refusedAsk(outcome.why) };
  return { ask: whole, headline: outcome.headline.slice(0, LIMITS.headline) };
}

/** Undefined if a project is already in use. */
async function begin(
  access: ProjectAccess,
): Promise<{ readonly name: string } | { readonly problem: Problem } | undefined> {
  if (await access.inUse()) return undefined;
  const mine = await access.own();
  const name = freeName(UNNAMED, mine);
  const wrong = nameProblem(name, mine);
  return wrong ? { problem: wrong } : access.create(emptyContent(name));
}

export default defineCommand({
  group: 'project',
  name: 'keep',
  summary: 'Keep an answer with its rooms and plank: the last one, or the answer to a question you add',
  phrases: [
    'save that',
    'keep this answer',
    'keep that',
    'store this for later',
    'save the result to the project',
    'add that to my project',
    'keep the layout',
    'remember this answer',
    'save it',
    'hold on to that one',
    'save this list',
    'i want to keep that',
    'put this in the project',
    'keep it',
    'save the boxes answer',
    'pin this',
    'file that under bedroom',
    'store that plan',
    'keep that one not the other',
    'save what you just said',
    'hang on to that one',
    'put that result in my project',
    "that's good, keep it with the bedroom",
    'store the box count please',
    'save the layout you just gave me',
    "keep the trim list, i'll need it at the store",
    'file this with the den',
    "don't lose that answer, i want it later",
    'save',
    'add that answer to the project so it shows up on my list',
    'remember this result',
    'keep the last one',
    'yes save it',
    'i like that plan, hold on to it',
    'pin the cut list',
    'can you store what you figured there',
    'keep that tearout sheet for saturday',
    'save this for when i get home',
    'record that answer under hallway',
    "that layout's the one, save it",
    'keep both of those',
    'stash that somewhere',
    'please retain the numbers you just worked out',
    'save the one before that too',
    'put it with my project',
    "let's save the second version not the first",
    'attach this to the living room',
    'save answer',
    "i'll go with that, please keep it in the job",
    'keep this calculation, the wife needs to see it tonight',
    'hold that for me',
    'save that leveler amount to the basement project',
    'commit this one to the project',
    'save the comparison for later so we can decide on sunday',
    "don't throw that away",
    'keep those screws in the plan',
    'bookmark that',
  ],
  options: z.object({
    ask: text(
      {
        summary: 'A whole question; leave it out for your last one; or “remove 2”, “2 in hall”',
        example: 'planks room: 12 x 14 ft',
        standard: 'last',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: 'project keep planks room: den 10 x 12 ft, plank: 6 x 48 in, 10 per carton',
      headline: 'Saved: Buy 7 cartons (70 planks): 60 to lay, 2 for mistakes, 8 left over.',
    },
  ],
  run: ({ ask }, context) =>
    withProject(context, async (access) => {
      const [, no, room] =
        /^(?:no\.? ?|number |answer )?(\d{1,3}) (?:is |was )?(?:in|about|of|for) (.{1,80})$/i.exec(ask) ?? [];
      if (no !== undefined && room !== undefined) return aboutRoom(Number(no), room, context);
      const number = /^(?:remove|drop|delete|forget|clear) (?:no\.? ?)?(\d{1,3})$/i.exec(ask)?.[1];
      return number === undefined ? keep(ask, access, context) : unkeep(Number(number), context);
    }),
});
