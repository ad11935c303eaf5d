/** How an answer reaches whoever asked, once and whole, when Slack makes difficulties: limits, refusals, addresses used up, answers late. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { replyTo } from '../chat/asked.ts';
import type { Call } from './loopback.ts';
import { NOW, type Running, running, wordsOf } from './running.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
let app: Running;

afterEach(async () => {
  await app.close();
});

const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1' };
const mention = { type: 'app_mention', channel: 'C1', user: 'U1', ts: '1.1' };
const lead = ({ text }: Readonly<Record<string, unknown>>): string => `${text}`.split('\n')[0] ?? '';
const calls = (method: string): readonly Call[] => app.slack.calls.filter((one) => one.method === method);
const uploaded = (): readonly Readonly<Record<string, unknown>>[] =>
  calls('files.completeUploadExternal').map(({ args }) => args);

describe('pictures', () => {
  it('wait behind their button, and come in the direct messages as files with words for who cannot see them', async () => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(calls('files.getUploadURLExternal')).toEqual([]);
    await app.press('Plan');
    await app.slack.until(() => app.slack.standing().length === 3);
    expect(uploaded()).toMatchObject([{ channel_id: 'DU1' }]);
    expect(`${calls('files.getUploadURLExternal')[0]?.args.alt_text}`.length).toBeGreaterThan(20);
    expect(wordsOf(app.slack.standing()[2])).toContain('in our direct messages');
    expect(app.faults).toEqual([]);
  });

  it('come in the thread of a mention, where everybody reads the answer', async () => {
    app = await running();
    await app.event({ ...mention, text: `<@UBOT> ${PLANKS}` });
    await app.slack.until(() => app.slack.standing().length === 1);
    await app.press('Plan', {
      container: { type: 'message', message_ts: '1001.0001', channel_id: 'C1', thread_ts: '1.1' },
    });
    await app.slack.until(() => uploaded().length === 1);
    expect(uploaded()).toMatchObject([{ channel_id: 'C1', thread_ts: '1.1' }]);
    expect(app.slack.standing()).toHaveLength(1);
  });

  it('that Slack takes for half a minute no more of are told by what they show, and keep nobody else waiting', async () => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.standing().length === 1);
    app.slack.refuse(({ method }) => (method.startsWith('files.') ? { retryAfter: 30 } : undefined));
    await app.press('Plan');
    await app.event({ ...dm, user: 'U2', text: 'tape 1 + 2' });
    await app.slack.until(() => app.slack.standing().length === 4);
    const words = app.slack.standing().map(({ text }) => `${text}`);
    expect(words.some((text) => /no files for 30 seconds[\s\S]*Plan of room/.test(text))).toBe(true);
    expect(words.some((text) => text.startsWith('1 + 2'))).toBe(true);
    expect(app.faults.map(({ cause }) => `${cause}`)).toContain(
      'Limited: Slack limits files.getUploadURLExternal: again in 30 s',
    );
  });

  it('are uploaded by a client of their own: a hundred that hang keep no message waiting', async () => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.standing().length === 1);
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    app.slack.refuse(({ method }) => (method.startsWith('files.') ? { held } : undefined));
    await Promise.all(Array.from({ length: 100 }, () => app.press('Plan')));
    await app.slack.until(() => calls('files.getUploadURLExternal').length === 100);
    await app.event({ ...dm, user: 'U2', text: 'tape 1 + 2' });
    await app.slack.until(() => app.slack.standing().some((one) => lead(one) === '1 + 2 = 3"'));
    // None of them was given up for it.
    expect(app.faults).toEqual([]);
    release();
  });

  it('that cannot be drawn are told by what they show', async () => {
    app = await running({ ports: { toPng: () => Promise.reject(new Error('no picture')) } });
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.standing().length === 1);
    await app.press('Plan');
    await app.slack.until(() => app.slack.standing().length === 2);
    expect(app.slack.standing()[1]?.text).toMatch(/couldn’t be drawn[\s\S]*Plan of room/);
    expect(app.faults).toHaveLength(1);
  });
});

describe('a response address', () => {
  it('that is gone: the answer comes in the channel, for the asker alone', async () => {
    app = await running();
    app.slack.respond(() => ({ status: 404, text: 'used_url' }));
    await app.slash('tape 1 + 2');
    await app.slack.until(() => calls('chat.postEphemeral').length === 1);
    expect(calls('chat.postEphemeral')[0]?.args).toMatchObject({ channel: 'C1', user: 'U1' });
  });

  it('that cannot be reached: the answer comes in the channel', async () => {
    app = await running();
    await app.slash('tape 1 + 2', { response_url: 'http://127.0.0.1:1/gone' });
    await app.slack.until(() => calls('chat.postEphemeral').length === 1);
    expect(app.faults).toEqual([]);
  });

  it.each(['msg_blocks_too_long', 'invalid_blocks', 'expired_url'])(
    'that says %s with a status of success has taken nothing',
    async (error) => {
      app = await running();
      let first = true;
      app.slack.respond(() => {
        if (!first) return undefined;
        first = false;
        return { status: 200, text: JSON.stringify({ ok: false, error }) };
      });
      await app.slash('tape 1 + 2');
      await app.slack.until(() => app.slack.standing().length === 1);
      expect(lead(app.slack.standing()[0] ?? {})).toBe('1 + 2 = 3"');
    },
  );

  it('is used five times at most, and not after half an hour', async () => {
    let now = NOW;
    app = await running({ ports: { now: () => now } });
    await app.slash('planks');
    await app.slack.until(() => calls('views.open').length === 1);
    const view = calls('views.open')[0]?.args.view as object;
    const submit = (hash: string): Promise<Response> =>
      app.interact(
        {
          type: 'view_submission',
          view: {
            ...view,
            id: 'V1',
            hash,
            state: {
              values: { room: { told: { value: '12x14' } }, plank: { told: { value: '6 x 48 in, 10 per carton' } } },
            },
          },
        },
        { stamp: now / 1000 },
      );
    await submit('h1');
    await app.slack.until(() => app.slack.responded.length === 1);
    now += 30 * 60_000;
    await submit('h2');
    await app.slack.until(() => calls('chat.postEphemeral').length === 1);
    expect(app.slack.responded).toHaveLength(1);
  });
});

describe('whatever Slack refuses', () => {
  /** Refuses a way always, as a closed channel does. */
  const refusing = (error: string | number, ways: (call: Call) => boolean): void =>
    app.slack.refuse((call) => (ways(call) ? error : undefined));

  it('is said where an answer would be shown to a channel that is closed to the app', async () => {
    app = await running();
    await app.slash('tape 1 + 2');
    await app.slack.until(() => app.slack.standing().length === 1);
    app.slack.respond(({ body }) => (body.response_type === 'in_channel' ? { status: 404, text: 'x' } : undefined));
    refusing('not_in_channel', ({ method, args }) => method === 'chat.postMessage' && args.channel === 'C1');
    await app.press('Show to channel');
    await app.slack.until(() => calls('chat.postEphemeral').length === 1);
    expect(wordsOf(calls('chat.postEphemeral')[0]?.args)).toContain('Invite the app');
  });

  it('for a second is waited for, by this message alone', async () => {
    app = await running();
    let first = true;
    app.slack.refuse(({ method }) => {
      if (method !== 'chat.postMessage' || !first) return undefined;
      first = false;
      return { retryAfter: 2 };
    });
    await app.event({ ...dm, text: 'tape 1 + 2' });
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(app.faults.map(({ cause }) => `${cause}`)).toEqual(['Limited: Slack limits chat.postMessage: again in 2 s']);
  });
});

