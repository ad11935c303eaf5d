/** What Discord refuses, by its documented errors: on every way out the asker still gets the answer, and no fault word is ever public. */

import { RESTJSONErrorCodes as Codes } from 'discord.js';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Reply } from '../../src/reply/reply.ts';
import { answerTo, replyTo } from '../chat/asked.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { APPLICATION, ASKER, choose, fill, menu, pick, press, slash, snowflake } from './interactions.ts';
import { controlOf, field, labelsOf, textOf } from './json-field.ts';
import { type Captured, refusalOf } from './loopback-rest.ts';
import { type Stage, stage } from './stage.ts';

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect(bot.discord.flaws).toEqual([]);
  }
});

interface Watched extends Stage {
  /** The first payload from now on that matches and was taken. */
  took(matching: (one: Captured) => boolean): Promise<Captured>;
  /** Resolves once an answer was noted as missed. */
  readonly missed: Promise<void>;
}

// What is answered is the same in every test, and worked out once.
let planks: Reply;
let tape: Reply;
beforeAll(async () => {
  planks = await replyTo(`planks room: ${GIVEN.room}, plank: ${GIVEN.plank}`);
  tape = await replyTo('tape 1 ft + 2 in');
});

async function started(): Promise<Watched> {
  const memory = keptInMemory();
  let note: () => void = () => {};
  const missed = new Promise<void>((resolve) => {
    note = resolve;
  });
  const set = async (key: string, value: unknown, milliseconds?: number): Promise<void> => {
    await memory.set(key, value, milliseconds);
    if (key.startsWith('missed:')) note();
  };
  const bot = await stage({
    kept: { ...memory, set },
    // How it is heard and worked out is tested elsewhere: here it counts where the answer goes.
    answer: async function* ({ text }) {
      yield text.startsWith('tape') ? tape : planks;
    },
  });
  open.push(bot);
  const taken: Captured[] = [];
  const waiting: (() => void)[] = [];
  bot.discord.onRequest((one, status) => {
    if (status < 400) taken.push(one);
    for (const wake of waiting.splice(0)) wake();
  });
  const took = async (matching: (one: Captured) => boolean): Promise<Captured> => {
    for (;;) {
      const found = taken.find(matching);
      if (found) return found;
      await new Promise<void>((resolve) => waiting.push(resolve));
    }
  };
  return { ...bot, missed, took };
}

