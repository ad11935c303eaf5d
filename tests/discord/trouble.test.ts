/** What goes wrong on the way: slow sums, rate limits, lost connections, expired tokens, deleted messages, deliveries twice over. */

import { GatewayIntentBits } from 'discord.js';
import { afterEach, describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { toPng } from '../../src/drawing/png.ts';
import { clientOf } from '../../src/platforms/discord/start.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { replyTo } from '../chat/asked.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { OTHER, press, slash } from './interactions.ts';
import { buttonsOf, field, list, textOf } from './json-field.ts';
import { type Captured, refusalOf } from './loopback-rest.ts';
import { type Stage, type Staged, stage } from './stage.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
const HEADLINE = 'Buy 10 cartons';
const requested = () => slash('floor planks', { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' });
const tape = () => slash('tape', { sum: '1 ft + 2 in' });

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect(bot.discord.flaws).toEqual([]);
  }
});
async function started(staged: Staged = {}): Promise<Stage> {
  const bot = await stage(staged);
  open.push(bot);
  return bot;
}

const data = (one: Captured): unknown => field(one.body, 'data');
const typeOf = (one: Captured): unknown => field(one.body, 'type');

/** An answer whose plan is low enough to stand in its first message. */
async function pictured(): Promise<Reply> {
  const reply = await replyTo(PLANKS);
  const blocks = reply.blocks.map((block) =>
    block.kind === 'picture' ? { ...block, drawing: { ...block.drawing, height: 180 } } : block,
  );
  return { ...reply, lines: [], cautions: [], blocks };
}

const answeredPictured: Staged['answer'] = async function* () {
  yield await pictured();
};

/** Neither the last nor the first answer is waited for; what keeps is. */
const hurried = (milliseconds: number): boolean => milliseconds === 700 || milliseconds === 1500;

/** A gate that a test opens. */
function gate() {
  let open: () => void = () => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { opened, open: () => open() };
}

describe('a sum that takes long', () => {
  it('is said to be on its way in time, then answered with its picture', async () => {
    const { opened, open: go } = gate();
    const bot = await started({
      over: hurried,
      answer: async function* () {
        await opened;
        yield await pictured();
      },
    });
    const interaction = requested();
    const first = await bot.ask(interaction);
    expect([typeOf(first), field(data(first), 'flags')]).toEqual([5, 64]);
    go();
    const edit = await bot.after(interaction, 'edit');
    expect(textOf(edit.body)).toContain(HEADLINE);
    expect(edit.files.size + (await lastEdit(bot, edit)).files.size).toBeGreaterThan(0);
  });

  it('shows the first answer, and puts the better one in its place', async () => {
    const { opened, open: go } = gate();
    const reply = await pictured();
    const early: Reply = {
      ...reply,
      headline: 'A first count.',
      blocks: reply.blocks.filter(({ kind }) => kind !== 'picture'),
    };
    const bot = await started({
      over: (milliseconds) => milliseconds === 700,
      answer: async function* () {
        yield early;
        await opened;
        yield reply;
      },
    });
    const interaction = requested();
    const first = await bot.ask(interaction);
    expect(textOf(data(first))).toMatch(/A first count\.[\s\S]*Still working on/);
    go();
    const edit = await bot.after(interaction, 'edit');
    expect(textOf(edit.body)).toContain(HEADLINE);
    expect(textOf(edit.body)).not.toContain('Still working on');
    expect(edit.files.size).toBe(1);
  });

  it('keeps the picture that is already there when only the words change', async () => {
    const { opened, open: go } = gate();
    const reply = await pictured();
    const bot = await started({
      over: (milliseconds) => milliseconds === 700,
      answer: async function* () {
        yield reply;
        await opened;
        yield { ...reply, headline: 'Proved.' };
      },
    });
    const interaction = requested();
    expect((await bot.ask(interaction)).files.size).toBe(1);
    go();
    const edit = await bot.after(interaction, 'edit');
    expect(edit.files.size).toBe(0);
    expect(list(field(edit.body, 'attachments'))).toEqual([{ id: expect.stringMatching(/^8\d+$/) }]);
    expect(JSON.stringify(edit.body)).toContain('attachment://plan-1.png');
  });
});

