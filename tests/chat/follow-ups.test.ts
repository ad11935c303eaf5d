/** The law of a follow-up: it is answered as the whole request said at once. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { askLine, fullName, isCalculating, optionsOf } from '../../src/input/command-shape.ts';
import { answerTo, replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const side = fc.integer({ min: 8, max: 20 });
const room = fc.tuple(side, side).map(([one, other]) => `${one}x${other}`);
const box = fc.integer({ min: 180, max: 270 }).map((tenths) => `${tenths / 10} sq ft a box`);
const price = fc.integer({ min: 105, max: 595 }).map((cents) => `$${(cents / 100).toFixed(2)} a sq ft`);
const share = fc.integer({ min: 4, max: 18 }).map((percent) => `${percent}% extra`);
const doors = fc.integer({ min: 1, max: 3 }).map((count) => `${count} doors 30 in`);
const stock = fc.constantFrom(8, 10, 12, 16).map((feet) => `${feet} foot sticks`);
const spacing = fc.constantFrom(12, 16, 24).map((inches) => `joists ${inches} in on center`);

/** A first message of a room, and two details of which either may come later. */
const REQUESTS = [
  { first: 'how much flooring for', details: [box, price] },
  { first: 'how much flooring for', details: [box, share] },
  { first: 'how much flooring for', details: [share, price] },
  { first: 'how much baseboard for', details: [doors, stock] },
  { first: 'squeaky floor', details: [spacing, spacing] },
] as const;

function talk() {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  return (text: string) => answerTo(text, { ports });
}

function conversation() {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  return (text: string) => replyTo(text, { ports });
}

/** What an answer says, whatever way it was asked. */
function dataOf(answer: Answer): unknown {
  if ('headline' in answer) return answer.data;
  return 'problems' in answer ? answer.problems.map(({ expected }) => expected) : answer;
}

it('a detail said later gives what it gives in the first message', { timeout: 120_000 }, async () => {
  const drawn = fc.constantFrom(...REQUESTS).chain(({ first, details: [one, other] }) =>
    fc.record({
      begin: fc.constant(first),
      room,
      early: one,
      late: other,
      opening: fc.constantFrom('', 'and ', 'with '),
    }),
  );
  await fc.assert(
    fc.asyncProperty(drawn, async ({ begin, room: size, early, late, opening }) => {
      const squeaks = begin.startsWith('squeaky');
      const start = squeaks ? `${begin} ${size}` : `${begin} ${size}, ${early}`;
      const say = conversation();
      await say(start);
      const after = await say(`${opening}${late}`);
      const whole = await conversation()(`${start}, ${late}`);
      expect(after.data, `${start} | ${opening}${late}`).toEqual(whole.data);
    }),
    { seed: 19, numRuns: 60 },
  );
});

it('a corrected room gives what it gives when it is said first', { timeout: 120_000 }, async () => {
  const correction = fc.constantFrom('no, ', 'actually ', 'sorry, ', 'i meant ', 'what about ');
  await fc.assert(
    fc.asyncProperty(room, room, box, correction, async (before, after, carton, words) => {
      const say = conversation();
      await say(`how many boxes for ${before}, ${carton}`);
      const corrected = await say(`${words}${after}`);
      const whole = await conversation()(`how many boxes for ${after}, ${carton}`);
      expect(corrected.data, `${before} | ${words}${after}`).toEqual(whole.data);
    }),
    { seed: 19, numRuns: 40 },
  );
});

it('“in metric” says the same floor in meters, and “in feet” in feet again', async () => {
  const say = conversation();
  const before = await say('how much flooring for 12x15, 22 sq ft a box');
  const metric = await say('in metric');
  expect(metric.headline).toContain('16.72 m²');
  expect(metric.headline).not.toContain('sq ft');
  expect((await say('in feet')).headline).toBe(before.headline);
});

/** Every option of an example but what the command can't do without, said a message later and by its name. */
const LATE = commands.filter(isCalculating).flatMap((command) =>
  command.examples.flatMap(({ ask }) => {
    const parsed = parseLine(ask, commands);
    if (!parsed.ok) return [];
    const needed = optionsOf(command).filter(({ standard }) => standard === undefined);
    const options = [...parsed.optionTexts.keys()].filter((option) => !needed.some(({ name }) => name === option));
    return options.map((late) => ({ command, optionTexts: parsed.optionTexts, late }));
  }),
);
const NAMED: readonly ((option: string, value: string) => string)[] = [
  (option, value) => `${option}: ${value}`,
  (option, value) => `and ${option}: ${value}`,
  (option, value) => `no, ${option}: ${value}`,
  (option, value) => `make the ${option.replaceAll('-', ' ')} ${value}`,
  (option, value) => `actually the ${option.replaceAll('-', ' ')} is ${value}`,
];

it('has an option to say later for every command whose examples have one', () => {
  const names = new Set(LATE.map(({ command }) => fullName(command)));
  expect([...names].sort()).toEqual(
    expect.arrayContaining(['floor planks', 'prep level', 'prep patch', 'prep tearout', 'trim finish', 'trim list']),
  );
  expect(LATE.length).toBeGreaterThan(50);
});

it.each(
  LATE.map((one, i) => {
    const value = one.optionTexts.get(one.late) ?? '';
    // People speak figures; words are typed behind their name.
    const ways = /^[\d.,/' "a-z]+$/.test(value) && /\d/.test(value) ? NAMED : NAMED.slice(0, 3);
    const line = ways[i % ways.length]?.(one.late, value) ?? '';
    return [`${fullName(one.command)} | ${line}`, { ...one, line }] as const;
  }),
)(
  '%s, said later, gives what it gives at once',
  { timeout: 120_000 },
  async (_title, { command, optionTexts, late, line }) => {
    const value = optionTexts.get(late) ?? '';
    const before = new Map([...optionTexts].filter(([option]) => option !== late));
    const say = talk();
    await say(askLine(command, before));
    const after = await say(line);
    const whole = await talk()(askLine(command, new Map([...before, [late, value]])));
    expect(dataOf(after)).toEqual(dataOf(whole));
  },
);
