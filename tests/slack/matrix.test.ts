/** Every kind of request by every way people ask in Slack, with whatever is late or limited: one full answer each, and never silence. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { accountKey } from '../../src/accounts/records.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { keepAnswer } from '../../src/chat/saved-replies.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { render } from '../../src/platforms/slack/render.ts';
import { DEMO_ASKS, WORKED_ASK } from '../../src/platforms/terminal/demo.ts';
import { reply } from '../../src/reply/reply.ts';
import { SLACK } from '../../src/text/chat-text.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { pressedAs, type Running, running } from './running.ts';

/** In people's own words, besides every example of every command and the demo's conversation. */
const SENTENCES: readonly string[] = [
  WORKED_ASK,
  'how many boxes do I need for a 12 by 14 bedroom?',
  'how much flooring for a 12x15 room?',
  '12x14, 6 x 48 in planks, 10 per carton',
  'my bedroom is 11’ by 12’6” and there’s a 2x5 closet, planks are 7x48, 10 in a box. how many??',
  'show me the plan of a 12x14 room with 6 x 48 in planks, 10 per carton',
  'can I lay plank over old tile?',
  'do I need underlayment?',
  'how long do the boxes have to sit in the room?',
  'which way should the planks run?',
  'the subfloor squeaks in the hall, about 4 x 6 ft',
  'there is a dip of 3/8 in over 6 ft',
  'how do I get carpet off tack strip?',
  'how much baseboard for a 11 x 12 room with one 30 in door?',
  'my wife is pregnant, can I sand the old floor?',
  'nail hit a wire and it sparks',
  'I smell gas',
  'is the black glue under my tile asbestos?',
  'what do I still need to buy?',
  'what is next?',
  'the living room is 14 x 16 now',
  'thanks!',
  'hello',
  'what can you do',
  'qwertz asdf',
  '🪵',
  '12 x',
  'planks',
  'trim list',
  'undo',
];

const REQUESTS: readonly string[] = [
  ...new Set([...commands.flatMap(({ examples }) => examples.map(({ ask }) => ask)), ...DEMO_ASKS, ...SENTENCES]),
];

const WAYS = ['slash', 'mention', 'message', 'button', 'form'] as const;

interface Case {
  readonly request: string;
  readonly way: (typeof WAYS)[number];
  readonly lateAnswer: boolean;
  readonly latePicture: boolean;
  /** Slack takes the first call of every method, and at every address, a second later. */
  readonly limited: boolean;
}

const BOTH = [false, true];
const ALL: readonly Case[] = REQUESTS.flatMap((request) =>
  WAYS.flatMap((way) =>
    BOTH.flatMap((lateAnswer) =>
      BOTH.flatMap((latePicture) => BOTH.map((limited) => ({ request, way, lateAnswer, latePicture, limited }))),
    ),
  ),
).filter(({ way, request }) => way !== 'form' || parseLine(request, commands).ok);

/** Numbers that are the same every time. */
function* drawn(seed: number): Generator<number> {
  for (let state = seed; ; ) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state / 2 ** 32;
  }
}

const asker = { platform: 'slack', id: 'U1', workspace: 'T1' } as const;
const BEFORE = 'abcdefghijk';

/** Asks by one of the ways. */
async function ask(app: Running, { request, way }: Case): Promise<unknown> {
  const parsed = parseLine(request, commands);
  switch (way) {
    case 'slash':
      return app.slash(request);
    case 'mention':
      return app.event({ type: 'app_mention', user: 'U1', channel: 'C1', ts: '1.1', text: `<@UBOT> ${request}` });
    case 'message':
      return app.event({ type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: request });
    case 'button':
      return app.interact({
        type: 'block_actions',
        channel: { id: 'C1' },
        container: { type: 'message', message_ts: '1.1', channel_id: 'C1', is_ephemeral: true },
        response_url: app.slack.responseUrl(),
        actions: [{ type: 'button', action_id: 'ask.0', block_id: 'b', value: BEFORE }],
      });
    case 'form': {
      if (!parsed.ok) throw new Error(`no form for ${request}`);
      const values = [...parsed.optionTexts].map(([option, value]) => [option, { told: { value } }] as const);
      const where = { user: 'U1', channel: 'C1' };
      const private_metadata = JSON.stringify({ command: fullName(parsed.command), where });
      const state = { values: Object.fromEntries(values) };
      return app.interact({
        type: 'view_submission',
        view: { type: 'modal', callback_id: 'ask-form', id: 'V1', hash: 'h', private_metadata, state },
      });
    }
  }
}

