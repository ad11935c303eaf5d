/** The platform contract, for every platform that there is and one of paper that only tests have. */

import { PassThrough, Writable } from 'node:stream';
import { expect, it } from 'vitest';
import type { DiscordMessage } from '../../src/platforms/discord/page.ts';
import type { Platform } from '../../src/platforms/platform.ts';
import { readConfig } from '../../src/server/config.ts';
import { type Listening, listen, routed } from '../../src/server/http.ts';
import { platforms } from '../../src/server/platforms.ts';
import type { PlatformName } from '../../src/text/answer-text.ts';
import { SLACK } from '../../src/text/chat-text.ts';
import { press, slash } from '../discord/interactions.ts';
import { discordLoopback } from '../discord/loopback.ts';
import { refusalOf } from '../discord/loopback-rest.ts';
import { discordWords } from '../discord/words.ts';
import { loopback } from '../slack/loopback.ts';
import { pressedAs } from '../slack/running.ts';
import { signature } from '../slack/signature.ts';
import { slackWords } from '../slack/words.ts';
import { pageWords } from '../web/page-words.ts';
import { PaperOffice, paperPlatform } from './paper-platform.ts';
import { type PlatformUnderTest, platformContract, type Visitor } from './platform-contract.ts';

function named(name: PlatformName): Platform {
  const found = platforms.find((platform) => platform.name === name);
  if (!found) throw new Error(`no platform ${name}`);
  return found;
}

async function visitDiscord(): Promise<Visitor> {
  const discord = await discordLoopback();
  const { discord: config } = readConfig({ FLOORHAND_DISCORD_TOKEN: 'secret-token' });
  const taken: unknown[] = [];
  discord.onRequest(({ body }, status) => {
    if (status < 400) taken.push(body);
  });
  return {
    config: { discord: { ...config, api: discord.api } },
    ready: () => discord.connected(1),
    request: async (text) => discord.dispatch(slash('tape', { sum: text })),
    seen: () => JSON.stringify(taken),
    press: async (label) => {
      const button = taken.flatMap(buttonIds).findLast((one) => one.label === label);
      if (!button) throw new Error(`no button “${label}”`);
      discord.dispatch(press(button.custom_id));
    },
    lose: (lost) => {
      if (lost) {
        discord.refuse({
          matching: ({ kind }) => kind === 'callback',
          ...refusalOf(404, 10062, 'Unknown interaction'),
        });
      }
    },
    close: () => discord.close(),
  };
}

/** Every button in what was sent. */
function buttonIds(value: unknown): readonly { readonly label: string; readonly custom_id: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'custom_id' in value && 'label' in value ? [value as { label: string; custom_id: string }] : [];
  return [...own, ...Object.values(value).flatMap(buttonIds)];
}

const SECRET = 'a signing secret';

async function visitSlack(): Promise<Visitor> {
  const slack = await loopback();
  const { slack: config } = readConfig({
    FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-one',
    FLOORHAND_SLACK_SIGNING_SECRET: SECRET,
  });
  let server: Listening | undefined;
  let count = 0;
  const post = async (fields: Readonly<Record<string, string>>): Promise<void> => {
    const body = new URLSearchParams(fields).toString();
    const headers = {
      'content-type': 'application/x-www-form-urlencoded',
      ...signature(body, SECRET, Math.floor(Date.now() / 1000)),
    };
    await (await fetch(`http://127.0.0.1:${server?.port}/slack/events`, { method: 'POST', body, headers })).text();
  };
  const posted = () => slack.calls.filter(({ method }) => method.startsWith('chat.')).map(({ args }) => args);
  let lost = false;
  const arrived: unknown[] = [];
  slack.respond((one) => {
    if (lost) return { status: 500, text: 'lost' };
    arrived.push(one.body);
    return undefined;
  });
  return {
    config: { slack: { ...config, api: slack.api } },
    meanwhile: SLACK.working,
    ready: async ({ routes }) => {
      server = await listen(
        routed(routes, () => {}),
        { host: '127.0.0.1', port: 0 },
      );
    },
    request: (text) =>
      post({
        command: '/floorhand',
        text,
        user_id: 'U1',
        team_id: 'T1',
        channel_id: 'C1',
        trigger_id: `TR${++count}`,
        response_url: slack.responseUrl(),
      }),
    seen: () => JSON.stringify([...arrived, ...posted()]),
    press: (label) => {
      const [action] = arrived.flatMap((message) => pressedAs(message, label) ?? []).slice(-1);
      const payload = {
        type: 'block_actions',
        trigger_id: `TR${++count}`,
        team: { id: 'T1' },
        user: { id: 'U1' },
        channel: { id: 'C1' },
        container: { type: 'message', message_ts: '1.1', channel_id: 'C1', is_ephemeral: true },
        response_url: slack.responseUrl(),
        actions: [action],
      };
      return post({ payload: JSON.stringify(payload) });
    },
    lose: (now) => {
      lost = now;
    },
    close: async () => {
      await server?.close();
      await slack.close();
    },
  };
}

async function visitTerminal(): Promise<Visitor> {
  let shown = '';
  const input = new PassThrough();
  const output = new Writable({
    write(chunk: Buffer, _encoding, done) {
      shown += chunk.toString();
      done();
    },
  });
  return {
    console: { input, output, words: [] },
    request: async (text) => void input.end(`${text}\n`),
    seen: () => shown,
    close: async () => void input.end(),
  };
}

async function visitPaper(office: PaperOffice): Promise<Visitor> {
  const request = (text: string): Promise<void> => office.onSlip({ by: 'ann', text });
  return {
    // Nobody waits at the box for an answer.
    request: async (text) => void request(text),
    seen: () => office.sheets.map(({ text }) => text).join('\n'),
    press: async (label) => {
      const sheet = office.sheets.findLast(({ buttons }) => buttons.includes(label));
      if (!sheet) throw new Error(`no button “${label}”`);
      await office.onSlip({ by: 'ann', pressed: { id: sheet.id, button: sheet.buttons.indexOf(label), label } });
    },
    lose: (lost) => {
      office.lost = lost;
    },
    close: async () => {
      office.sheets.length = 0;
    },
  };
}

const office = new PaperOffice();
const paper = paperPlatform(office);
const hash = 'a1'.repeat(32);

const all: readonly PlatformUnderTest[] = [
  {
    platform: named('discord'),
    asker: { platform: 'discord', id: '100000000000000001' },
    words: (messages) => discordWords(messages as readonly DiscordMessage[]),
    visit: visitDiscord,
  },
  {
    platform: named('slack'),
    asker: { platform: 'slack', workspace: 'T1', id: 'U1' },
    words: slackWords,
    visit: visitSlack,
  },
  { platform: named('web'), asker: { platform: 'web', id: hash }, words: (messages) => pageWords(messages.join('')) },
  {
    platform: named('terminal'),
    asker: { platform: 'terminal', id: 'local' },
    words: (messages) => messages.join('\n'),
    visit: visitTerminal,
  },
  {
    platform: paper,
    asker: { platform: paper.name, id: 'ann' },
    words: (messages) => messages.join('\n'),
    visit: () => visitPaper(office),
  },
];

it('is run for every platform in the list', () => {
  expect(all.map(({ platform }) => platform.name)).toEqual(expect.arrayContaining(platforms.map(({ name }) => name)));
});

for (const under of all) platformContract(under, all);