const GIVEN = { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' };
const SENTENCE = 'My bedroom is 12 by 14 ft, the planks are 6 x 48 in and there are 10 per carton';
const data = (one: Captured): unknown => field(one.body, 'data') ?? one.body;
const isPrivate = (one: Captured): boolean =>
  one.path.startsWith('/channels/501/') ||
  one.kind === 'edit' ||
  field(one.body, 'type') === 7 ||
  (Number(field(data(one), 'flags')) & 64) !== 0;

/**
 * Discord's documented errors. `gone`: nothing more is taken by this interaction, so its answer comes with the next one; any
 * other leaves a way open.
 */
const REFUSALS: readonly (readonly [what: string, status: number, code: number, gone?: true])[] = [
  ['request entity too large', 413, Codes.RequestEntityTooLarge],
  ['invalid form body', 400, Codes.InvalidFormBodyOrContentType],
  ['missing permissions', 403, Codes.MissingPermissions],
  ['missing access', 403, Codes.MissingAccess],
  ['blocked by automatic moderation', 400, Codes.MessageWasBlockedByAutomaticModeration],
  ['cannot send messages to this user', 403, Codes.CannotSendMessagesToThisUser],
  ['archived thread', 400, Codes.InvalidActionOnArchivedThread],
  ['unknown message', 404, Codes.UnknownMessage],
  ['unknown channel', 404, Codes.UnknownChannel],
  ['server error', 500, 0],
  ['unknown interaction', 404, Codes.UnknownInteraction, true],
  ['invalid webhook token', 401, Codes.InvalidWebhookToken, true],
];

/** How an answer goes out: what sets it off, and whose payload is refused. */
interface Way {
  readonly name: string;
  readonly refused: (one: Captured, token: string) => boolean;
  /** Sets it off and gives the token of its interaction; none for a message. */
  begin(bot: Watched): Promise<{ readonly token: string; go(): void }>;
}

const SHOW = 'Show to channel';
const HEADLINE = 'Buy 10 cartons';
const first = (one: Captured, token: string): boolean => one.kind === 'callback' && one.token === token;

async function answered(bot: Watched) {
  const one = await bot.ask(slash('floor planks', GIVEN));
  // Kept by the time its asker is answered again.
  await bot.ask(slash('tape', { sum: '1 ft' }));
  return data(one);
}

const interactionWay = (
  name: string,
  refused: Way['refused'],
  interact: (bot: Watched) => Promise<ReturnType<typeof slash>>,
): Way => ({
  name,
  refused,
  async begin(bot) {
    const interaction = await interact(bot);
    return { token: interaction.token, go: () => bot.discord.dispatch(interaction) };
  },
});

const WAYS: readonly Way[] = [
  interactionWay('an answer', first, async () => slash('floor planks', GIVEN)),
  interactionWay('a press', first, async (bot) =>
    choose(controlOf(await answered(bot), 'Turn the rows'), { message: snowflake() }),
  ),
  interactionWay(
    SHOW,
    ({ kind, token, body }, wanted) =>
      kind === 'follow-up' && token === wanted && (Number(field(body, 'flags')) & 64) === 0,
    async (bot) => choose(controlOf(await answered(bot), SHOW), { message: snowflake() }),
  ),
  interactionWay('the message menu', first, async () => menu(SENTENCE)),
  interactionWay('a form', first, async () => fill('form::floor planks', GIVEN)),
  {
    name: 'a mention',
    refused: ({ kind, path }) => kind === 'post' && path.startsWith('/channels/500/'),
    begin: async (bot) => ({ token: '', go: () => bot.discord.message('CREATE', mention(SENTENCE)) }),
  },
];

function mention(text: string) {
  const person = (id: string, more: object = {}) => ({ id, username: 'p', discriminator: '0', avatar: null, ...more });
  return {
    id: snowflake(),
    channel_id: '500',
    guild_id: '600',
    author: person(ASKER),
    content: `<@${APPLICATION}> ${text}`,
    timestamp: '2026-11-01T00:00:00Z',
    edited_timestamp: null,
    mentions: [person(APPLICATION, { bot: true })],
    type: 0,
  };
}

const FAULT = /went wrong|didn’t take|didn’t let me|reference|restarting/i;

/** Nothing that others read speaks of a fault. */
function publicFaults(bot: Watched): readonly string[] {
  return bot.discord.captured
    .filter((one) => ['callback', 'follow-up', 'post', 'change'].includes(one.kind) && !isPrivate(one))
    .map((one) => textOf(data(one)))
    .filter((text) => FAULT.test(text));
}

/** What was sent to the asker; if need be it comes with the answer to what they ask next. */
async function reached(bot: Watched, token: string, gone: boolean): Promise<string> {
  if (!gone) return textOf(data(await bot.took((one) => (one.token === token || one.kind === 'post') && holds(one))));
  await bot.missed;
  await bot.ask(slash('tape', { sum: '2 ft' }));
  return textOf((await bot.took((one) => one.kind === 'follow-up' && one.token !== token && holds(one))).body);
}

const holds = (one: Captured): boolean => textOf(data(one)).includes(HEADLINE);

const table = WAYS.flatMap((way) =>
  REFUSALS.map(([what, status, code, gone = false]) => ({ way, what, status, code, gone })),
);

describe.each(WAYS.map(({ name }) => [name]))('%s that Discord refuses', (name) => {
  const own = table.filter(({ way }) => way.name === name);

  it.each(own.map((one) => [one.what, one] as const))(
    'once for %s reaches the asker',
    async (_what, { way, status, code, gone }) => {
      const bot = await started();
      const { token, go } = await way.begin(bot);
      // The client tries again by itself after errors of the server.
      const times = status >= 500 ? 4 : 1;
      for (let i = 0; i < times; i++)
        bot.discord.refuse({ matching: (one) => way.refused(one, token), ...refusalOf(status, code, 'no') });
      go();
      // Whoever shows an answer has it before them.
      expect(await reached(bot, token, gone && name !== SHOW)).toContain(HEADLINE);
      expect(publicFaults(bot)).toEqual([]);
    },
  );

  it.each(own.filter(({ gone }) => !gone).map((one) => [one.what, one] as const))(
    'whatever its form for %s reaches the asker by another way',
    async (_what, { way, status, code }) => {
      const bot = await started();
      const { token, go } = await way.begin(bot);
      bot.discord.refuse({
        matching: (one) => way.refused(one, token),
        ...refusalOf(status, code, 'no'),
        lasting: true,
      });
      go();
      expect(await reached(bot, token, false)).toContain(HEADLINE);
      if (name === SHOW) {
        const told = await bot.took((one) => one.token === token && textOf(data(one)).includes('didn’t let me post'));
        expect(labelsOf(data(told))).toContain(SHOW);
      }
      expect(publicFaults(bot)).toEqual([]);
    },
  );
});

describe('where nothing is taken at all', () => {
  it('a word says so, and the answer comes with the next one', async () => {
    const bot = await started();
    const interaction = slash('floor planks', GIVEN);
    bot.discord.refuse({
      matching: (one) => holds(one) && (one.token === interaction.token || one.kind === 'post'),
      ...refusalOf(403, Codes.CannotSendMessagesToThisUser, 'no'),
      lasting: true,
    });
    bot.discord.dispatch(interaction);
    const word = await bot.took(({ token }) => token === interaction.token);
    expect([isPrivate(word), textOf(data(word))]).toEqual([true, expect.stringContaining('comes with your next one')]);
    expect(await reached(bot, interaction.token, true)).toContain('didn’t reach you');
  });

  it('a form that does not open says how to ask instead', async () => {
    const bot = await started();
    const { id } = controlOf(await answered(bot), 'Change a detail');
    const chosen = pick(id, ['room'], { message: snowflake() });
    bot.discord.refuse({
      matching: ({ token, body }) => token === chosen.token && field(body, 'type') === 9,
      ...refusalOf(400, Codes.InvalidFormBodyOrContentType, 'no'),
    });
    bot.discord.dispatch(chosen);
    const word = await bot.took((one) => one.token === chosen.token);
    expect([isPrivate(word), textOf(data(word))]).toEqual([true, expect.stringMatching(/didn’t open.*\/ask/)]);
  });
});

describe('a fault of ours', () => {
  it('is told to the asker alone, under a mention and under a question that others see', async () => {
    const bot = await stage({
      answer: async function* () {
        yield { reference: 'abcd1234', outage: false };
      },
    });
    open.push(bot);
    bot.discord.message('CREATE', mention(SENTENCE));
    const told = await bot.discord.next(({ kind }) => kind === 'post');
    expect([told.path, textOf(told.body)]).toEqual(['/channels/501/messages', expect.stringContaining('abcd1234')]);
  });

  it('leaves a question that others see as it stands', async () => {
    let broken = false;
    const bot = await stage({
      kept: keptInMemory(),
      answer: async function* ({ text }) {
        yield broken ? { reference: 'abcd1234', outage: false } : await answerTo(text);
      },
    });
    open.push(bot);
    bot.discord.message('CREATE', mention(`planks room: ${GIVEN.room}`));
    const asked = await bot.discord.next(({ kind }) => kind === 'post');
    broken = true;
    const pressed = press(controlOf(asked.body, 'Try with an example plank').id, { message: snowflake(), shown: true });
    const told = await bot.ask(pressed);
    expect([field(told.body, 'type'), isPrivate(told)]).toEqual([4, true]);
    expect(textOf(data(told))).toContain('abcd1234');
  });
});
