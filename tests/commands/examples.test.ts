/** Every command's examples are run and give the headline they promise; no command can lack them or fall off a menu. */

import { describe, expect, expectTypeOf, test } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import { type Command, defineCommand } from '../../src/chat/command.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { type Example, fullName, headlineOf, typedName } from '../../src/input/command-shape.ts';
import { choice, count } from '../../src/input/options.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { type Reply, unsafe } from '../../src/reply/reply.ts';
import { commandFlaws } from '../architecture/command-flaws.ts';
import { demoPorts } from '../chat/demo-flat.ts';

/** The last answer to an ask: the one that stands, for somebody with the demo flat. A fault throws with its cause. */
async function lastAnswer(ask: string): Promise<unknown> {
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference} at “${ask}”`, { cause });
  };
  const asker = { platform: 'terminal', id: 'examples' } as const;
  const ports = ask.startsWith('project ') ? await demoPorts(asker, fault) : { fault };
  let last: unknown;
  for await (const given of answer({ asker, preferences: DEFAULT_PREFERENCES, text: ask }, commands, ports))
    last = given;
  return last;
}

const examples = commands.flatMap((command) =>
  command.examples.map((example) => ({
    name: fullName(command),
    ask: example.ask,
    headline: headlineOf(example, commands),
  })),
);

describe('examples', () => {
  test('are found for every command', () => {
    expect(commands.length).toBeGreaterThanOrEqual(5);
    expect(new Set(examples.map(({ name }) => name))).toEqual(new Set(commands.map(fullName)));
  });

  test.each(examples)('$ask', async ({ ask, headline }) => {
    expect(headline).not.toBe('');
    expect(await lastAnswer(ask)).toMatchObject({ headline, cautions: expect.any(Array) });
  });

  test.each(examples)('begin with their command: $ask', ({ name, ask }) => {
    const short = name.slice(name.lastIndexOf(' ') + 1);
    expect(ask.startsWith(name) || ask.startsWith(short)).toBe(true);
  });
});

describe('commands', () => {
  test.each(commands.map((command) => [fullName(command), command] as const))('%s has no flaw', (_name, command) => {
    expect(commandFlaws(command)).toEqual([]);
  });

  test('have names of their own, with and without their group, and no command is named as a group', () => {
    const full = commands.map(fullName);
    const bare = commands.map(typedName);
    const groups = commands.flatMap(({ group }) => (group ? [group] : []));
    expect(new Set(full).size).toBe(full.length);
    expect(new Set(bare).size).toBe(bare.length);
    expect(bare.filter((name) => groups.includes(name))).toEqual([]);
  });
});

describe('planted flaws are caught', () => {
  const sound = defineCommand({
    name: 'rows',
    summary: 'Counts rows',
    options: z.object({ rows: count({ summary: 'How many', least: 1, most: 9 }) }),
    examples: [{ ask: 'rows 2', headline: 'Two rows.' }],
    run: () => ({ why: '', call: '', cautions: [], data: unsafe('structure') }),
  });

  test('a sound command has none', () => expect(commandFlaws(sound)).toEqual([]));

  test('no examples: neither the type nor the check lets it pass', () => {
    expectTypeOf<readonly [Example]>().toExtend<Command['examples']>();
    expectTypeOf<readonly []>().not.toExtend<Command['examples']>();
    expectTypeOf<readonly Example[]>().not.toExtend<Command['examples']>();
    expectTypeOf<Omit<Command, 'examples'>>().not.toExtend<Command>();
    expect(commandFlaws({ ...sound, examples: [] as unknown as Command['examples'] })).toEqual(['rows has no example']);
    const { examples: _examples, ...without } = sound;
    expect(commandFlaws(without as Command)).toEqual(['rows has no example']);
  });

  const words = 'a word '.repeat(15).trim();
  const rows = sound.options;
  const many = Object.fromEntries(Array.from({ length: 26 }, (_, i) => [`rows-${i}`, rows.shape.rows ?? z.string()]));
  const optional = choice(['long', 'short'], { summary: 'Which way', standard: 'long' });
  const flawed: readonly (readonly [string, Partial<Command>, string])[] = [
    ['a capital in the name', { name: 'Rows' }, 'no name for a menu'],
    ['a space in the name', { name: 'two rows' }, 'no name for a menu'],
    ['a name too long', { name: 'r'.repeat(33) }, 'no name for a menu'],
    ['a group that is no name', { group: 'Floor' }, 'no name for a menu'],
    ['a name that is not typed', { name: 'rows2' }, 'cannot be typed'],
    ['a summary too long', { summary: words }, 'summary has 104 characters'],
    ['no summary', { summary: ' ' }, 'summary is empty'],
    ['an option without facts', { options: z.object({ rows: z.string() }) }, 'option rows has no facts'],
    ['too many options', { options: z.object(many) }, 'has 26 options'],
    ['a wide option name', { options: z.object({ 'two rows': rows.shape.rows ?? z.string() }) }, 'no name for a menu'],
    ['a required option last', { options: z.object({ way: optional, ...rows.shape }) }, 'required option behind'],
    [
      'an option summary too long',
      { options: z.object({ rows: count({ summary: words, least: 1, most: 9 }) }) },
      'summary of rows has 104 characters',
    ],
    [
      'a standard that is not read',
      { options: z.object({ rows: count({ summary: 'How many', standard: '99', least: 1, most: 9 }) }) },
      'does not read its own “99”',
    ],
  ];
  test.each(flawed)('%s', (_name, change, flaw) => {
    expect(commandFlaws({ ...sound, ...change }).join('\n')).toContain(flaw);
  });

  test('an answer other than the one promised, and a fault', async () => {
    const [first] = commands;
    expect(await lastAnswer('no such thing')).not.toHaveProperty('headline');
    expect(((await lastAnswer(first?.examples[0].ask ?? '')) as Reply).headline).not.toBe('Two rows.');
  });
});
