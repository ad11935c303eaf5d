/** Requests that come over HTTP: signed ones act once, forged, old, future and repeated ones not at all. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { Outage } from '../../src/storage/types.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { NOW, type Running, running, shown, wordsOf } from './running.ts';

let app: Running;

afterEach(async () => {
  await app.close();
});

const requested = (text = 'tape 1 + 2', more: Readonly<Record<string, string>> = {}): string =>
  new URLSearchParams({
    command: '/floorhand',
    text,
    user_id: 'U1',
    team_id: 'T1',
    channel_id: 'C1',
    trigger_id: 'TR-x',
    response_url: app.slack.responseUrl(),
    ...more,
  }).toString();

/** How many answers there are after one more ask, so that whatever came before it would have been answered. */
async function settledBy(): Promise<number> {
  await app.slash('tape 7 + 7');
  await app.slack.until(() => shown(app.slack).some((message) => wordsOf(message).includes('7 + 7')));
  return shown(app.slack).length;
}

describe('what is refused', () => {
  beforeEach(async () => {
    app = await running();
  });

  const MINUTES = 60;

  it.each([
    ['a forged signature', { secret: 'another secret' }],
    ['one from more than five minutes ago', { stamp: NOW / 1000 - 5 * MINUTES - 1 }],
    ['one from an hour ahead', { stamp: NOW / 1000 + 60 * MINUTES }],
    ['no signature', { headers: { 'x-slack-signature': '' } }],
    ['another version of it', { headers: { 'x-slack-signature': 'v1=00' } }],
    ['a time that is none', { headers: { 'x-slack-request-timestamp': 'NaN' } }],
    ['a time with a tail', { headers: { 'x-slack-request-timestamp': `${NOW / 1000}.0` } }],
  ])('%s', async (_what, how) => {
    const response = await app.post(requested(), how);
    expect(response.status).toBe(401);
    expect(await settledBy()).toBe(1);
  });

  it('the same request again, word for word', async () => {
    const body = requested();
    expect((await app.post(body)).status).toBe(200);
    expect((await app.post(body)).status).toBe(401);
    await app.slack.until(() => shown(app.slack).length > 0);
    expect(await settledBy()).toBe(2);
  });

  it('anything that acts behind a certificate check', async () => {
    for (const body of [requested('tape 1 + 2', { ssl_check: '1' }), `ssl_check=1&${requested()}`]) {
      const response = await app.post(body, { secret: 'another secret' });
      expect([response.status, await response.text()]).toEqual([200, '']);
    }
    expect(await settledBy()).toBe(1);
  });

  it('what is no JSON, no form, or too large', async () => {
    expect((await app.post('{', { type: 'application/json' })).status).toBe(400);
    expect((await app.post('[1]', { type: 'application/json' })).status).toBe(400);
    expect((await app.post('payload=%7B')).status).toBe(400);
    expect((await app.post('x'.repeat(1_100_000))).status).toBe(413);
  });

  it('what nothing of ours is for', async () => {
    const response = await app.post(JSON.stringify({ hello: 'there' }), { type: 'application/json' });
    expect(response.status).toBe(404);
  });
});

describe('what is answered', () => {
  beforeEach(async () => {
    app = await running();
  });

  it('the challenge that proves the address is ours, and only signed', async () => {
    const body = JSON.stringify({ type: 'url_verification', challenge: 'c-1' });
    const type = 'application/json';
    expect(await (await app.post(body, { type })).json()).toEqual({ challenge: 'c-1' });
    expect((await app.post(body, { type, secret: 'another' })).status).toBe(401);
  });

  it('a request within five minutes either way', async () => {
    for (const minutes of [-4.9, 4.9]) {
      const response = await app.post(requested('tape 1 + 2', { trigger_id: `TR${minutes}` }), {
        stamp: NOW / 1000 + minutes * 60,
      });
      expect(response.status).toBe(200);
    }
    await app.slack.until(() => shown(app.slack).length === 2);
  });
});