describe('a delivery twice over', () => {
  it('acts once', async () => {
    let answered = 0;
    const bot = await started({
      answer: async function* () {
        answered += 1;
        yield await replyTo('tape 1 + 2');
      },
    });
    const interaction = tape();
    bot.discord.dispatch(interaction, 3);
    await bot.discord.next(({ kind }) => kind === 'callback');
    await bot.ask(tape());
    expect(answered).toBe(2);
    expect(bot.discord.captured.filter(({ token }) => token === interaction.token)).toHaveLength(1);
  });

  it('to two processes, while one takes over from the other, changes what is kept once', async () => {
    const kept = keptInMemory();
    let answered = 0;
    const answers = async function* (): AsyncGenerator<Answer> {
      answered += 1;
      yield await replyTo('tape 1 + 2');
    };
    const [one, two] = [await started({ kept, answer: answers }), await started({ kept, answer: answers })];
    const interaction = slash('project new', { name: 'upstairs flat' });
    one.discord.dispatch(interaction);
    two.discord.dispatch(interaction);
    await Promise.race([one, two].map((bot) => bot.discord.next(({ token }) => token === interaction.token)));
    await one.ask(tape());
    await two.ask(tape());
    const all = [one, two].flatMap((bot) => bot.discord.captured.filter(({ token }) => token === interaction.token));
    expect([all.length, answered]).toEqual([1, 3]);
  });
});

describe('the connection', () => {
  it('is resumed, and what came meanwhile is answered', async () => {
    const bot = await started();
    await bot.ask(tape());
    bot.discord.drop(4000);
    const missed = tape();
    bot.discord.dispatch(missed);
    await bot.discord.connected(2);
    expect(bot.discord.connections).toEqual(['identify', 'resume']);
    const answered = await bot.discord.next(({ token }) => token === missed.token);
    expect(textOf(data(answered))).toContain('1\' 2"');
  });

  it('waits as long as Discord says, and then sends', async () => {
    const bot = await started({ over: hurried, answer: slowly });
    const interaction = tape();
    bot.discord.refuse({
      matching: ({ kind }) => kind === 'edit',
      status: 429,
      json: { message: 'You are being rate limited.', retry_after: 0.05, global: false },
      headers: { 'retry-after': '0.05', 'x-ratelimit-scope': 'user' },
    });
    await bot.ask(interaction);
    await bot.after(interaction, 'edit');
    expect(textOf((await bot.after(interaction, 'edit')).body)).toContain('1\' 2"');
    expect(bot.faults).toEqual([]);
  });
});

describe('an answer that cannot be delivered', () => {
  it('is kept, and brought with the next ask, to its asker only', async () => {
    const { opened: noted, open: note } = gate();
    const memory = keptInMemory();
    const set = async (key: string, value: unknown, milliseconds?: number): Promise<void> => {
      await memory.set(key, value, milliseconds);
      if (key.startsWith('missed:')) note();
    };
    const bot = await started({ kept: { ...memory, set } });
    const interaction = requested();
    bot.discord.refuse({
      matching: ({ kind }) => kind === 'callback',
      ...refusalOf(404, 10062, 'Unknown interaction'),
    });
    await bot.ask(interaction);
    await noted;
    const other = slash('tape', { sum: '1 + 1' }, { user: OTHER });
    await bot.ask(other);
    const next = tape();
    await bot.ask(next);
    const brought = await bot.after(next, 'follow-up');
    expect(textOf(brought.body)).toContain('didn’t reach you');
    expect(textOf(brought.body)).toContain(HEADLINE);
    const safety = buttonsOf(brought.body).find(({ label }) => label === 'Safety');
    expect(textOf(data(await bot.ask(press(safety?.id ?? ''))))).toContain('Safety');
    const after = tape();
    await bot.ask(after);
    await bot.ask(tape());
    const later = bot.discord.captured.filter(({ token, kind }) => kind === 'follow-up' && token !== next.token);
    expect(later).toEqual([]);
    expect(bot.faults).toEqual([]);
  });

  it('is kept when its token has run out', async () => {
    const bot = await started({ over: hurried, answer: slowly });
    bot.discord.refuse({ matching: ({ kind }) => kind === 'edit', ...refusalOf(401, 50027, 'Invalid Webhook Token') });
    await bot.ask(tape());
    await bot.discord.next(({ kind }) => kind === 'edit');
    const next = tape();
    await bot.ask(next);
    expect(textOf((await bot.after(next, 'follow-up')).body)).toContain('didn’t reach you');
  });

  it('comes as a message of its own when the one to edit was deleted', async () => {
    const bot = await started({ over: hurried, answer: slowly });
    const interaction = tape();
    bot.discord.refuse({ matching: ({ kind }) => kind === 'edit', ...refusalOf(404, 10008, 'Unknown Message') });
    await bot.ask(interaction);
    expect(textOf((await bot.after(interaction, 'follow-up')).body)).toContain('1\' 2"');
    expect(bot.faults).toEqual([]);
  });

  it('goes out in plainer form when Discord refuses it, and whoever runs the bot is told', async () => {
    const bot = await started();
    const interaction = requested();
    bot.discord.refuse({ matching: ({ kind }) => kind === 'callback', ...refusalOf(400, 50035, 'Invalid Form Body') });
    await bot.ask(interaction);
    const plain = await bot.discord.next(({ token, kind }) => token === interaction.token && kind === 'callback');
    expect(textOf(data(plain))).toContain(HEADLINE);
    expect(plain.files.get('answer.txt')?.toString()).toContain('Safety');
    expect(bot.faults).toHaveLength(1);
  });

  it('does not end the bot, whatever it is', async () => {
    const bot = await started();
    for (const [status, code] of [
      [403, 50001],
      [404, 10003],
      [400, 40060],
      [403, 0],
    ] as const) {
      bot.discord.refuse({ matching: ({ kind }) => kind === 'callback', ...refusalOf(status, code, 'no') });
      await bot.ask(tape());
    }
    expect(textOf(data(await bot.ask(slash('tape', { sum: '2 + 2' }, { user: OTHER }))))).toContain('4');
  });
});

