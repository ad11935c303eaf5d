/** `help`: all commands, or one with its options and examples. */

import { closest } from 'fastest-levenshtein';
import { z } from 'zod';
import { type Command, defineCommand } from '../src/chat/command.ts';
import { ENTRIES, entriesLike } from '../src/handbook/all-entries.ts';
import { fullName, listed, optionsOf, typedName } from '../src/input/command-shape.ts';
import { text } from '../src/input/options.ts';
import { read, type Units } from '../src/input/reading.ts';
import { type Block, reply } from '../src/reply/reply.ts';
import { HELP } from '../src/text/answer-text.ts';

export default defineCommand({
  name: 'help',
  summary: 'What you can ask, and how',
  phrases: [
    'help',
    'what can you do',
    'how does this work',
    'commands',
    'what can i ask you',
    'how do i use this bot',
    'give me examples',
    'menu',
    'i dont get it',
    'options',
    'i am new here',
    'instructions',
    'what is this',
    'show me what you do',
    'how do i talk to you',
    'list of commands',
    'can you help me with my floor',
    'not sure what to ask',
    'guide me',
    'how do i start',
    'how do i use this thing',
    "i'm new here, what do i type",
    'show me the commands',
    'what kind of questions can you answer',
    'list everything you know how to do please',
    'can you help me with my floors or is this just for contractors',
    'how does this bot work',
    'give me some examples of what to ask',
    'not sure how to ask for stuff here',
    'what are the options for the planks command',
    'help with trim',
    "my son set this up for me, what's it for",
    'do you only do floors',
    'commands list',
    'how do i tell you about my rooms',
    'is there a manual or something',
    'explain how to use layout',
    "i don't understand what you want me to type",
    'what else can you do besides counting boxes',
    'show me an example of a request for a room with two doors',
    'how do i get going with this',
    'what do you need from me to be useful',
    'instructions please',
    'what are you good for',
    'never used a chat bot before, how do i talk to you, full sentences or what',
    'show all features',
    'whats the command for moisture',
    'can you do stairs',
    'help me understand how to enter feet and inches',
    '??? how',
    'what stuff do you handle, tear out too or only the new floor',
    'tips for using you on my phone',
    'list of things you do',
    'how do i find the command that tracks money',
    'is there something you can do for subfloor repairs',
    'who are you and what do you do',
    'help tearout',
  ],
  options: z.object({
    command: text(
      { summary: 'The command or topic to explain; leave it out to see all', example: 'planks', standard: 'all' },
      (typed) => read(typed),
    ),
  }),
  examples: [
    { ask: 'help', headline: (commands) => HELP.headline(listed(commands).length) },
    { ask: 'help planks', headline: 'floor planks: How many cartons your rooms need, and a row-by-row laying guide.' },
  ],
  run: async ({ command: requested }, { commands: all, assumed, preferences, ask }) => {
    const commands = listed(all);
    const word = requested.trim().toLowerCase();
    if (word === 'all') {
      const data = { kind: 'help', commands: commands.map(fullName) };
      const headline = HELP.headline(commands.length);
      return reply({ headline, lines: HELP.lines, blocks: [listOf(commands), grammar], assumed, data });
    }
    const command = commands.find((known) => [typedName(known), fullName(known)].includes(word));
    const entries = word.length < LEAST_LETTERS ? [] : entriesLike(word);
    if (command?.name === 'handbook' || (!command && entries.length > 0)) {
      const { outcome } = await ask(`handbook entry: ${command ? 'all' : word}`);
      const members = commands.filter(({ group }) => group === word).map(typedName);
      if (!('headline' in outcome) || members.length === 0) return outcome;
      return { ...outcome, lines: [...(outcome.lines ?? []), HELP.members(members)] };
    }
    if (!command) {
      return {
        problems: [HELP.unknown(word.slice(0, 40), closest(word.slice(0, 40), commands.map(typedName)))],
      };
    }
    const leading = ENTRIES.filter(({ next }) => next?.request.split(' ')[0] === typedName(command));
    const asked = [...new Set([...leading, ...entries])].slice(0, 3);
    return reply({
      assumed,
      headline: HELP.about(fullName(command), command.summary),
      lines: [
        ...command.examples.slice(0, 2).map(({ ask: line }) => HELP.example(line)),
        ...(asked.length > 0 ? [HELP.questions(asked.map(({ title }) => title))] : []),
      ],
      actions: asked.map(({ id, title }) => ({ label: title, ask: `handbook entry: ${id}` })),
      blocks: [
        optionTable(command, preferences.units),
        { kind: 'steps', title: HELP.examples, steps: command.examples.map(({ ask }) => ask) },
        grammar,
      ],
      data: { kind: 'help', commands: [fullName(command)] },
    });
  },
});

/** Fewer begin too many words. */
const LEAST_LETTERS = 3;

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