/** Notes of ours that are no answer. */
const NOTES: readonly string[] = [SLACK.working, SLACK.toYou, SLACK.pictureIntro, SLACK.picturesSent, SLACK.fileIntro];
const lead = ({ text }: Readonly<Record<string, unknown>>): string => `${text}`.split('\n')[0] ?? '';

/** What is wrong with how a case was answered. */
async function flawsOf(one: Case): Promise<readonly string[]> {
  const ports = await demoPorts(asker, () => undefined);
  const gates: (() => void)[] = [];
  let held = { answers: one.lateAnswer, pictures: one.latePicture };
  const gate = (of: keyof typeof held): Promise<void> =>
    held[of] ? new Promise((resolve) => gates.push(resolve)) : Promise.resolve();
  const open = (of: keyof typeof held): void => {
    held = { ...held, [of]: false };
    for (const each of gates.splice(0)) each();
  };
  let last: Answer | undefined;
  const app = await running({
    ports: {
      holds: async () => true,
      makeFile: async () => Buffer.from('a file'),
      patience: () => (one.lateAnswer ? Promise.resolve() : new Promise(() => undefined)),
      async *answer(request) {
        await gate('answers');
        for await (const each of answer(request, commands, ports)) {
          last = each;
          yield each;
        }
      },
      toPng: async () => {
        await gate('pictures');
        return Buffer.from('89504e470d0a1a0a', 'hex');
      },
    },
  });
  const before = reply({
    headline: 'Before.',
    actions: [{ label: 'Go on', ask: one.request }],
    data: { kind: 'any' },
  });
  await keepAnswer(app.kept, BEFORE, { by: accountKey(asker), text: 'before', reply: before, shown: false });
  if (one.limited) {
    const seen = new Set<string>();
    const isFirst = (of: string): boolean => !seen.has(of) && seen.add(of) !== undefined;
    app.slack.refuse(({ method }) => (isFirst(method) ? { retryAfter: 1 } : undefined));
    app.slack.respond(({ path }) => (isFirst(path) ? { status: 429, text: 'limited' } : undefined));
  }
  await ask(app, one);
  if (one.lateAnswer)
    await app.slack.until(() => gates.length > 0 && (app.slack.calls.length > 0 || app.slack.responded.length > 0));
  open('answers');
  const answered = (): boolean =>
    app.slack.calls.some(({ method }) => method === 'views.open') ||
    app.slack.standing().some((message) => !NOTES.includes(lead(message)));
  await app.slack.until(answered);
  const plan = app.slack.standing().flatMap((message) => pressedAs(message, 'Plan') ?? []);
  if (plan.length > 0) {
    const container = { type: 'message', message_ts: '1001.0001', channel_id: 'C1', is_ephemeral: true };
    const where = { channel: { id: 'C1' }, container, response_url: app.slack.responseUrl() };
    await app.interact({ type: 'block_actions', actions: plan.slice(0, 1), ...where });
    await new Promise((resolve) => setImmediate(resolve));
  }
  open('pictures');
  await app.close();
  if (!last) return ['no answer'];
  const [first] = render(last, { id: BEFORE });
  const full = app.slack.standing().filter((message) => lead(message) === lead({ ...first }));
  const form = app.slack.calls.some(({ method }) => method === 'views.open');
  return [
    ...(full.length > 1 ? [`${full.length} full answers`] : []),
    ...(full.length === 0 && !form ? ['no full answer'] : []),
    ...app.slack
      .standing()
      .flatMap((message) => (`${message.text}`.includes('went wrong on our side') ? ['a fault'] : [])),
    ...app.faults.flatMap(({ cause }) => (/Slack limits|rate-limit/.test(`${cause}`) ? [] : [`a fault: ${cause}`])),
  ];
}

/** All of them with `FLOORHAND_MATRIX=whole`, which takes a while; else as many as it says, drawn by a fixed seed. */
const WANTED = process.env.FLOORHAND_MATRIX;
const numbers = drawn(20_260);
const COUNT = Number(WANTED ?? 60);
const CASES =
  WANTED === 'whole'
    ? ALL
    : Array.from({ length: COUNT }, () => ALL[Math.floor((numbers.next().value as number) * ALL.length)]).flatMap(
        (one) => one ?? [],
      );

describe('a request, however it is asked and whatever is late', () => {
  it('is one of at least 150', () => expect(REQUESTS.length).toBeGreaterThanOrEqual(150));

  it.each(
    CASES.map((one) => {
      const late = [one.lateAnswer && 'late answer', one.latePicture && 'late picture', one.limited && 'rate limits'];
      return [one.way, late.filter(Boolean).join(', ') || 'nothing late', one.request.slice(0, 60), one] as const;
    }),
  )('gets one full answer by %s with %s: %s', async (_way, _late, _request, one) => {
    expect(await flawsOf(one)).toEqual([]);
  });
});
