/** Messages people write to the bot: who is answered and who never is, edits, deletions, follow-ups, and what stays private. */

import { afterEach, describe, expect, it } from 'vitest';
import { demoPorts } from '../chat/demo-flat.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { APPLICATION, ASKER, choose, fill, menu, OTHER, pick, press, slash, snowflake } from './interactions.ts';
import { allIn, controlOf, field, labelsOf, textOf } from './json-field.ts';
import { type Captured, refusalOf } from './loopback-rest.ts';
import { type Stage, type Staged, stage } from './stage.ts';

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect(bot.discord.flaws).toEqual([]);
  }
});
async function started(staged: Staged = {}): Promise<Stage> {
  const bot = await stage({ kept: keptInMemory(), ...staged });
  open.push(bot);
  return bot;
}

interface Written {
  readonly author?: object;
  readonly guild?: boolean;
  readonly id?: string;
  readonly more?: object;
}

const person = (id: string, more: object = {}) => ({ id, username: 'p', discriminator: '0', avatar: null, ...more });

/** A message as the gateway brings it; in a server its words are there only where the bot is mentioned. */
function message(content: string, { author = person(ASKER), guild = true, id = snowflake(), more = {} }: Written = {}) {
  const mentioned = content.includes(`<@${APPLICATION}>`);
  return {
    id,
    channel_id: guild ? '500' : '501',
    author,
    content: guild && !mentioned ? '' : content,
    timestamp: '2026-11-01T00:00:00Z',
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    mentions: mentioned ? [person(APPLICATION, { bot: true })] : [],
    mention_roles: [],
    attachments: [],
    embeds: [],
    pinned: false,
    type: 0,
    ...(guild ? { guild_id: '600' } : {}),
    ...more,
  };
}

const to = (text: string): string => `<@${APPLICATION}> ${text}`;
const posts = (bot: Stage): readonly Captured[] => bot.discord.captured.filter(({ kind }) => kind === 'post');
const post = (bot: Stage): Promise<Captured> => bot.discord.next(({ kind }) => kind === 'post');
/** The bot's message is the last that the loopback gave an id. */
async function asked(bot: Stage, text: string, written: Written = {}) {
  const one = message(text, written);
  bot.discord.message('CREATE', one);
  return { one, reply: await post(bot) };
}

const BOXES = 'how many boxes for a 12 by 14 ft room, 6 x 48 in planks, 10 a box?';

