/** `project pick`: saves their choices once for the whole project: plank, pad, trim, rules, tax. */

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

type PickStep = { readonly picks: Project['picks']; readonly said: readonly string[] } | { readonly problem: Problem };

/** Pure. */
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
  summary: 'Save your choices once: “plank: 6 x 48 in, 10 per carton”, “gap: 3/8 in”, “clear gap”',
  phrases: [
    "i'm using a 7x48 plank 10 per box",
    'my planks are 6x36, 24 sq ft a box',
    'use 16 foot trim',
    'set the gap to 3/8',
    'the plank i picked is 9 x 60 at 2.89',
    'going with 5.5 in baseboard',
    'change plank to the wider one',
    'pick thirds pattern',
    'stagger is 8 inches',
    'clear the gap',
    'i decided on oak 7 in planks',
    'the box says 23.64 sq ft and 12 planks',
    'plank thickness is 5.5 mm',
    'use the second option',
    'my saw kerf is 1/8',
    'choose 12 ft sticks at 13.98',
    'set waste at 10 percent',
    'flooring i bought comes 8 to a box',
    'going with the cheaper plank',
    'set direction along the hall',
    "i'm going with the 7x48 plank, 10 in a box",
    'picked the grey oak at 2.89 a foot',
    'planks are 9 x 60, six to a carton, 22.5 sq ft',
    'use 16 foot baseboard sticks',
    'we chose 5 1/4 base at 14.60 each',
    'set waste to 10 percent',
    'change the plank to the 6 inch one',
    'the box says 23.64 square feet and ten planks, so use that',
    'stagger of 8 inches please',
    "let's do a third offset pattern for all rooms",
    'plank i bought is 6.5 mm thick, pad attached',
    'option b it is',
    'choose the cheaper one',
    "the trim's gonna be 12 ft primed pine at 11.98",
    'lock in the 1220 x 180 boards, 2.2 m2 a pack',
    'make the gap 3/8',
    'saw blade is 1/8 kerf',
    'use plank 8.86 by 47.6 from now on',
    'i settled on the laminate, 8 per box at 17.4 sq ft',
    "wife picked the walnut color, 7.2 inches wide, five feet long, so that's our plank",
    'planks run lengthwise down the hall, set that',
    'forget the gap setting i gave',
    "for trim we're using quarter round only",
    'price went up to 58 a box, update my plank',
    'put down that my plank is 5 3/4 x 48 fourteen per box',
    'decided on 94 inch transitions',
    "the flooring's decided, 48 by 9, 7 in a box, $64.10",
    'swap the base for 3 1/2 inch, 8 foot sticks',
    'for the project use carton of 20.1',
    "underlay rolls are 100 sq ft each, i'm using those",
    'my pick is the one with 12 planks to the box',
    'i want planks to go toward the window',
    'nosing we selected comes in 72 in',
    'set plank',
    'pattern should be random not half',
    'going with skirting at 2.4 m lengths, 8.75 a piece',
    'switch to the second plank we compared',
    'cartons weigh 41 lb each, add that to the plank',
    'door strips we chose are 900 mm',
    'the box label reads 7.09 in x 48.03 in, 10 pcs, take that as my choice',
  ],
  options: z.object({
    pick: text(
      {
        summary: 'An option of any command and your choice for it; leave it out to see all your choices',
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
    { ask: 'project pick tax: 8%, pattern: thirds', headline: 'Tax: 8%; pattern: thirds.' },
    { ask: 'project pick clear gap', headline: 'Gap cleared.' },
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
