/** `safety`: the cautions for a task, each with its source, and the noise dose of a planned day. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { cautionsFor, NOISE_FIGURES, TASKS } from '../src/figures/safety-figures.ts';
import { choice, text } from '../src/input/options.ts';
import { readDay } from '../src/input/parse-weight.ts';
import { noiseDose, recommendedDose } from '../src/prep/safe-work.ts';
import { reply } from '../src/reply/reply.ts';
import { SAFETY, worded } from '../src/text/caution-text.ts';
import { noiseBlocks } from './prep/noise-day.ts';

export default defineCommand({
  name: 'safety',
  summary: 'What can hurt you on each task, and what to do about it',
  phrases: [
    'what safety things should i know',
    'safety list',
    'any dangers with this job',
    'what protective gear do i need',
    'show the cautions',
    'what should i watch out for',
    'is this dangerous',
    'safety for tear out',
    'do i need gloves and goggles',
    'safety tips for diy flooring',
    'ppe list',
    'hazards in an old house',
    'how do i do this safely',
    'warnings',
    'what mask gloves and eye protection',
    'is it safe to do this myself',
    'risk list',
    'safety sheet',
    'what can hurt me doing floors',
    'keep my kids safe during the work',
    'show me the cautions',
    'what should i be careful about when i tear up this carpet',
    'gloves, mask, goggles, which do i really need',
    'is any of this dangerous',
    'safety list for the whole job',
    'what could go wrong with old glue and tiles in a 1965 house',
    'warnings for cutting vinyl plank indoors',
    'what do i have to watch for with staples and tack strip',
    'my kids will be around, what safety stuff applies',
    'list the hazards before we start demo',
    'what dust mask for sanding leveler',
    'can i get hurt doing this alone',
    'remind me of safety rules for the table saw when cutting planks',
    'anything i should know about lead paint on the old baseboards',
    'read me the safety notes again',
    'how do i stay safe while cutting out subfloor over wires',
    'dangers?',
    'protect my knees and back how',
    'precautions for tearing out flooring in a house built before 1980',
    'what protective gear do i put on the shopping list',
    "show every caution you've got for tear out and prep",
    "is it risky to cut into the floor not knowing what's under it",
    'safety before i pull up the old lino',
    'do i need to turn off the power first before cutting the floor',
    'pregnant wife in the house, what should she stay away from during the demo',
    'ear protection, is it needed with a chop saw',
    "what's unsafe about dry mixing leveler in a closed room",
    'please list all safety things, my helper is only 17',
    'health risks of the black glue',
    'wear what',
    'the cautions for lifting, dust and blades in one place',
    "i've got asthma, what parts of this job should i avoid",
    'before the grinder comes out, what do i need to know to not hurt myself',
    'cautions list',
    'hazard sheet for my helpers',
    'how to do the tear-out safely with a dog running around',
    'what safety kit do i want, respirator type and so on',
    'show hazards for old houses',
    'any safety rules on how loud the saw is and how long i can run it',
    'stuff that can hurt me on this job',
  ],
  options: z.object({
    task: choice(TASKS, { summary: `${TASKS.slice(0, -1).join(', ')} or ${TASKS.at(-1)}`, standard: 'laying' }),
    day: text(
      {
        summary: 'The noise in your day: each source with its time and level',
        example: 'saw 2 h at 100, vacuum 1 h at 85',
        colons: 'any',
        standard: 'none',
      },
      readDay,
    ),
  }),
  examples: [
    { ask: 'safety', headline: 'Before laying: 8 things that can hurt you.' },
    { ask: 'safety task: tear-out', headline: 'Before tear-out: 9 things that can hurt you.' },
    {
      ask: 'safety task: cutting, day: saw 2 h at 100, vacuum 1 h at 85',
      headline: 'Before cutting: 6 things that can hurt you.',
    },
    { ask: 'safety leak', headline: 'Before you clean up a leak: 5 things that can hurt you.' },
  ],
  run: ({ task, day }, { assumed, preferences }) => {
    const cautions = worded(cautionsFor(task));
    const cited = cautions.flatMap(({ source }) => (source ? [source] : []));
    return reply({
      headline: SAFETY.headline(task, cautions.length),
      blocks: [{ kind: 'text', text: SAFETY.first }, ...noiseBlocks(day, preferences)],
      assumed,
      cautions,
      sources: [...cited, ...(day.length > 0 ? NOISE_FIGURES.map(({ source }) => source) : [])],
      data: {
        kind: 'safety',
        task,
        topics: cautions.map(({ topic }) => topic),
        ...(day.length > 0 ? { noiseDose: noiseDose(day), recommendedDose: recommendedDose(day) } : {}),
      },
    });
  },
});
