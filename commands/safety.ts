/** `safety`: the cautions of a task, each with its source, and the noise dose of a planned day. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { cautionsFor, NOISE_FIGURES, TASKS } from '../src/figures/safety-figures.ts';
import { choice, text } from '../src/input/options.ts';
import { readDay } from '../src/input/parse-noise.ts';
import { noiseDose, recommendedDose } from '../src/prep/noise-dose.ts';
import { reply } from '../src/reply/reply.ts';
import { SAFETY, worded } from '../src/text/caution-text.ts';
import { noiseBlocks } from './prep/noise-day.ts';

export default defineCommand({
  name: 'safety',
  summary: 'What can hurt you in a task, and what to do about it',
  options: z.object({
    task: choice(TASKS, { summary: `${TASKS.slice(0, -1).join(', ')} or ${TASKS.at(-1)}`, standard: 'laying' }),
    day: text(
      {
        summary: 'Noises of your day, each with its time and level',
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
