/** Interactions by HTTP through the one server: signed, recent, once, and answered by any of several processes. */

import { generateKeyPairSync, sign } from 'node:crypto';
import type { APIInteraction } from 'discord.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EVENTS_PATH, INTERACTIONS_PATH } from '../../src/platforms/discord/start.ts';
import { type Listening, listen, routed } from '../../src/server/http.ts';
import { Outage } from '../../src/storage/types.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { pick, slash, typing } from './interactions.ts';
import { controlOf, field, labelsOf, textOf } from './json-field.ts';
import { type Stage, stage } from './stage.ts';

const { publicKey, privateKey } = generateKeyPairSync('ed25519');
const KEY = Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex');
const stranger = generateKeyPairSync('ed25519');

/** Two processes behind one balancer, with one store between them. */
const bots: Stage[] = [];
const servers: Listening[] = [];
const faults: unknown[] = [];

beforeAll(async () => {
  const kept = keptInMemory();
  for (let process = 0; process < 2; process++) {
    const bot = await stage({ kept, settings: { publicKey: KEY }, strangers: true });
    bots.push(bot);
    const app = routed([...bot.running.routes], (cause) => faults.push(cause));
    servers.push(await listen(app, { host: '127.0.0.1', port: 0 }));
  }
});
afterAll(async () => {
  await Promise.all(servers.map((server) => server.close()));
  for (const bot of bots) {
    await bot.close();
    expect([bot.discord.flaws, bot.faults]).toEqual([[], []]);
  }
  expect(faults).toEqual([]);
});

interface Sent {
  readonly seconds?: number;
  readonly signed?: (timestamp: string, body: string) => string;
  readonly server?: number;
  readonly body?: string;
  readonly path?: string;
}

const now = (): number => Math.floor(Date.now() / 1000);
const signature = (timestamp: string, body: string): string =>
  sign(null, Buffer.from(timestamp + body), privateKey).toString('hex');

async function send(
  interaction: unknown,
  { seconds = now(), signed = signature, server = 0, body, path = INTERACTIONS_PATH }: Sent = {},
) {
  const text = body ?? JSON.stringify(interaction);
  const headers = { 'x-signature-ed25519': signed(String(seconds), text), 'x-signature-timestamp': String(seconds) };
  return fetch(`http://127.0.0.1:${servers[server]?.port}${path}`, {
    method: 'POST',
    headers,
    body: text,
  });
}

function bot(at = 0): Stage {
  const found = bots[at];
  if (!found) throw new Error(`no process ${at}`);
  return found;
}

const tape = (): APIInteraction => slash('tape', { sum: '1 ft + 2 in' });
const responses = (interaction: APIInteraction) =>
  bots.flatMap(({ discord }) => discord.captured.filter(({ token }) => token === interaction.token));

describe('an interaction by HTTP while the store is down', () => {
  it.each([
    ['does not answer', () => Promise.reject(new Outage('down'))],
    ['is broken', () => Promise.reject(new Error('broken'))],
  ])('%s: it is answered all the same', async (_name, claim) => {
    const alone = await stage({ kept: { ...keptInMemory(), claim }, settings: { publicKey: KEY } });
    const server = await listen(
      routed([...alone.running.routes], (cause) => faults.push(cause)),
      {
        host: '127.0.0.1',
        port: 0,
      },
    );
    try {
      const interaction = tape();
      alone.discord.know(interaction);
      const timestamp = String(now());
      const body = JSON.stringify(interaction);
      const headers = { 'x-signature-ed25519': signature(timestamp, body), 'x-signature-timestamp': timestamp };
      const taken = await fetch(`http://127.0.0.1:${server.port}${INTERACTIONS_PATH}`, {
        method: 'POST',
        headers,
        body,
      });
      expect(taken.status).toBe(202);
      const sent = await alone.discord.next(({ token }) => token === interaction.token);
      expect(textOf(field(sent.body, 'data'))).toContain('1\' 2"');
    } finally {
      await server.close();
      await alone.close();
    }
    expect(alone.discord.flaws).toEqual([]);
  });
});

