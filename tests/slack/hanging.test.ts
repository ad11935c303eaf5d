/** Every outgoing call has a time limit: what Slack never answers takes nobody’s answer with it. */

import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { TIME } from '../../src/platforms/slack/limits.ts';
import { SLACK } from '../../src/text/chat-text.ts';
import type { Call } from './loopback.ts';
import { pressables, type Running, running } from './running.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
let app: Running;
let release = (): void => undefined;
/** What ends the calls under way, and the milliseconds each was given. */
let limits: { readonly end: AbortController; readonly milliseconds: number }[] = [];

beforeEach(() => {
  limits = [];
  vi.spyOn(AbortSignal, 'timeout').mockImplementation((milliseconds) => {
    const end = new AbortController();
    limits.push({ end, milliseconds });
    return end.signal;
  });
});

afterEach(async () => {
  release();
  await app.close();
  vi.restoreAllMocks();
});

const here = { channel: undefined, response_url: undefined, view: { type: 'home' } };
const dm = (text: string) =>
  app.event({ type: 'message', channel: 'DU1', channel_type: 'im', user: 'U1', ts: '1.1', text });
const published = () => app.slack.calls.filter(({ method }) => method === 'views.publish');
const said = (words: RegExp | string) => () => app.slack.standing().some(({ text }) => `${text}`.match(words) !== null);

/** Never answers these methods, or with `address` no response address either: the time of the call that came last is over as soon as it is there. */
function hang(methods: readonly string[], address = false): void {
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const holding = () => {
    const last = limits.at(-1);
    expect([TIME.call, TIME.upload]).toContain(last?.milliseconds);
    last?.end.abort(new DOMException('The operation was aborted due to timeout', 'TimeoutError'));
    return held;
  };
  const never = ({ method, args }: Call): boolean => methods.includes(method) && args.channel !== 'U1';
  app.slack.refuse((call) => (never(call) ? { held: holding() } : undefined));
  if (address) app.slack.respond(() => ({ status: 200, text: 'ok', held: holding() }));
}

async function onHome(): Promise<void> {
  await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
  await app.slack.until(() => published().length === 1);
}

it.each([
  [
    'chat.postMessage',
    false,
    () => app.event({ type: 'app_mention', channel: 'C1', user: 'U1', ts: '1.1', text: '<@UBOT> tape 1 + 2' }),
    /^1 \+ 2 = 3/,
  ],
  ['chat.postEphemeral', true, () => app.slash('tape 1 + 2'), /^1 \+ 2 = 3/],
  ['views.open', false, () => app.slash('planks'), /plank/],
  [
    'views.open',
    false,
    async () => {
      await onHome();
      await app.press('Safety', here);
    },
    /^Safety/,
  ],
  [
    'views.update',
    false,
    async () => {
      await onHome();
      await app.press('How many cartons?', here);
    },
    /^Buy \d+ cartons/,
  ],
  [
    'views.publish',
    false,
    async () => {
      app.slack.refuse(() => undefined);
      await onHome();
      hang(['views.publish']);
      await app.press('Undo the last change', here);
    },
    SLACK.homeNotShown,
  ],
  ['files.getUploadURLExternal', false, () => plan(), /^Slack didn’t take the file/],
  ['upload', false, () => plan(), /^Slack didn’t take the file/],
  ['files.completeUploadExternal', false, () => plan(), /^Slack didn’t take the file/],
] as const)('%s that hangs', async (method, address, asks, words) => {
  app = await running({ flat: true });
  hang([method], address);
  await asks();
  await app.slack.until(said(words));
});

async function plan(): Promise<void> {
  await app.slash(PLANKS);
  await app.slack.until(() => app.slack.responded.some(({ body }) => pressables(body).length > 0));
  await app.press('Plan');
}

it('chat.update and the status of a thread that hang', async () => {
  app = await running({ ports: { patience: () => Promise.resolve() } });
  hang(['chat.update', 'assistant.threads.setStatus']);
  await dm('tape 1 + 2');
  await app.slack.until(said(/^1 \+ 2 = 3/));
  await app.event({ type: 'app_mention', channel: 'C1', user: 'U1', ts: '1.1', text: '<@UBOT> tape 3 + 4' });
  await app.slack.until(said(/^3 \+ 4 = 7/));
  const methods = app.slack.calls.map(({ method }) => method);
  expect(methods).toEqual(expect.arrayContaining(['chat.update', 'assistant.threads.setStatus']));
});
