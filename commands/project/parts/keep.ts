/** Keeping an answer: the last one, or that of an ask told with it; and letting one go. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import type { Desk } from '../../../src/bot/desk.ts';
import { mintId } from '../../../src/bot/kept-answer.ts';
import { emptyContent, freeName } from '../../../src/project/create.ts';
import { LIMITS } from '../../../src/project/limits.ts';
import type { KeptAsk } from '../../../src/project/project.ts';
import type { Problem } from '../../../src/reply/problem.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { CHANGED, NEXT, PROJECT } from '../../../src/words/project.ts';
import { keptUnknown, nothingToKeep, refusedAsk } from '../../../src/words/project-problems.ts';
import { doneOr, inProject, problem } from './at-desk.ts';
import { type KeepStep, keepStep } from './keep-said.ts';
import { nameProblem } from './named.ts';
import { projectReply, TAKE_BACK } from './reply.ts';
import { nextAsks, pageOf } from './shown.ts';

const UNNAMED = 'My floor';

/** Keeps the answer to a line, or the last answer; begins a project where none is in use. */
export async function keep(line: string, desk: Desk, context: Context): Promise<Outcome> {
  const found = /^(?:last|that|this|it|the last (?:answer|one))?[.!]?$/i.test(line)
    ? lastAsk(await desk.last())
    : await answered(line, context);
  if ('problem' in found) return problem(found.problem);
  const ask: KeptAsk = { ...found, id: mintId(), at: desk.now() };
  const begun = await begin(desk);
  if (begun && 'problem' in begun) return problem(begun.problem);
  const done = await desk.change<KeepStep>('keep', (project) => {
    const step = keepStep(project, ask, context);
    return 'problem' in step ? { result: step } : { parts: step.parts, said: step.said.join('; '), result: step };
  });
  return doneOr(context, done, (step, project) =>
    'problem' in step
      ? problem(step.problem)
      : projectReply(context, {
          headline: PROJECT.keptIn(ask.headline),
          blocks: [...alsoKept(step.said.slice(1)), ...pageOf(project)],
          assumed: [...(begun ? [PROJECT.started(begun.name)] : []), ...step.stays],
          actions: [TAKE_BACK, { label: NEXT.show, ask: 'project show' }, ...nextAsks(project)],
          project,
        }),
  );
}

/** Lets the kept answer of a number go. */
export function unkeep(number: number, context: Context): Promise<Outcome> {
  return inProject(context, async (project, desk) => {
    const gone = project.kept[number - 1];
    if (!gone) return problem(keptUnknown(String(number), project.kept.length));
    const done = await desk.change('keep', ({ kept }) => ({
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

function alsoKept(items: readonly string[]): readonly Block[] {
  return items.length > 0 ? [{ kind: 'text', text: `${PROJECT.alsoKept}: ${items.join('; ')}.` }] : [];
}

type Found = Pick<KeptAsk, 'ask' | 'headline'> | { readonly problem: Problem };

function lastAsk(last: { readonly line: string; readonly headline: string } | undefined): Found {
  return last ? { ask: last.line, headline: last.headline } : { problem: nothingToKeep() };
}

/** The ask with all that it needs, and its headline; its own problem where it is not answered. */
async function answered(line: string, context: Context): Promise<Found> {
  const { outcome, line: whole } = await context.ask(line);
  if ('problems' in outcome) {
    const [first] = outcome.problems;
    return {
      problem: {
        ...first,
        option: 'ask',
        fix: first.option === 'ask' && first.fix.startsWith('project ') ? first.fix : `project keep ${first.fix}`,
      },
    };
  }
  if ('why' in outcome) return { problem: refusedAsk(outcome.why) };
  return { ask: whole, headline: outcome.headline.slice(0, LIMITS.headline) };
}

/** A project for somebody who has none in use; undefined where there is one. */
async function begin(desk: Desk): Promise<{ readonly name: string } | { readonly problem: Problem } | undefined> {
  if (await desk.inUse()) return undefined;
  const mine = await desk.own();
  const name = freeName(UNNAMED, mine);
  const wrong = nameProblem(name, mine);
  return wrong ? { problem: wrong } : desk.create(emptyContent(name));
}