describe('a message', () => {
  it('that mentions the bot is answered by a reply to it, which pings nobody', async () => {
    const bot = await started();
    const { one, reply } = await asked(bot, to(BOXES));
    expect(reply.path).toBe('/channels/500/messages');
    expect(textOf(reply.body)).toContain('Buy 10 boxes');
    expect(field(field(reply.body, 'message_reference'), 'message_id')).toBe(one.id);
    expect(field(reply.body, 'allowed_mentions')).toEqual({ parse: [] });
  });

  it('sent directly is answered without a mention, and what was missed comes with it', async () => {
    const bot = await started();
    const { reply } = await asked(bot, 'I smell gas in the hall', { guild: false });
    expect(textOf(reply.body)).toMatch(/This comes first[\s\S]*Leave now/);
    const bare = await asked(bot, '', { guild: false });
    expect(textOf(bare.reply.body)).toMatch(/Ask in your own words[\s\S]*mention me/);
  });

  it('of a bot, a webhook, the bot itself, to everyone, to a role or to nobody is left alone', async () => {
    const bot = await started();
    const left = [
      message(to(BOXES), { author: person(OTHER, { bot: true }) }),
      message(to(BOXES), { more: { webhook_id: '9' } }),
      message(to(BOXES), { author: person(APPLICATION, { bot: true }) }),
      message(`@everyone ${BOXES}`, { more: { mention_everyone: true } }),
      message(`<@&77> ${BOXES}`, { more: { mention_roles: ['77'] } }),
      message(BOXES),
      message(to(BOXES), { more: { type: 7 } }),
    ];
    for (const one of left) bot.discord.message('CREATE', one);
    const { one } = await asked(bot, to('tape 1 ft + 2 in'));
    expect(posts(bot).map(({ body }) => field(field(body, 'message_reference'), 'message_id'))).toEqual([one.id]);
  });

  it('that comes twice is answered once, by one of two processes', async () => {
    const kept = keptInMemory();
    const [first, second] = [await started({ kept }), await started({ kept })];
    const one = message(to(BOXES));
    for (const bot of [first, second]) for (const _ of [1, 2]) bot.discord.message('CREATE', one);
    await Promise.race([first, second].map(post));
    await Promise.all([first, second].map((bot) => bot.ask(slash('tape', { sum: '1 ft' }))));
    expect([...posts(first), ...posts(second)]).toHaveLength(1);
  });

  it('edited has its answer edited, deleted takes it along', async () => {
    const bot = await started();
    const { one } = await asked(bot, to('tape 1 ft + 2 in'));
    // Kept by the time its asker is answered again.
    await asked(bot, 'tape 1 + 1', { guild: false });
    const edited = { ...one, content: to('tape 1 ft + 3 in'), edited_timestamp: '2026-11-01T00:01:00Z' };
    bot.discord.message('UPDATE', edited);
    const change = await bot.discord.next(({ kind }) => kind === 'change');
    expect(textOf(change.body)).toContain(`1' 3"`);
    // A link that Discord opens is no edit.
    bot.discord.message('UPDATE', { ...edited, embeds: [{}] });
    bot.discord.message('UPDATE', { id: one.id, channel_id: '500' });
    await asked(bot, 'tape 1 + 1', { guild: false });
    expect(bot.discord.captured.filter(({ kind }) => kind === 'change')).toHaveLength(1);
    bot.discord.message('DELETE', { id: one.id, channel_id: '500', guild_id: '600' });
    const away = await bot.discord.next(({ kind }) => kind === 'take away');
    expect(away.path).toBe(change.path);
  });

  it('that replies goes on from what its asker said before', async () => {
    const bot = await started({ ports: await demoPorts({ platform: 'discord', id: OTHER }, () => {}) });
    await asked(bot, to(BOXES));
    const { reply } = await asked(bot, to('no, 12 x 16'), { more: { type: 19 } });
    expect(textOf(reply.body)).toMatch(/96 to lay/);
  });

  it('of somebody else that gives what was missing counts, and names both', async () => {
    const kept = keptInMemory();
    const bot = await started({ kept });
    const { one } = await asked(bot, to('how many boxes for a 12 by 14 ft room?'));
    await asked(bot, 'tape 1 + 1', { guild: false });
    const message_id = String(field(await kept.get(`heard:${one.id}`), 'reply'));
    const more = { type: 19, message_reference: { message_id, channel_id: '500' } };
    const { reply } = await asked(bot, to('with 6 x 48 in planks, 10 a box'), { author: person(OTHER), more });
    expect(textOf(reply.body)).toMatch(new RegExp(`^-# <@${ASKER}> asked; what <@${OTHER}> said counts too`));
    expect(textOf(reply.body)).toContain('Buy 10 boxes');
  });

  it('in a channel holds nothing of a project, and changes none', async () => {
    const bot = await started({ ports: await demoPorts({ platform: 'discord', id: ASKER }, () => {}) });
    const { reply } = await asked(bot, to('how many boxes do I need?'));
    expect(textOf(reply.body)).not.toMatch(/from your project|Upstairs/);
    const here = await asked(bot, 'how many boxes do I need?', { guild: false });
    expect(textOf(here.reply.body)).toMatch(/Buy \d+/);
  });

  it('of others in one channel is answered twelve times a minute, an emergency always', async () => {
    const bot = await started();
    for (let i = 0; i < 14; i++)
      bot.discord.message('CREATE', message(to(`tape ${i} ft + 2 in`), { author: person(`${200 + i}`) }));
    const { reply } = await asked(bot, to('I smell gas'), { author: person('999') });
    const all = [reply, ...(await Promise.all(Array.from({ length: 12 }, () => post(bot))))];
    expect(all.some(({ body }) => textOf(body).includes('This comes first'))).toBe(true);
    await asked(bot, 'tape 1 + 1', { guild: false });
    expect(posts(bot)).toHaveLength(14);
  });

  it('goes to the asker alone where the bot may not write', async () => {
    const bot = await started();
    bot.discord.refuse({
      matching: ({ kind, path }) => kind === 'post' && path.includes('/500/'),
      ...refusalOf(403, 50013, 'Missing Permissions'),
    });
    await asked(bot, to('tape 1 ft + 2 in'));
    const direct = await post(bot);
    expect([direct.path, textOf(direct.body)]).toEqual(['/channels/501/messages', expect.stringContaining(`1' 2"`)]);
    expect(bot.faults).toEqual([]);
  });
});

