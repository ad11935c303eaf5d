/** `help`: all commands, or one with its options and examples. */

import { closest } from 'fastest-levenshtein';
import { z } from 'zod';
import { type Command, defineCommand } from '../src/chat/command.ts';
import { fullName, listed, optionsOf, typedName } from '../src/input/command-shape.ts';
import { text } from '../src/input/options.ts';
import { read, type Units } from '../src/input/reading.ts';
import { type Block, reply } from '../src/reply/reply.ts';
import { HELP } from '../src/text/help-text.ts';

export default defineCommand({
  name: 'help',
  summary: 'What you can ask, and how',
  options: z.object({
    command: text({ summary: 'A command to explain; all without it', example: 'planks', standard: 'all' }, (typed) =>
      read(typed),
    ),
  }),
  examples: [
    { ask: 'help', headline: (commands) => HELP.headline(listed(commands).length) },
    { ask: 'help planks', headline: 'floor planks: Cartons of plank for your rooms, and a laying guide row by row.' },
  ],
  run: ({ command: requested }, { commands: all, assumed, preferences }) => {
    const commands = listed(all);
    const word = requested.trim().toLowerCase();
    if (word === 'all') {
      const data = { kind: 'help', commands: commands.map(fullName) };
      return reply({ headline: HELP.headline(commands.length), blocks: [listOf(commands), grammar], assumed, data });
    }
    const command = commands.find((known) => [typedName(known), fullName(known)].includes(word));
    if (!command) {
      return {
        problems: [HELP.unknown(word.slice(0, 40), closest(word.slice(0, 40), commands.map(typedName)))],
      };
    }
    return reply({
      assumed,
      headline: HELP.about(fullName(command), command.summary),
      blocks: [
        optionTable(command, preferences.units),
        { kind: 'steps', title: HELP.examples, steps: command.examples.map(({ ask }) => ask) },
        grammar,
      ],
      data: { kind: 'help', commands: [fullName(command)] },
    });
  },
});

const grammar: Block = { kind: 'text', text: HELP.grammar };

function listOf(commands: readonly Command[]): Block {
  const rows = commands.map((command) => [fullName(command), command.summary, command.examples[0].ask]);
  return { kind: 'table', title: HELP.title, columns: HELP.columns, rows };
}

function optionTable(command: Command, units: Units): Block {
  const rows = optionsOf(command).map(({ name, summary, standard, metric, example }) => [
    name,
    summary,
    (units === 'metric' ? metric : undefined) ?? standard ?? HELP.needed,
    `${name}: ${example}`,
  ]);
  return { kind: 'table', title: HELP.options, columns: HELP.optionColumns, rows };
}
