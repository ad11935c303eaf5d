/** Ways an answer goes when Slack makes difficulties: pictures not ready, addresses used up, channels closed, better answers late. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { replyTo } from '../chat/asked.ts';
import { NOW, picturesAlone, pressables, type Running, running, shown, wordsOf } from './running.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
let app: Running;

afterEach(async () => {
  await app.close();
});

const images = (message: unknown): number => (JSON.stringify(message).match(/"slack_file"/g) ?? []).length;

describe('pictures', () => {
  const notReady = (times: number): void => {
    let refused = 0;
    app.slack.refuse(({ method, args }) =>
      method.startsWith('chat.') && images(args) > 0 && refused++ < times ? 'invalid_blocks' : undefined,
    );
  };
  const completed = (): readonly Readonly<Record<string, unknown>>[] =>
    app.slack.calls.filter(({ method }) => method === 'files.completeUploadExternal').map(({ args }) => args);
  const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1' };

  it('not ready yet stand in the answer a moment later; the answer does not wait', async () => {
    const waits: number[] = [];
    app = await running({ ports: { wait: async (milliseconds) => void waits.push(milliseconds) } });
    notReady(2);
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.responded.length === 2);
    expect(app.slack.responded.map(({ body }) => [images(body), body.replace_original])).toEqual([
      [0, false],
      [1, true],
    ]);
    expect(waits.filter((milliseconds) => milliseconds >= 1000)).toEqual([1000, 2500]);
    // The asker is given the file by a message that stays, before it stands in one that is theirs alone.
    expect(picturesAlone(app.slack).map(({ channel }) => channel)).toEqual(['U1', 'U1', 'U1']);
    expect(new Set(app.slack.responded.map(({ path }) => path)).size).toBe(1);
  });

  it('never ready are shared in the direct messages as files', async () => {
    app = await running();
    notReady(Infinity);
    await app.slash(PLANKS);
    await app.slack.until(() => completed().length === 2);
    expect(completed().at(-1)).toMatchObject({ channel_id: 'DU1' });
    expect(app.slack.responded.map(({ body }) => images(body))).toEqual([0]);
    expect(wordsOf(app.slack.responded)).toContain('in our direct messages');
    expect(app.faults).toEqual([]);
  });

  it('stand in an answer in the direct messages, or come behind it', async () => {
    app = await running();
    await app.event({ ...dm, text: PLANKS });
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(shown(app.slack)[0]).toMatchObject({ channel: 'D1' });
    expect(images(shown(app.slack))).toBe(1);
    expect(wordsOf(shown(app.slack))).not.toContain('in our direct messages');
    notReady(2);
    await app.event({ ...dm, text: PLANKS });
    await app.slack.until(() => picturesAlone(app.slack).length === 2);
    expect(picturesAlone(app.slack).map(({ channel }) => channel)).toEqual(['D1', 'D1']);
    expect(app.slack.calls.filter(({ method }) => method === 'chat.update')).toEqual([]);
  });

  it('asked for in two people’s direct messages go to the asker’s own', async () => {
    app = await running();
    app.slack.refuse(({ method, args }) =>
      method === 'chat.postMessage' && args.channel === 'D9' ? 'channel_not_found' : undefined,
    );
    await app.slash(PLANKS, { channel_id: 'D9' });
    await app.slack.until(() => app.slack.responded.length === 2);
    expect(picturesAlone(app.slack).at(-1)).toMatchObject({ channel: 'U1' });
    expect(wordsOf(app.slack.responded[1])).toContain('in our direct messages');
  });

  it('that have no way into the direct messages are told by what they show', async () => {
    app = await running();
    app.slack.refuse(({ method, args }) =>
      method === 'chat.postMessage' && args.channel === 'U1' ? 'messages_tab_disabled' : undefined,
    );
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.responded.length === 1);
    expect(images(app.slack.responded)).toBe(0);
    expect(wordsOf(app.slack.responded)).toContain('Plan of room');
    expect(wordsOf(app.slack.responded)).not.toContain('in our direct messages');
    expect(app.faults).toHaveLength(1);
  });

  it('not ready when shown to the channel come behind the answer there', async () => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.responded.length === 1);
    notReady(1);
    await app.press('Show to channel');
    await app.slack.until(() => picturesAlone(app.slack).some(({ channel }) => channel === 'C1'));
    const inChannel = shown(app.slack).filter(({ channel }) => channel === 'C1');
    expect(inChannel.map(images)).toEqual([1, 0]);
  });

  it('of an answer shown where the app is no member: it is posted without, and the asker learns why', async () => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.responded.length === 1);
    app.slack.refuse(({ method, args }) =>
      method === 'chat.postMessage' && args.channel === 'C1' ? 'not_in_channel' : undefined,
    );
    await app.press('Show to channel');
    await app.slack.until(() => app.slack.responded.length === 3);
    const [, posted, given] = app.slack.responded.map(({ body }) => body);
    expect([posted?.response_type, images(posted), given?.response_type]).toEqual(['in_channel', 0, 'ephemeral']);
    expect(wordsOf(given)).toContain('without its picture');
  });

  it('that cannot be drawn or uploaded leave the answer as it is', async () => {
    app = await running({ ports: { toPng: () => Promise.reject(new Error('no picture')) } });
    await app.slash(PLANKS);
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(images(shown(app.slack))).toBe(0);
    expect(wordsOf(shown(app.slack))).toContain('Buy 10 cartons');
    expect(app.faults).toHaveLength(1);
  });

  it('that take too long come after the figures, in their place', async () => {
    let drawn = (_: Buffer): void => undefined;
    const png = new Promise<Buffer>((resolve) => {
      drawn = resolve;
    });
    const reply = await replyTo(PLANKS);
    app = await running({
      ports: {
        toPng: () => png,
        async *answer() {
          yield reply;
        },
        patience: () => Promise.resolve(),
      },
    });
    await app.slash(PLANKS);
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(images(shown(app.slack))).toBe(0);
    expect(wordsOf(shown(app.slack))).toContain('Buy 10 cartons');
    drawn(Buffer.from('89504e470d0a1a0a', 'hex'));
    await app.slack.until(() => shown(app.slack).length === 2);
    expect(images(shown(app.slack))).toBe(1);
    expect(shown(app.slack).map(({ replace_original }) => replace_original)).toEqual([false, true]);
    expect(app.faults).toEqual([]);
  });
});

describe('a response address', () => {
  it('that is gone: the answer comes in the channel, for the asker alone', async () => {
    app = await running();
    app.slack.respond(() => ({ status: 404, text: 'used_url' }));
    await app.slash('tape 1 + 2');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postEphemeral'));
    expect(app.slack.calls.find(({ method }) => method === 'chat.postEphemeral')?.args).toMatchObject({
      channel: 'C1',
      user: 'U1',
    });
  });

  it('that cannot be reached: the answer comes in the channel', async () => {
    app = await running();
    await app.slash('tape 1 + 2', { response_url: 'http://127.0.0.1:1/gone' });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postEphemeral'));
    expect(app.faults).toEqual([]);
  });

  it('is used five times at most, and not after half an hour', async () => {
    let now = NOW;
    app = await running({ ports: { now: () => now } });
    await app.slash('planks');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const view = app.slack.calls.find(({ method }) => method === 'views.open')?.args.view as object;
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
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postEphemeral'));
    expect(app.slack.responded).toHaveLength(1);
  });
});

describe('a channel', () => {
  it('that the app is not in: the answer comes by direct message', async () => {
    app = await running();
    app.slack.respond(() => ({ status: 404, text: 'expired_url' }));
    app.slack.refuse(({ method }) => (method === 'chat.postEphemeral' ? 'not_in_channel' : undefined));
    await app.slash('tape 1 + 2');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postMessage'));
    expect(app.slack.calls.find(({ method }) => method === 'chat.postMessage')?.args.channel).toBe('U1');
  });

  it('that is closed to the app is told to the one who would show an answer there', async () => {
    app = await running();
    await app.slash('tape 1 + 2');
    await app.slack.until(() => shown(app.slack).length === 1);
    app.slack.respond(({ body }) => (body.response_type === 'in_channel' ? { status: 404, text: 'x' } : undefined));
    app.slack.refuse(({ method, args }) =>
      method === 'chat.postMessage' && args.channel === 'C1' ? 'not_in_channel' : undefined,
    );
    await app.press('Show to channel');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postEphemeral'));
    expect(wordsOf(app.slack.calls.at(-1)?.args)).toContain('Invite the app');
  });
});

describe('what goes wrong for good', () => {
  it('is told with a reference to whoever runs the bot, and to the asker where a way is left', async () => {
    app = await running();
    let first = true;
    app.slack.refuse(({ method }) => {
      if (method !== 'chat.postMessage' || !first) return undefined;
      first = false;
      return 'fatal_error';
    });
    await app.event({ type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' });
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'chat.postMessage').length === 2);
    expect(wordsOf(app.slack.calls.at(-1)?.args)).toContain(app.faults[0]?.reference);
  });

  it('with a revoked token ends nothing: the next ask is answered', async () => {
    app = await running();
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1' };
    app.slack.refuse(({ method }) => (method.startsWith('chat.') ? 'token_revoked' : undefined));
    await app.event({ ...dm, text: 'tape 1 + 2' });
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'chat.postMessage').length === 2);
    app.slack.refuse(() => undefined);
    await app.event({ ...dm, text: 'tape 3 + 4' });
    await app.slack.until(() => wordsOf(shown(app.slack)).includes('3 + 4'));
    expect(app.faults.length).toBeGreaterThan(0);
  });
});

describe('better answers', () => {
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

  it('that come soon are all that is shown', async () => {
    const { send, end } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.slash('x');
    send(reply);
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(shown(app.slack).map(({ text }) => text)).toEqual(['Better.']);
  });

  it('that come late replace what was shown meanwhile', async () => {
    const { send, end, late } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.slash('x');
    send(reply);
    late();
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(pressables(shown(app.slack)[0]).length).toBeGreaterThan(0);
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => shown(app.slack).length === 2);
    expect(shown(app.slack).map(({ text, replace_original }) => [text, replace_original])).toEqual([
      [reply.headline, false],
      ['Better.', true],
    ]);
  });

  it('in direct messages replace it in its place', async () => {
    const { send, end, late } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.event({ type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'x' });
    send(reply);
    late();
    await app.slack.until(() => shown(app.slack).length === 1);
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.update'));
    expect(app.slack.calls.find(({ method }) => method === 'chat.update')?.args).toMatchObject({
      channel: 'D1',
      ts: '1001.0001',
      text: 'Better.',
    });
  });

  it('come anew where the first was deleted meanwhile', async () => {
    const { send, end, late } = await slow();
    const reply = await replyTo('tape 1 + 2');
    await app.event({ type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'x' });
    send(reply);
    late();
    await app.slack.until(() => shown(app.slack).length === 1);
    app.slack.refuse(({ method }) => (method === 'chat.update' ? 'message_not_found' : undefined));
    send({ ...reply, headline: 'Better.' });
    end();
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'chat.postMessage').length === 2);
    expect(app.slack.calls.at(-1)?.args).toMatchObject({ channel: 'D1', text: 'Better.' });
    expect(app.faults).toEqual([]);
  });
});
