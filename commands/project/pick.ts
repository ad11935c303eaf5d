/** `project pick`: what you chose, told once: the plank, the pad, the trim, rules, tax. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import type { Problem } from '../../src/reply/reply.ts';
import { pickUnknown, tooManyPicks } from '../../src/text/project-problems-text.ts';
import { CHANGED, PROJECT, SAVED } from '../../src/text/project-text.ts';
import { type PicksSaid, picksSaid } from './pick-values.ts';
import { doneOr, inProject, projectProblem, projectReply, TAKE_BACK } from './project-command.ts';
import { nextProjectRequests, pickFacts } from './project-shown.ts';

// Picks set and cleared: the picks after it and what changed in words, or why it cannot be done.

type PickStep = { readonly picks: Project['picks']; readonly said: readonly string[] } | { readonly problem: Problem };

/** Sets and clears picks. Pure. */
function pickStep(before: Project['picks'], { set, clear }: Pick<PicksSaid, 'set' | 'clear'>): PickStep {
  const picks = new Map(Object.entries(before));
  const said: string[] = [];
  for (const name of clear) {
    const key = [name, name.replaceAll(' ', '-')].find((one) => picks.has(one));
    if (key === undefined) return { problem: pickUnknown(name, undefined, [...picks.keys()]) };
    picks.delete(key);
    said.push(CHANGED.pickGone(key));
  }
  for (const [key, text] of set) {
    const old = picks.get(key);
    if (old === text) continue;
    if (old === undefined && picks.size >= LIMITS.picks) return { problem: tooManyPicks(key, LIMITS.picks) };
    picks.set(key, text);
    said.push(old === undefined ? CHANGED.pick(key, text) : CHANGED.pickChanged(key, old, text));
  }
  return { picks: Object.fromEntries(picks), said };
}

export default defineCommand({
  group: 'project',
  name: 'pick',
  summary: 'What you chose, told once: “plank: 6 x 48 in, 10 per carton”, “gap: 3/8 in”, “clear gap”',
  options: z.object({
    pick: text(
      {
        summary: 'An option of any command and what you chose for it; all picks without it',
        example: 'plank: 6 x 48 in, 10 per carton',
        standard: 'all',
        names: 'pick',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: 'project pick plank: 6 x 48 in, 10 per carton',
      headline: 'Plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft is now 6 x 48 in, 10 per carton.',
    },
    { ask: 'project pick tax: 8 %, pattern: thirds', headline: 'Tax: 8 %; pattern: thirds.' },
    { ask: 'project pick clear gap', headline: 'Gap no longer picked.' },
  ],
  run: ({ pick }, context) =>
    inProject(context, async (project, access) => {
      if (/^(?:all|list|show)?$/i.test(pick)) {
        const count = Object.keys(project.picks).length;
        return projectReply(context, {
          headline: count === 0 ? PROJECT.noPicks : PROJECT.picked(count),
          blocks: pickFacts(project.picks),
          actions: nextProjectRequests(project),
          project,
        });
      }
      const said = picksSaid(pick, context);
      if ('problem' in said) return projectProblem(said.problem);
      const done = await access.change<PickStep>('measure', ({ picks }) => {
        const step = pickStep(picks, said);
        return 'problem' in step || step.said.length === 0
          ? { result: step }
          : { parts: { picks: step.picks }, said: step.said.join('; '), result: step };
      });
      return doneOr(context, done, (step, after) =>
        'problem' in step
          ? projectProblem(step.problem)
          : projectReply(context, {
              headline: step.said.length > 0 ? PROJECT.done(step.said) : PROJECT.nothingChanged,
              blocks: pickFacts(after.picks),
              assumed: [
                ...said.notes,
                ...(step.said.length > 0 && after.kept.length > 0 ? [SAVED.stay(after.kept.length)] : []),
              ],
              actions: [...(step.said.length > 0 ? [TAKE_BACK] : []), ...nextProjectRequests(after)],
              project: after,
            }),
      );
    }),
});
