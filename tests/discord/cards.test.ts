/** The cards people work from: the list in the store, the floor a row at a time, the poll with its costs. */

import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import type { Ports } from '../../src/chat/ports.ts';
import { replyTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { ASKER, choose, press, slash, snowflake } from './interactions.ts';
import { allIn, controlOf, field, labelsOf, list, textOf } from './json-field.ts';
import { type Captured, refusalOf } from './loopback-rest.ts';
import { type Stage, stage } from './stage.ts';

const fault = (_reference: string, cause: unknown): never => {
  throw cause;
};
let ports: Ports;
let bot: Stage;
beforeAll(async () => {
  bot = await stage({
    answer: (request) => answer(request, commands, ports),
    toPng: async () => Buffer.from('a picture'),
  });
});
beforeEach(async () => {
  ports = await demoPorts({ platform: 'discord', id: ASKER }, fault);
});
afterAll(async () => {
  await bot.close();
  expect(bot.discord.flaws).toEqual([]);
});

const data = (one: Captured): unknown => field(one.body, 'data');
const where = { message: snowflake() };
const pressed = async (message: unknown, wanted: string): Promise<Captured> =>
  bot.ask(choose(controlOf(message, wanted), where));

/** The things of the card, each with what is pressed for it. */
function things(message: unknown): readonly { readonly said: string; readonly id: string }[] {
  return allIn(message)
    .filter((one) => field(one, 'type') === 9)
    .map((one) => ({
      said: String(field(list(field(one, 'components'))[0], 'content')),
      id: String(field(field(one, 'accessory'), 'custom_id')),
    }));
}

describe('the list in the store', () => {
  it('has a button for each thing, and what is bought leaves it in its place', async () => {
    const listed = data(await bot.ask(slash('shopping')));
    const opened = await pressed(listed, 'In the store');
    expect(field(opened.body, 'type')).toBe(7);
    let card = data(opened);
    const all = things(card);
    expect(all.map(({ said }) => said)).toContain('Planks 7" × 48": 21 cartons of 10, $1,415.82');
    const before = bot.discord.captured.length;
    for (let left = all.length; left > 1; left--) {
      const [first] = things(card);
      const bought = await bot.ask(press(first?.id ?? '', where));
      expect(field(bought.body, 'type')).toBe(7);
      card = data(bought);
      expect(things(card).map(({ said }) => said)).toEqual(all.slice(all.length - left + 1).map(({ said }) => said));
    }
    expect(bot.discord.captured.slice(before).filter(({ kind }) => kind !== 'callback')).toEqual([]);
    const [last] = things(card);
    const done = data(await bot.ask(press(last?.id ?? '', where)));
    expect(textOf(done)).toMatch(/Nothing left to buy/);
    expect((await replyTo('project shopping', { asker: { platform: 'discord', id: ASKER }, ports })).headline).toMatch(
      /Nothing left to buy/,
    );
  });

  it('takes back what was pressed by mistake', async () => {
    const listed = data(await bot.ask(slash('shopping')));
    const card = data(await pressed(listed, 'In the store'));
    const bought = data(await bot.ask(press(things(card)[0]?.id ?? '', where)));
    await pressed(bought, 'Undo');
    const again = data(await pressed(data(await bot.ask(slash('shopping'))), 'In the store'));
    expect(things(again)).toHaveLength(things(card).length);
  });
});

const FLOOR = { room: `12' x 14'`, plank: '7 x 48 in, 10 per carton' };

describe('a floor row by row', () => {
  it('shows one row in large figures, each as the guide has it', async () => {
    const reply = await replyTo(`planks room: ${FLOOR.room}, plank: ${FLOOR.plank}`);
    const guide = reply.blocks.flatMap((block) =>
      block.kind === 'table' && block.section === 'rows' ? block.rows : [],
    );
    let card = data(await pressed(data(await bot.ask(slash('floor planks', FLOOR))), 'Row by row'));
    for (const [at, [name = '', start = '', whole = '', end = '', cuts = '']] of guide.entries()) {
      const said = textOf(card).replace(/\\/g, '');
      expect(said).toContain(`Row ${name}`);
      for (const cell of [start, end].filter((one) => one !== 'whole')) expect(said).toContain(cell);
      if (whole !== '') expect(said).toContain(`${whole} whole`);
      if (cuts !== '') expect(said).toContain(cuts);
      if (at + 1 < guide.length) card = data(await pressed(card, 'Done, next row'));
    }
    const back = data(await pressed(card, 'Back'));
    expect(textOf(back)).toContain(`Row ${guide.at(-2)?.[0]}`);
    expect(textOf(data(await pressed(card, 'Done, that’s the last')))).toContain('Buy 9 cartons');
  });

  it('plans the rest anew when a plank broke, and again when another did', async () => {
    let card = data(await pressed(data(await bot.ask(slash('floor planks', FLOOR))), 'Row by row'));
    for (let done = 0; done < 4; done++) card = data(await pressed(card, 'Done, next row'));
    const planned = await replyTo(`resume room: ${FLOOR.room}, plank: ${FLOOR.plank}, so-far: row 4 is laid, 1 broken`);
    const again = await pressed(card, 'Broke one');
    expect(field(again.body, 'type')).toBe(7);
    expect(textOf(data(again)).replace(/\\/g, '')).toMatch(/^### Row 5\n/);
    expect(textOf(data(again))).toContain(planned.headline.replaceAll('|', '\\|'));
    const next = data(await pressed(data(again), 'Done, next row'));
    const twice = await replyTo(`resume room: ${FLOOR.room}, plank: ${FLOOR.plank}, so-far: row 5 is laid, 2 broken`);
    expect(textOf(data(await pressed(next, 'Broke one')))).toContain(twice.headline);
  });

  it('keeps the plan where nothing is laid yet, and counts the plank later', async () => {
    const first = data(await pressed(data(await bot.ask(slash('floor planks', FLOOR))), 'Row by row'));
    const broke = data(await pressed(first, 'Broke one'));
    expect(textOf(broke)).toMatch(/Row 1\n[\s\S]*1 broken: cut it again/);
    const second = data(await pressed(broke, 'Done, next row'));
    const planned = await replyTo(`resume room: ${FLOOR.room}, plank: ${FLOOR.plank}, so-far: row 1 is laid, 2 broken`);
    expect(textOf(data(await pressed(second, 'Broke one')))).toContain(planned.headline);
  });

  it('goes on in the next room, and names both', async () => {
    const rooms = { room: 'hall 3x11; bedroom 11x12', plank: FLOOR.plank };
    let card = data(await pressed(data(await bot.ask(slash('floor planks', rooms))), 'Row by row'));
    expect(textOf(card)).toContain('Row 1, rip 3 3/4" in hall');
    for (let done = 0; done < 8; done++) card = data(await pressed(card, 'Done, next row'));
    expect(textOf(card)).toContain('Row 3 in bedroom');
    const planned = await replyTo(
      'resume room: hall 3x11; bedroom 11x12, plank: 7 x 48 in, 10 per carton, so-far: hall is done, bedroom row 2 is laid, 1 broken',
    );
    expect(textOf(data(await pressed(card, 'Broke one')))).toContain(planned.headline);
  });
});

describe('a poll of planks', () => {
  const planks = 'oak: 6 x 48 in, 10 per carton, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton';

  it('has the cost of each in its answers', async () => {
    const compared = data(await bot.ask(slash('floor compare', { room: FLOOR.room, planks })));
    const poll = field(data(await pressed(compared, 'Ask the channel')), 'poll');
    const answers = list(field(poll, 'answers')).map((one) => field(field(one, 'poll_media'), 'text'));
    expect(answers).toEqual(['oak · $450.00', 'ash · $572.00']);
  });

  it('that Discord does not take is told of, to who asked alone', async () => {
    const compared = data(await bot.ask(slash('floor compare', { room: FLOOR.room, planks })));
    bot.discord.refuse({
      matching: ({ body }) => field(field(body, 'data'), 'poll') !== undefined,
      ...refusalOf(403, 50013, 'Missing Permissions'),
    });
    const asked = choose(controlOf(compared, 'Ask the channel'));
    await bot.ask(asked);
    const told = await bot.discord.next(({ kind, token }) => kind === 'callback' && token === asked.token);
    expect(textOf(data(told))).toContain('didn’t let me start a poll');
    expect(Number(field(data(told), 'flags')) & 64).toBe(64);
    expect(labelsOf(data(told))).toEqual([]);
  });
});
