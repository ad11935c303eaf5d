/** `project link`: a code that leads another account of yours to the same projects, taking one, and parting an account. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { atDesk } from './parts/at-desk.ts';
import { linkedAccounts, newCode, parted } from './parts/link.ts';
import { codeTaken } from './parts/link-taken.ts';

const NEW = 'new';
const NONE = 'none';

export default defineCommand({
  group: 'project',
  name: 'link',
  summary: 'Leads your other accounts to the same projects, by a code; takes a code; parts an account',
  options: z.object({
    code: text(
      {
        summary: 'The code you were given; without it you get one; “list” for your accounts',
        example: '7KQ2-M9XA',
        standard: NEW,
      },
      (typed) => read(typed.trim()),
    ),
    remove: text(
      { summary: 'An account to part, by its number or platform', example: 'slack', standard: NONE },
      (typed) => read(typed.trim()),
    ),
    confirm: text({ summary: 'The word that a code for accounts asks for', example: 'link', standard: NONE }, (typed) =>
      read(
        typed
          .trim()
          .toLowerCase()
          .replace(/[.!"“”']/g, ''),
      ),
    ),
  }),
  examples: [
    { ask: 'project link list', headline: 'Only this account leads to your projects.' },
    {
      ask: 'project link',
      headline: 'Here is your code. Type it on your other account within 10 minutes; it works once.',
    },
  ],
  run: ({ code: typed, remove, confirm: told }, context) =>
    atDesk(context, (desk) => {
      const both = /^(?<code>.+?)(?<![\s,;])[\s,;]+(?:and )?confirm[:\s]+(?<word>[^\s:]\S*)$/i.exec(typed)?.groups;
      const [code, confirm] = [both?.code ?? typed, both?.word?.toLowerCase() ?? told];
      const said = /^(?:remove|unlink|part|disconnect) (?:my |the )?(?<which>.+?)(?: account)?$/i.exec(code)?.groups
        ?.which;
      const which = remove === NONE ? said : remove;
      if (which !== undefined) return parted(which, desk, context);
      if (/^(?:list|show|accounts?|linked|who)$/i.test(code)) return linkedAccounts(desk, context);
      if (/^(?:new|make|code|me|(?:a )?new code|(?:my )?(?:other )?accounts?|\s*)$/i.test(code))
        return newCode(desk, context);
      return codeTaken(code.replace(/^(?:with |the )?(?:code )?/i, ''), confirm, desk, context);
    }),
});
