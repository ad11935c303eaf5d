/** Every outgoing call has a time limit: what Slack never answers takes nobody’s answer with it. */

import { afterEach, it, vi } from 'vitest';
import { SLACK } from '../../src/text/chat-text.ts';
import { pressables, type Running, running } from './running.ts';

vi.mock('../../src/platforms/slack/limits.ts', async (original) => {
  const limits = await original<typeof import('../../src/platforms/slack/limits.ts')>();
  return { ...limits, TIME: { ...limits.TIME, call: 1500, upload: 1500 } };
});

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
let app: Running;
let release = (): void => undefined;

afterEach(async () => {
  release();
  await app.close();
});

const here = { channel: undefined, response_url: undefined, view: { type: 'home' } };
const dm = (text: string) =>
  app.event({ type: 'message', channel: 'DU1', channel_type: 'im', user: 'U1', ts: '1.1', text });
const published = () => app.slack.calls.filter(({ method }) => method === 'views.publish');
const said = (words: RegExp | string) => () => app.slack.standing().some(({ text }) => `${text}`.match(words) !== null);

/** Never answers a method, or with `address` no response address either. */
function hang(method: string, address = false): void {
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  app.slack.refuse((call) => (call.method === method && call.args.channel !== 'U1' ? { held } : undefined));
  if (address) app.slack.respond(() => ({ status: 200, text: 'ok', held }));
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
      hang('views.publish');
      await app.press('Undo the last change', here);
    },
    SLACK.homeNotShown,
  ],
  ['files.getUploadURLExternal', false, () => plan(), /^Slack didn’t take the file/],
  ['upload', false, () => plan(), /^Slack didn’t take the file/],
  ['files.completeUploadExternal', false, () => plan(), /^Slack didn’t take the file/],
] as const)('%s that hangs', { timeout: 60_000 }, async (method, address, asks, words) => {
  app = await running({ flat: true });
  hang(method, address);
  await asks();
  await app.slack.until(said(words));
});

async function plan(): Promise<void> {
  await app.slash(PLANKS);
  await app.slack.until(() => app.slack.responded.some(({ body }) => pressables(body).length > 0));
  await app.press('Plan');
}

it('chat.update and the status of a thread that hang', { timeout: 60_000 }, async () => {
  app = await running({ ports: { patience: () => Promise.resolve() } });
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const hanging = ['chat.update', 'assistant.threads.setStatus'];
  app.slack.refuse(({ method }) => (hanging.includes(method) ? { held } : undefined));
  await dm('tape 1 + 2');
  await app.event({ type: 'app_mention', channel: 'C1', user: 'U1', ts: '1.1', text: '<@UBOT> tape 3 + 4' });
  await app.slack.until(() => said(/^1 \+ 2 = 3/)() && said(/^3 \+ 4 = 7/)());
});