describe('an answer meant for the channel', () => {
  it('is seen there, and its buttons are everybody’s', async () => {
    const reply = await replyTo('tape 1 ft + 2 in');
    const bot = await started({
      answer: async function* () {
        yield { ...reply, audience: 'channel' };
      },
    });
    const answered = await bot.ask(tape());
    expect(Number(field(data(answered), 'flags')) & 64).toBe(0);
    expect(buttonsOf(data(answered)).map(({ label }) => label)).toEqual(['Details', 'Sources']);
    // Kept at the latest once its asker is answered again.
    await bot.ask(tape());
    const pressed = await bot.ask(press(buttonsOf(data(answered))[1]?.id ?? '', { user: OTHER, shown: true }));
    expect(textOf(data(pressed))).toContain('Sources');
  });
});

describe('the client', () => {
  it('asks for no privileged intents, remembers nobody, and runs the shards it is told', async () => {
    const client = clientOf({ shards: { first: 2, last: 4, of: 8 } });
    const { intents, shards, shardCount, allowedMentions } = client.options;
    expect([intents.bitfield, shards, shardCount, allowedMentions]).toEqual([
      GatewayIntentBits.GuildMessages | GatewayIntentBits.DirectMessages,
      [2, 3, 4],
      8,
      { parse: [] },
    ]);
    await client.destroy();
    const bot = await started();
    await bot.ask(tape());
    expect(bot.discord.connections).toEqual(['identify']);
  });
});

describe('pictures', () => {
  it('too large for the place are left out, and said', async () => {
    const bot = await started({ answer: answeredPictured });
    const answered = await bot.ask(
      slash('floor planks', { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' }, { fileBytes: 1000 }),
    );
    expect(answered.files.size).toBe(0);
    expect(textOf(data(answered))).toMatch(/too large to send here/);
  });

  it('that cannot be drawn leave the figures standing', async () => {
    const bot = await started({
      answer: answeredPictured,
      toPng: async () => {
        throw new Error('no renderer');
      },
    });
    const answered = await bot.ask(requested());
    expect(textOf(data(answered))).toContain(HEADLINE);
    expect(textOf(data(answered))).toMatch(/couldn’t be drawn/);
    expect(bot.faults.map(String)).toEqual(['Error: no renderer']);
  });

  it('that take too long come after the figures, in their place', async () => {
    const { opened, open: go } = gate();
    const bot = await started({
      answer: answeredPictured,
      over: (milliseconds) => milliseconds === 3000,
      toPng: async (drawing) => {
        await opened;
        return toPng(drawing);
      },
    });
    const interaction = requested();
    const first = await bot.ask(interaction);
    expect(first.files.size).toBe(0);
    expect(textOf(data(first))).toContain(HEADLINE);
    expect(textOf(data(first))).toContain('Still working on');
    expect(textOf(data(first))).not.toContain('couldn’t be drawn');
    go();
    const whole = await bot.after(interaction, 'edit');
    expect(whole.files.size).toBe(1);
    expect(textOf(whole.body)).toContain(HEADLINE);
    expect(textOf(whole.body)).not.toContain('Still working on');
    expect(bot.faults).toEqual([]);
  });
});

describe('a fault in the pipeline', () => {
  it('is told under a short reference, and nothing of its cause', async () => {
    const bot = await started({
      answer: async function* () {
        yield { reference: 'abcd1234', outage: false };
      },
    });
    expect(textOf(data(await bot.ask(tape())))).toContain('abcd1234');
  });
});

/** The sum of a tape, once nobody waits any more for a first response. */
async function* slowly(): AsyncGenerator<Answer> {
  await new Promise((resolve) => setImmediate(resolve));
  await new Promise((resolve) => setImmediate(resolve));
  yield await replyTo('tape 1 ft + 2 in');
}

async function lastEdit(bot: Stage, first: Captured): Promise<Captured> {
  if (!textOf(first.body).includes('Still working on')) return first;
  return bot.discord.next(({ kind, token }) => kind === 'edit' && token === first.token);
}
