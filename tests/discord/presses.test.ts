/** Presses change the message they stand on: counted over the answers to every command's examples, and over a list ticked off. */

import type { APIInteraction } from 'discord.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { answer } from '../../src/chat/pipeline.ts';
import type { Ports } from '../../src/chat/ports.ts';
import { fullName } from '../../src/input/command-shape.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { replyTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { ASKER, pick, press, slash, snowflake } from './interactions.ts';
import { allIn, controlOf, field, list, textOf } from './json-field.ts';
import { type Stage, stage } from './stage.ts';

const fault = (_reference: string, cause: unknown): never => {
  throw cause;
};

let ports: Ports;
let sample: Reply | undefined;
let bot: Stage;
beforeAll(async () => {
  ports = await demoPorts({ platform: 'discord', id: ASKER }, fault);
  bot = await stage({
    // What a press asks for is worked out elsewhere: here it counts where its answer goes.
    answer: async function* (request) {
      if (sample) yield sample;
      else yield* answer(request, commands, ports);
    },
    toPng: async () => Buffer.from('a picture'),
  });
});
afterAll(async () => {
  await bot.close();
  expect(bot.discord.flaws).toEqual([]);
});

const data = (one: { body: unknown }): unknown => field(one.body, 'data');

/** Every press that a message offers: each button, each line of each list. */
function pressesOf(message: unknown, where: { message: string }): readonly APIInteraction[] {
  return allIn(message).flatMap((one) => {
    const id = field(one, 'custom_id');
    if (typeof id !== 'string') return [];
    const values = list(field(one, 'options')).map((option) => String(field(option, 'value')));
    return values.length === 0 ? [press(id, where)] : values.map((value) => pick(id, [value], where));
  });
}

describe('of the presses under answers of every command', () => {
  it('at most one in ten makes a new message', { timeout: 240_000 }, async () => {
    const types: Record<string, number> = {};
    let [presses, made] = [0, 0];
    const tape = replyTo('tape 1 + 2');
    // Floors are what is asked most, so two of each of those.
    const asks = commands.flatMap((command) =>
      command.examples.slice(0, command.group === 'floor' ? 2 : 1).map(({ ask }) => ({ command, ask })),
    );
    for (const { command, ask } of asks) {
      const parsed = parseLine(ask, commands);
      if (!parsed.ok) throw new Error(`not read: ${ask}`);
      const message = { message: snowflake() };
      const shown = data(await bot.ask(slash(fullName(command), Object.fromEntries(parsed.optionTexts))));
      sample = await tape;
      for (const pressed of pressesOf(shown, message)) {
        const response = await bot.ask(pressed);
        const type = String(field(response.body, 'type'));
        types[type] = (types[type] ?? 0) + 1;
        presses += 1;
        // What follows the first response is there once another interaction has been answered.
        if (type === '6') await bot.after(pressed, 'edit');
        if (type === '4' || type === '5') made += 1;
      }
      sample = undefined;
    }
    await bot.ask(slash('tape', { sum: '1 + 1' }));
    const posted = bot.discord.captured.filter(({ kind }) => kind === 'follow-up');
    console.info(
      `${presses} presses, ${made} new messages and ${posted.length} shown; by type ${JSON.stringify(types)}`,
    );
    expect(presses).toBeGreaterThanOrEqual(600);
    expect(made + posted.length).toBeLessThanOrEqual(presses / 10);
  });
});

describe('a list that is ticked off', () => {
  it('makes no new message in twelve ticks, and takes several at once', async () => {
    ports = await demoPorts({ platform: 'discord', id: ASKER }, fault);
    const where = { message: snowflake() };
    let shown = data(await bot.ask(slash('progress')));
    const before = bot.discord.captured.length;
    for (let done = 0; done < 12; done++) {
      const ticks = allIn(shown).find((one) => field(one, 'placeholder') === 'Tick off');
      const [first] = list(field(ticks, 'options'));
      const ticked = await bot.ask(pick(String(field(ticks, 'custom_id')), [String(field(first, 'value'))], where));
      expect(field(ticked.body, 'type')).toBe(7);
      shown = data(ticked);
    }
    expect(bot.discord.captured.slice(before).filter(({ kind }) => kind !== 'callback')).toEqual([]);
    shown = data(await bot.ask(slash('shopping')));
    const select = allIn(shown).find((one) => field(one, 'placeholder') === 'Tick off');
    const options = list(field(select, 'options'));
    expect(options.length).toBeGreaterThan(1);
    expect(field(select, 'max_values')).toBe(options.length);
    const both = await bot.ask(
      pick(
        String(field(select, 'custom_id')),
        options.map((one) => String(field(one, 'value'))),
        where,
      ),
    );
    expect(field(both.body, 'type')).toBe(7);
    expect(textOf(data(both))).toMatch(/Bought[\s\S]*Planks[\s\S]*Underlay|Nothing left to buy/);
    // One Undo for both.
    const undone = await bot.ask(press(controlOf(data(both), 'Undo').id, where));
    expect(field(undone.body, 'type')).toBe(7);
    const again = data(await bot.ask(slash('shopping')));
    expect(
      list(
        field(
          allIn(again).find((one) => field(one, 'placeholder') === 'Tick off'),
          'options',
        ),
      ),
    ).toHaveLength(options.length);
  });
});