describe('the buttons under a reply', () => {
  it('open for whoever presses, alone; only the asker or a moderator takes it back', async () => {
    const bot = await started();
    const { reply } = await asked(bot, to(BOXES));
    await asked(bot, 'tape 1 + 1', { guild: false });
    const safety = await bot.ask(press(controlOf(reply.body, 'Safety').id, { user: OTHER, shown: true }));
    expect([field(safety.body, 'type'), Number(field(field(safety.body, 'data'), 'flags')) & 64]).toEqual([4, 64]);
    const { id, value = '' } = controlOf(reply.body, 'Take this answer back');
    const other = await bot.ask(pick(id, [value], { user: OTHER, shown: true }));
    expect(textOf(field(other.body, 'data'))).toMatch(/Only the person who asked/);
    const asker = pick(id, [value], { shown: true });
    expect(field((await bot.ask(asker)).body, 'type')).toBe(6);
    const away = await bot.discord.next(({ kind }) => kind === 'take away');
    expect(away.token).toBe(asker.token);
    expect(labelsOf(reply.body)).not.toContain('Show to channel');
    expect(allIn(reply.body).length).toBeLessThan(40);
  });
});

describe('somebody else’s question', () => {
  const QUESTION = 'My bedroom is 12 by 14 ft, the planks are 6 x 48 in and there are 10 per carton';

  /** OTHER asks in the channel, ASKER has it answered and shows the answer. */
  async function shown(bot: Stage, author = OTHER): Promise<Captured> {
    const own = await bot.ask(menu(QUESTION, {}, author));
    await bot.ask(slash('tape', { sum: '1 ft' }));
    const show = choose(controlOf(field(own.body, 'data'), 'Show to channel'));
    await bot.ask(show);
    return bot.after(show, 'follow-up');
  }

  it('asks its author for all to see whether the plank is theirs, and nobody else can say so', async () => {
    const bot = await started();
    const { body } = await shown(bot);
    expect(textOf(body)).toMatch(new RegExp(`^-# <@${OTHER}> asked: .*\n-# Is this your plank, <@${OTHER}>\\?`));
    const yes = controlOf(body, 'Yes, that’s my plank');
    const presser = await bot.ask(choose(yes, { shown: true }));
    expect([field(presser.body, 'type'), textOf(field(presser.body, 'data'))]).toEqual([
      4,
      expect.stringContaining('Only the person who asked'),
    ]);
    const author = await bot.ask(choose(yes, { user: OTHER, shown: true }));
    const said = field(author.body, 'data');
    expect(field(author.body, 'type')).toBe(7);
    expect(textOf(said)).toMatch(/yes, that’s my plank\.[\s\S]*Buy 10 cartons/);
    expect(labelsOf(said)).not.toContain('Yes, that’s my plank');
  });

  it('is answered anew in its place when its author puts in another plank, and for others alone', async () => {
    const bot = await started();
    const { body } = await shown(bot);
    const own = controlOf(body, 'Put in my plank');
    const fillIn = async (user: string) => {
      const where = { user, shown: true, message: snowflake() };
      const form = field((await bot.ask(choose(own, where))).body, 'data');
      return bot.ask(fill(String(field(form, 'custom_id')), { plank: '7 x 48 in, 8 per carton' }, where));
    };
    const author = await fillIn(OTHER);
    expect(field(author.body, 'type')).toBe(7);
    expect(textOf(field(author.body, 'data'))).toMatch(
      new RegExp(`^-# Filled in by <@${OTHER}>[\\s\\S]*Buy \\d+ cartons`),
    );
    expect(labelsOf(field(author.body, 'data'))).not.toContain('Show to channel');
    const other = await fillIn(ASKER);
    expect([field(other.body, 'type'), Number(field(field(other.body, 'data'), 'flags')) & 64]).toEqual([4, 64]);
  });

  it('is not asked about where the question was one’s own', async () => {
    const { body } = await shown(await started(), ASKER);
    expect(textOf(body)).toMatch(new RegExp(`^-# <@${ASKER}> asked`));
    expect(labelsOf(body)).not.toContain('Yes, that’s my plank');
  });

  it.each([
    ['its author', { user: OTHER }],
    ['who had it answered', {}],
    ['a moderator', { user: '100000000000000077', permissions: String(1n << 13n) }],
  ] as const)('has its answer taken back by %s', async (_who, where) => {
    const bot = await started();
    const { body } = await shown(bot);
    const pressed = choose(controlOf(body, 'Take this answer back'), { ...where, shown: true });
    expect(field((await bot.ask(pressed)).body, 'type')).toBe(6);
    expect((await bot.discord.next(({ kind }) => kind === 'take away')).token).toBe(pressed.token);
  });

  it('waits where a channel has had twelve answers within a minute', async () => {
    const bot = await started();
    const own = field((await bot.ask(menu(QUESTION))).body, 'data');
    for (let i = 0; i < 12; i++) await asked(bot, to(`tape ${i} ft + 2 in`), { author: person(`${200 + i}`) });
    const show = choose(controlOf(own, 'Show to channel'));
    const later = field((await bot.ask(show)).body, 'data');
    expect(textOf(later)).toContain('Try again in a minute');
    expect(labelsOf(later)).toContain('Show to channel');
  });
});