describe('an answer that takes a while', () => {
  /** Answers that come when the test says so. */
  async function slow(): Promise<{ send(answer: Answer): void; end(): void; late(): void }> {
    const replies: Answer[] = [];
    let ended = false;
    let wake = (): void => undefined;
    let late = (): void => undefined;
    const patience = new Promise<void>((resolve) => {
      late = resolve;
    });
    app = await running({
      ports: {
        patience: () => patience,
        async *answer() {
          for (let i = 0; ; i++) {
            while (replies.length <= i && !ended) {
              await new Promise<void>((resolve) => {
                wake = resolve;
              });
            }
            const reply = replies[i];
            if (!reply) return;
            yield reply;
          }
        },
      },
    });
    return {
      send: (answer) => {
        replies.push(answer);
        wake();
      },
      end: () => {
        ended = true;
        wake();
      },
      late: () => late(),
    };
  }
  const words = (): readonly string[] => app.slack.standing().map(lead);

  it('but comes soon after all is all that is shown', async () => {
    const { send, end } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.slash('x');
    send(reply);
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(words()).toEqual(['Better.']);
  });

  it('begins with one line for whoever gave a command, whose messages cannot be replaced', async () => {
    const { send, end, late } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.slash('x');
    send(reply);
    late();
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(words()).toEqual(['Working it out…']);
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => app.slack.standing().length === 2);
    expect(words()).toEqual(['Working it out…', 'Better.']);
    expect(app.slack.responded.some(({ body }) => body.replace_original === true)).toBe(false);
  });

  it('takes the place of that line in direct messages', async () => {
    const { send, end, late } = await slow();
    await app.event({ ...dm, text: 'x' });
    late();
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(words()).toEqual(['Working it out…']);
    send(await replyTo('tape 1 + 2'));
    end();
    await app.slack.until(() => calls('chat.update').length === 1);
    expect(words()).toEqual(['1 + 2 = 3"']);
  });

  it('shows a status in the thread of a mention, and no line', async () => {
    const { send, end, late } = await slow();
    await app.event({ ...mention, text: '<@UBOT> x' });
    late();
    await app.slack.until(() => calls('assistant.threads.setStatus').length === 1);
    expect(calls('assistant.threads.setStatus')[0]?.args).toMatchObject({ channel_id: 'C1', thread_ts: '1.1' });
    send({ ...(await replyTo('tape 1 + 2')), audience: 'channel' });
    end();
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(app.slack.standing()).toMatchObject([{ channel: 'C1', thread_ts: '1.1' }]);
  });

  it('comes anew where the line was deleted meanwhile', async () => {
    const { send, end, late } = await slow();
    await app.event({ ...dm, text: 'x' });
    late();
    await app.slack.until(() => app.slack.standing().length === 1);
    app.slack.refuse(({ method }) => (method === 'chat.update' ? 'message_not_found' : undefined));
    send(await replyTo('tape 1 + 2'));
    end();
    await app.slack.until(() => calls('chat.postMessage').length === 2);
    expect(lead(calls('chat.postMessage')[1]?.args ?? {})).toBe('1 + 2 = 3"');
    expect(app.faults).toEqual([]);
  });
});

describe('an answer that reaches nobody', () => {
  it('comes behind the next one, once, and to its asker only', async () => {
    app = await running();
    app.slack.refuse(({ method }) => (method.startsWith('chat.') ? 'channel_not_found' : undefined));
    app.slack.respond(() => ({ status: 404, text: 'expired_url' }));
    await app.slash('tape 1 + 2');
    await app.slack.until(() => calls('chat.postMessage').length === 1);
    app.slack.refuse(() => undefined);
    app.slack.respond(() => undefined);
    const texts = (): readonly string[] => app.slack.standing().map(lead);
    await app.slash('tape 1 + 1', { user_id: 'U2' });
    await app.slack.until(() => texts().length === 1);
    await app.slash('tape 2 + 2');
    await app.slack.until(() => texts().length === 4);
    await app.slash('tape 3 + 3');
    await app.slack.until(() => texts().length === 5);
    expect(texts()).toEqual([
      '1 + 1 = 2"',
      '2 + 2 = 4"',
      'An earlier answer didn’t reach you. Here it is.',
      '1 + 2 = 3"',
      '3 + 3 = 6"',
    ]);
  });
});
