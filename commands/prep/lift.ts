/** `prep lift`: what a carton may weigh for one person, by the NIOSH lifting equation. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { answerLift } from './parts/lift.ts';
import { liftOptions } from './parts/lift-options.ts';

export default defineCommand({
  group: 'prep',
  name: 'lift',
  summary: 'How heavy a carton one person may lift, by the NIOSH lifting equation',
  options: z.object(liftOptions),
  examples: [
    {
      ask: 'lift 45 lb',
      headline: '45 lb is 1.46 times the 30.9 lb recommended for this lift: split it, or lift with two.',
    },
    {
      ask: 'lift 26 lb, from: 22 in, to: 59 in, reach-end: 20 in, often: 3 a minute, grip: fair',
      headline: '26 lb is 1.7 times the 15.3 lb recommended for this lift: split it, or lift with two.',
    },
  ],
  run: (options, context) => answerLift(options, context),
});
