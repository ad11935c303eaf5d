/** `small-talk`: one line for messages that aren't about a floor: hello, thanks, anger, and what this bot can't do. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { choice } from '../src/input/options.ts';
import { reply } from '../src/reply/reply.ts';
import { SMALL_TALK, TALK_TEXT } from '../src/text/reader-text.ts';

export default defineCommand({
  name: 'small-talk',
  summary: 'Small talk, and things that aren’t about floors',
  hidden: true,
  options: z.object({ about: choice(SMALL_TALK, { summary: 'What it’s about' }) }),
  examples: [{ ask: 'small-talk about: hello', headline: TALK_TEXT.hello.lead }],
  run: ({ about }, { assumed }) => {
    const { lead, line, request, label } = TALK_TEXT[about];
    return reply({
      headline: lead,
      lines: [line],
      blocks: [],
      assumed,
      actions: request === undefined ? [] : [{ label: label ?? request, ask: request }],
      data: { kind: 'none' },
    });
  },
});