describe('deliveries again', () => {
  beforeEach(async () => {
    app = await running();
  });

  it('of one event act once, signed anew or not', async () => {
    const event = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' };
    for (const [i, number] of [undefined, '1', '2', '3'].entries()) {
      const headers =
        number === undefined ? {} : { 'x-slack-retry-num': number, 'x-slack-retry-reason': 'http_timeout' };
      const response = await app.event(event, { id: 'Ev-same', stamp: NOW / 1000 + i, headers });
      expect(response.status).toBe(200);
    }
    await app.slack.until(() => shown(app.slack).length > 0);
    expect(await settledBy()).toBe(2);
  });

  it('of one slash command or press act once', async () => {
    const body = (url: string): string => requested('tape 1 + 2', { response_url: url });
    await app.post(body(app.slack.responseUrl()));
    await app.post(body(app.slack.responseUrl()));
    await app.slack.until(() => shown(app.slack).length > 0);
    expect(await settledBy()).toBe(2);
  });

  it('to a process that was started again act once, by event and by request', async () => {
    const kept = keptInMemory();
    await app.close();
    app = await running({ ports: { kept } });
    const event = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' };
    const body = requested('tape 3 + 4', { response_url: '' });
    await app.event(event, { id: 'Ev-same' });
    await app.post(body);
    await app.slack.until(() => shown(app.slack).length === 2);
    await app.close();
    app = await running({ ports: { kept, now: () => NOW + 5000 } });
    await app.event(event, { id: 'Ev-same', stamp: NOW / 1000 + 5, headers: { 'x-slack-retry-num': '1' } });
    await app.post(body);
    expect(await settledBy()).toBe(1);
  });

  it('to two processes on one store act once', async () => {
    const kept = keptInMemory();
    await app.close();
    app = await running({ ports: { kept, shared: true } });
    const other = await running({ ports: { kept, shared: true } });
    const event = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' };
    await Promise.all([
      app.event(event, { id: 'Ev-same' }),
      other.event(event, { id: 'Ev-same', stamp: NOW / 1000 + 1 }),
    ]);
    const seen = (): number => shown(app.slack).length + shown(other.slack).length;
    await Promise.race([app.slack.until(() => seen() > 0), other.slack.until(() => seen() > 0)]);
    await other.event({ ...event, text: 'tape 7 + 7' });
    await other.slack.until(() => shown(other.slack).some((message) => wordsOf(message).includes('7 + 7')));
    expect(seen()).toBe(2);
    await other.close();
  });
});

describe('the answer to Slack', () => {
  it('goes out before any sum begins, with a hundred asks at once', async () => {
    let answeredTo = 0;
    const begun: number[] = [];
    let open = (): void => undefined;
    const gate = new Promise<void>((resolve) => {
      open = resolve;
    });
    app = await running({
      ports: {
        async *answer(request) {
          begun.push(answeredTo);
          await gate;
          yield* answer(request, commands, { fault: () => undefined });
        },
      },
    });
    // No ask gets an answer until every one has been acknowledged: one acknowledged after its sum would hang here.
    const asks = Array.from({ length: 100 }, async () => {
      const { status } = await app.slash('tape 1 + 2');
      answeredTo += 1;
      return status;
    });
    expect(new Set(await Promise.all(asks))).toEqual(new Set([200]));
    expect(shown(app.slack)).toEqual([]);
    open();
    await app.slack.until(() => shown(app.slack).length === 100);
    expect(begun).toHaveLength(100);
  });

  it('to a form tells what cannot be read without any sum', async () => {
    app = await running({
      ports: {
        answer: () => {
          throw new Error('a sum began');
        },
      },
    });
    const view = {
      type: 'modal',
      callback_id: 'ask-form',
      id: 'V1',
      hash: 'h',
      private_metadata: JSON.stringify({ command: 'floor planks', where: { user: 'U1' } }),
      state: { values: { room: { told: { type: 'plain_text_input', value: '12 x' } } } },
    };
    const response = await app.interact({ type: 'view_submission', view });
    expect(await response.json()).toMatchObject({ response_action: 'errors' });
    expect(app.faults).toEqual([]);
  });
});

describe('with the store down', () => {
  const down = (): Promise<never> => Promise.reject(new Outage('down'));

  beforeEach(async () => {
    const kept = { ...keptInMemory(), get: down, set: down, claim: down, delete: down };
    app = await running({ ports: { kept, shared: true } });
  });

  it('asks are answered all the same, and repetitions are not', async () => {
    await app.slash('tape 1 + 2');
    await app.slack.until(() => shown(app.slack).length > 0);
    const event = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' };
    await app.event(event, { headers: { 'x-slack-retry-num': '1' } });
    expect(await settledBy()).toBe(2);
  });

  it('a button tells that nothing was lost and to try again', async () => {
    const action = { type: 'button', action_id: 'sources', block_id: 'b', value: 'abcdefghijk' };
    await app.interact({
      type: 'block_actions',
      channel: { id: 'C1' },
      container: { type: 'message' },
      response_url: app.slack.responseUrl(),
      actions: [action],
    });
    await app.slack.until(() => shown(app.slack).length > 0);
    expect(wordsOf(shown(app.slack))).toMatch(/try again|again/i);
  });
});
