/** `project share`: gives somebody what they need of a project and nothing else; what is shared; changing and stopping it. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { answerShare } from './parts/share.ts';

const NONE = 'none';

const told = (summary: string, example: string, standard: string) =>
  text({ summary, example, standard, colons: 'any' }, (typed) => read(typed.trim()));

export default defineCommand({
  group: 'project',
  name: 'share',
  summary: 'Shares a list, a guide or all of a project, by a link or with a member; lists, changes, stops it',
  options: z.object({
    what: told(
      'Whole project, shopping list, laying guide of a room, cut list, tear-out, checklist; or list',
      'shopping list',
      'list',
    ),
    with: told('A link, or a member by @', 'link', 'link'),
    may: told('look, tick (and note), or measure', 'tick', 'as fits'),
    for: told('How long', '3 days', '14 days for a link'),
    until: told('Or until when', 'friday', NONE),
    name: told('What you call them', 'Sam', NONE),
    stop: told('A share to stop: its number, its name, or all', '2', NONE),
  }),
  examples: [
    { ask: 'project share', headline: 'Nothing of “Upstairs flat” is shared.' },
    {
      ask: 'project share shopping list, for: 3 days',
      headline: 'A link to the shopping list of “Upstairs flat”, until Tue 24 Nov, 12:00.',
    },
    {
      ask: 'project share laying guide of bedroom, until: Friday 18:00, name: Sam',
      headline: 'A link to the laying guide of bedroom of “Upstairs flat”, until Fri 27 Nov, 18:00.',
    },
  ],
  run: (_told, context) => answerShare(lineOf(context.told), context),
});

/** All that is told, as one sentence. */
function lineOf(options: ReadonlyMap<string, string>): string {
  const said = (option: string, before: string): string => {
    const value = options.get(option)?.trim() ?? '';
    return value === '' ? '' : `${before}${value}`;
  };
  if (said('stop', '') !== '') return said('stop', 'stop ');
  return [
    said('what', ''),
    said('with', 'with ').replace(/^with with /i, 'with '),
    said('may', 'may '),
    said('for', 'for ').replace(/^for for /i, 'for '),
    said('until', 'until ').replace(/^until until /i, 'until '),
    said('name', 'named '),
  ]
    .filter((part) => part !== '')
    .join(', ');
}