describe('an interaction by HTTP', () => {
  it('is a ping to be ponged', async () => {
    const answer = await send({ type: 1, id: '1' });
    expect([answer.status, await answer.json()]).toEqual([200, { type: 1 }]);
  });

  it('is taken at once and answered by the callback address, pictures too', async () => {
    const interaction = slash('floor planks', { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' });
    bot().discord.know(interaction);
    const answer = await send(interaction);
    expect([answer.status, await answer.text()]).toEqual([202, '']);
    const sent = await bot().discord.next(({ token }) => token === interaction.token);
    const message = field(sent.body, 'data');
    expect(textOf(message)).toContain('Buy 10 cartons');
    const { id, value = '' } = controlOf(message, 'Plan');
    const plan = pick(id, [value]);
    bot().discord.know(plan);
    await send(plan);
    const opened = await bot().discord.next(({ token, kind }) => token === plan.token && kind === 'edit');
    expect(opened.files.size).toBe(1);
  });

  it('may be autocomplete', async () => {
    const interaction = typing('floor planks', 'pattern', 'h');
    bot(1).discord.know(interaction);
    await send(interaction, { server: 1 });
    const sent = await bot(1).discord.next(({ token }) => token === interaction.token);
    expect(JSON.stringify(sent.body)).toContain('half');
  });

  it('acts once, though it is delivered to each process and again', async () => {
    const interaction = tape();
    for (const one of bots) one.discord.know(interaction);
    const seconds = now();
    const answers = await Promise.all([0, 1, 0, 1].map((server) => send(interaction, { server, seconds })));
    expect(answers.map(({ status }) => status)).toEqual([202, 202, 202, 202]);
    const after = tape();
    for (const [at, one] of bots.entries()) {
      const last = at === 0 ? after : tape();
      one.discord.know(last);
      await send(last, { server: at });
      await one.discord.next(({ token }) => token === last.token);
    }
    expect(responses(interaction)).toHaveLength(1);
  });
});

describe('what is not Discord’s', () => {
  const evil = tape();
  const body = JSON.stringify(evil);
  const forged: readonly (readonly [string, Sent])[] = [
    [
      'signed by another',
      { signed: (time, text) => sign(null, Buffer.from(time + text), stranger.privateKey).toString('hex') },
    ],
    ['not signed', { signed: () => '' }],
    ['signed with nonsense', { signed: () => 'zz'.repeat(64) }],
    ['signed too short', { signed: (time, text) => signature(time, text).slice(2) }],
    ['signed for another body', { signed: (time) => signature(time, '{}') }],
    ['signed for another time', { signed: (time, text) => signature(String(Number(time) - 1), text) }],
    ['changed by a byte', { body: `${body} `, signed: (time) => signature(time, body) }],
    ['six minutes old', { seconds: now() - 360 }],
    ['six minutes early', { seconds: now() + 360 }],
    ['without a time', { seconds: Number.NaN }],
  ];

  it.each(forged)('is refused: %s', async (_what, sent) => {
    for (const one of bots) one.discord.know(evil);
    const answer = await send(evil, sent);
    expect(answer.status).toBe(401);
    expect(await answer.text()).not.toContain('key');
    // Another is answered meanwhile, and this one is not.
    const next = tape();
    bot().discord.know(next);
    await send(next);
    await bot().discord.next(({ token }) => token === next.token);
    expect(responses(evil)).toEqual([]);
  });

  it.each(['', 'no JSON', '[]', '"text"', 'null', '7'])('is no interaction: %j', async (text) => {
    expect((await send(undefined, { body: text })).status).toBe(400);
  });

  it('has no other way in', async () => {
    const at = `http://127.0.0.1:${servers[0]?.port}`;
    expect((await fetch(at + INTERACTIONS_PATH)).status).toBe(404);
    expect((await fetch(`${at}${INTERACTIONS_PATH}/x`, { method: 'POST' })).status).toBe(404);
  });
});

describe('an interaction signed rightly once', () => {
  it('does not act again when its copy is sent later within the window', async () => {
    const interaction = tape();
    for (const one of bots) one.discord.know(interaction);
    const seconds = now() - 200;
    await send(interaction, { seconds });
    await bot().discord.next(({ token }) => token === interaction.token);
    expect((await send(interaction, { seconds, server: 1 })).status).toBe(202);
    const next = tape();
    bot(1).discord.know(next);
    await send(next, { server: 1 });
    await bot(1).discord.next(({ token }) => token === next.token);
    expect(responses(interaction)).toHaveLength(1);
  });
});

describe('the event of an installation', () => {
  const event = (type: string, user: unknown) => ({
    version: 1,
    application_id: '900000000000000001',
    type: 1,
    event: { type, timestamp: '2026-11-01T00:00:00Z', data: { integration_type: 0, user, scopes: ['bot'] } },
  });
  const installer = { id: '100000000000000031', username: 'p', discriminator: '0', avatar: null, global_name: null };
  const posts = () => bots.flatMap(({ discord }) => discord.captured.filter(({ kind }) => kind === 'post'));

  it('greets who installed it, once, with three buttons, in their own messages', async () => {
    const authorized = event('APPLICATION_AUTHORIZED', installer);
    expect((await send({ version: 1, application_id: '1', type: 0 }, { path: EVENTS_PATH })).status).toBe(204);
    const taken = await send(authorized, { path: EVENTS_PATH });
    expect([taken.status, await taken.text()]).toEqual([204, '']);
    const greeting = await bot().discord.next(({ kind }) => kind === 'post');
    expect(greeting.path).toBe('/channels/501/messages');
    expect(labelsOf(greeting.body)).toEqual(['How many boxes?', 'Start a project', 'What can I ask?']);
    // Help does not say that it hears messages: by HTTP there are none.
    expect(textOf(greeting.body)).not.toContain('mention me');
    await send(authorized, { server: 1, path: EVENTS_PATH });
    const first = slash('tape', { sum: '1 ft + 1 ft' }, { user: installer.id });
    await send(first);
    const next = slash('tape', { sum: '1 ft + 1 ft' }, { user: installer.id });
    await send(next);
    await bot().discord.next(({ token }) => token === next.token);
    expect(posts()).toHaveLength(1);
    expect(responses(first)).toHaveLength(1);
  });

  it('that is forged, of another kind or without a person greets nobody', async () => {
    const authorized = event('APPLICATION_AUTHORIZED', { ...installer, id: '100000000000000032' });
    const before = posts().length;
    expect((await send(authorized, { path: EVENTS_PATH, signed: () => 'ab'.repeat(64) })).status).toBe(401);
    expect((await send(event('ENTITLEMENT_CREATE', installer), { path: EVENTS_PATH })).status).toBe(204);
    for (const user of [undefined, {}, { id: 'x' }])
      expect((await send(event('APPLICATION_AUTHORIZED', user), { path: EVENTS_PATH })).status).toBe(204);
    await send(tape());
    expect(posts()).toHaveLength(before);
  });
});
