/** Whatever Slack documents as an error of a method reaches the person all the same: there, in the channel, by direct message, or with their next request. */

import { afterEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { accountKey } from '../../src/accounts/records.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { SlackParts } from '../../src/platforms/slack/types.ts';
import { INSTALL, SLACK } from '../../src/text/chat-text.ts';
import { replyTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { DOCUMENTED, TOKEN_ERRORS } from './documented-errors.ts';
import type { Call } from './loopback.ts';
import { pressables, type Running, running, wordsOf } from './running.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
/** Where a button of a form stands. */
const INSIDE = { type: 'view', view_id: 'V1' };
const TAPE = '1 + 2 = 3"';
const MISSED = 'An earlier answer didn’t reach you. Here it is.';
let app: Running;

afterEach(async () => {
  await app.close();
});

type Message = Readonly<Record<string, unknown>>;
const lead = ({ text }: Message): string => `${text}`.split('\n')[0] ?? '';
const calls = (method: string): readonly Call[] => app.slack.calls.filter((one) => one.method === method);
const dm = (user: string, text: string) =>
  app.event({ type: 'message', channel: `D${user}`, channel_type: 'im', user, ts: '1.1', text });
const mention = (user: string, text: string) =>
  app.event({ type: 'app_mention', channel: 'C1', user, ts: '1.1', text: `<@UBOT> ${text}` });
const closed = (): void => app.slack.respond(() => ({ status: 404, text: 'expired_url' }));
const refuse = (error: string | number, ways: (call: Call) => boolean): void =>
  app.slack.refuse((call) => (ways(call) ? error : undefined));
const open = (): void => {
  app.slack.refuse(() => undefined);
  app.slack.respond(() => undefined);
};

/** Whether it comes to hold, within what a busy machine takes. */
async function comes(holds: () => boolean): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(false), 10_000);
  });
  const came = app.slack.until(holds).then(() => true);
  return Promise.race([came, late]).finally(() => clearTimeout(timer));
}

/** Lets what was begun come to its end. */
async function settled(): Promise<void> {
  for (let i = 0; i < 20; i++) await new Promise((resolve) => setImmediate(resolve));
}

/** Asks once under each error of a method, everybody for themselves: the errors after which it did not come. */
async function lostUnder(
  method: string,
  ask: (user: string, error: string) => Promise<boolean>,
): Promise<readonly string[]> {
  const lost: string[] = [];
  for (const [i, error] of (DOCUMENTED[method] ?? []).entries()) {
    const came = await ask(`U${100 + i}`, error);
    if (!came) lost.push(error);
    await settled();
    open();
  }
  return lost;
}

/** The demo flat, in which the same request is worked out once. */
async function rememberedFlat(): Promise<Partial<SlackParts>> {
  const flat = await demoPorts({ platform: 'slack', id: 'U1', workspace: 'T1' }, () => undefined);
  const known = new Map<string, Answer[]>();
  return {
    holds: async () => true,
    async *answer(request) {
      const answers = known.get(request.text) ?? [];
      if (answers.length === 0) for await (const one of answer(request, commands, flat)) answers.push(one);
      known.set(request.text, answers);
      yield* answers;
    },
  };
}

const stands = (user: string, text: string): boolean =>
  app.slack.standing().some((one) => one.channel === `D${user}` && `${one.text}`.includes(text));

describe('every documented error', { timeout: 120_000 }, () => {
  it('of chat.postMessage in a channel: a mention is answered by direct message', async () => {
    app = await running();
    const lost = await lostUnder('chat.postMessage', async (user, error) => {
      refuse(error, ({ args }) => args.channel === 'C1');
      await mention(user, 'tape 1 + 2');
      return comes(() => stands(user, TAPE));
    });
    expect(lost).toEqual([]);
  });

  it('of chat.postMessage everywhere: the answer comes with the next request', async () => {
    app = await running();
    const lost = await lostUnder('chat.postMessage', async (user, error) => {
      refuse(error, ({ method }) => method.startsWith('chat.'));
      const faults = app.faults.length;
      await dm(user, 'tape 1 + 2');
      while (app.faults.length === faults) await settled();
      await settled();
      open();
      await dm(user, 'tape 3 + 4');
      return comes(() => stands(user, '3 + 4 = 7"') && stands(user, MISSED) && stands(user, TAPE));
    });
    expect(lost).toEqual([]);
  });

  it('of chat.postEphemeral: a command whose address is gone is answered by direct message', async () => {
    app = await running();
    const lost = await lostUnder('chat.postEphemeral', async (user, error) => {
      closed();
      refuse(error, ({ method }) => method === 'chat.postEphemeral');
      await app.slash('tape 1 + 2', { user_id: user });
      return comes(() => stands(user, TAPE));
    });
    expect(lost).toEqual([]);
  });

  it('of chat.update: what cannot take the place of “Working it out” comes anew', async () => {
    const late: Partial<SlackParts> = {
      patience: () => Promise.resolve(),
      async *answer({ asker }) {
        await app.slack.until(() => stands(asker.id, SLACK.working));
        yield await replyTo('tape 1 + 2');
      },
    };
    app = await running({ ports: late });
    const lost = await lostUnder('chat.update', async (user, error) => {
      refuse(error, ({ method }) => method === 'chat.update');
      await dm(user, 'tape 1 + 2');
      return comes(() => stands(user, TAPE));
    });
    expect(lost).toEqual([]);
  });

  it('of views.open: what is missing is said, and a shortcut says that no form came', async () => {
    app = await running();
    const lost = await lostUnder('views.open', async (user, error) => {
      refuse(error, ({ method }) => method === 'views.open');
      const before = app.slack.responded.length;
      await app.slash('planks', { user_id: user });
      const said = await comes(() => app.slack.responded.length > before);
      const labels = pressables(app.slack.responded.at(-1)?.body).map(({ text }) => text?.text);
      await app.interact({ type: 'shortcut', callback_id: 'start', user: { id: user } });
      return said && labels.includes('Fill in a form') && (await comes(() => stands(user, SLACK.formLate)));
    });
    expect(lost).toEqual([]);
  });

  it('of views.update: an answer over the Home tab comes as a message, and a form says what it lacks', async () => {
    app = await running({ ports: await rememberedFlat() });
    const where = { channel: undefined, response_url: undefined };
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await app.slack.until(() => calls('views.publish').length === 1);
    await app.interact({ type: 'shortcut', callback_id: 'start' });
    await app.slack.until(() => calls('views.open').length === 1);
    const form = calls('views.open')[0]?.args.view as object;
    const lost = await lostUnder('views.update', async (_user, error) => {
      refuse(error, ({ method }) => method === 'views.update');
      const seen = app.slack.standing().length;
      await app.press('How many cartons?', { ...where, view: { type: 'home' } });
      const came = await comes(() => /^Buy \d+ cartons/.test(lead(app.slack.standing().at(seen) ?? {})));
      const told = app.slack.standing().length;
      const view = { ...form, id: 'V1', hash: 'h', state: { values: {} } };
      const more = [{ type: 'button', action_id: 'fields', block_id: 'b' }];
      await app.interact({ type: 'block_actions', container: INSIDE, view, actions: more });
      // Whoever pressed twice or closed the form knows.
      if (['hash_conflict', 'not_found'].includes(error)) await settled();
      else await comes(() => lead(app.slack.standing().at(told) ?? {}) === SLACK.formNotWidened);
      const quiet = ['hash_conflict', 'not_found'].includes(error);
      return came && app.slack.standing().length === told + (quiet ? 0 : 1);
    });
    expect(lost).toEqual([]);
    // Nothing says for good that it is being worked out.
    const views = calls('views.update').map(({ args }) => wordsOf(args.view));
    expect(views.filter((words) => words.includes(SLACK.homeElsewhere)).length).toBeGreaterThan(0);
  });

  it('of views.publish: what was done on the Home tab is said by message', async () => {
    app = await running({ ports: await rememberedFlat() });
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await app.slack.until(() => calls('views.publish').length === 1);
    const here = { channel: undefined, response_url: undefined, view: { type: 'home' } };
    const lost = await lostUnder('views.publish', async (_user, error) => {
      refuse(error, ({ method }) => method === 'views.publish');
      const seen = app.slack.standing().length;
      await app.press('Undo the last change', here);
      return comes(() => `${app.slack.standing().at(seen)?.text}`.includes(SLACK.homeNotShown));
    });
    expect(lost).toEqual([]);
    expect(app.slack.standing().filter(({ text }) => `${text}`.includes('went wrong'))).toEqual([]);
  });

  it.each(['files.getUploadURLExternal', 'files.completeUploadExternal'])(
    'of %s: whoever wanted a picture learns of it, and what it shows',
    async (files) => {
      app = await running();
      await app.slash(PLANKS);
      await app.slack.until(() => app.slack.responded.length === 1);
      const lost = await lostUnder(files, async (_user, error) => {
        refuse(error, ({ method }) => method === files);
        const before = app.slack.responded.length;
        await app.press('Plan');
        return comes(() =>
          app.slack.responded.slice(before).some(({ body }) => /^Slack didn’t take[\s\S]*Plan of/.test(`${body.text}`)),
        );
      });
      expect(lost).toEqual([]);
    },
  );
});

describe('what reaches nobody comes with the next request', () => {
  /** Refuses every way there is, does something, and asks something else when Slack is back. */
  async function missed(doing: () => Promise<unknown>): Promise<readonly string[]> {
    refuse('channel_not_found', ({ method }) => method.startsWith('chat.'));
    closed();
    const before = app.slack.standing().length;
    const faults = app.faults.length;
    await doing();
    while (app.faults.length === faults) await settled();
    await settled();
    open();
    await app.slash('tape 3 + 4');
    await app.slack.until(() => app.slack.standing().length >= before + 3);
    await settled();
    return app.slack.standing().slice(before).map(lead);
  }

  it.each([
    ['an answer', 'tape 1 + 2', TAPE],
    ['a question back', PLANKS.replace('planks', 'plnaks'), 'There’s no command'],
    ['a refusal', 'I smell gas', 'This comes first'],
  ])('%s', async (_what, text, words) => {
    app = await running();
    expect(await missed(() => app.slash(text))).toEqual(['3 + 4 = 7"', MISSED, expect.stringContaining(words)]);
  });

  it.each([
    ['a section', 'Safety', 'Safety'],
    ['a picture', 'Plan', 'Slack didn’t take the file'],
    ['a file', 'Everything as a file', 'Slack didn’t take the file'],
    ['another answer', 'Lay it half', 'Buy'],
  ])('%s', async (_what, label, words) => {
    app = await running();
    await app.slash(PLANKS);
    await app.slack.until(() => app.slack.standing().length === 1);
    const came = await missed(() => app.press(label));
    expect(came.slice(0, 3)).toEqual(['3 + 4 = 7"', MISSED, expect.stringContaining(words)]);
  });

  it('a sentence of ours, and words on a form that is too old', async () => {
    app = await running();
    const old = [{ type: 'button', action_id: 'gone.1', block_id: 'b', value: 'x' }];
    const where = { channel: { id: 'C1' }, container: { type: 'message', message_ts: '1.1', is_ephemeral: true } };
    expect(await missed(() => app.interact({ type: 'block_actions', actions: old, ...where }))).toEqual([
      '3 + 4 = 7"',
      MISSED,
      SLACK.old,
    ]);
    const view = { type: 'modal', id: 'V1', hash: 'h', private_metadata: '', state: { values: {} } };
    const more = [{ type: 'button', action_id: 'fields', block_id: 'b' }];
    const came = await missed(() => app.interact({ type: 'block_actions', container: INSIDE, view, actions: more }));
    expect(came).toEqual(['3 + 4 = 7"', MISSED, SLACK.formStale]);
  });

  it('all that was missed, the oldest first, each once', async () => {
    app = await running();
    refuse('channel_not_found', ({ method }) => method.startsWith('chat.'));
    closed();
    for (const text of ['tape 1 + 2', PLANKS.replace('planks', 'plnaks')]) {
      const faults = app.faults.length;
      await app.slash(text);
      while (app.faults.length === faults) await settled();
      await settled();
    }
    open();
    await app.slash('tape 3 + 4');
    await app.slack.until(() => app.slack.standing().length === 5);
    await app.slash('tape 4 + 4');
    await app.slack.until(() => app.slack.standing().length === 6);
    expect(app.slack.standing().map(lead)).toEqual([
      '3 + 4 = 7"',
      MISSED,
      TAPE,
      MISSED,
      expect.stringContaining('There’s no command'),
      '4 + 4 = 8"',
    ]);
  });

  it('the invitation of a helper, whose messages are closed to the app', async () => {
    app = await running({ flat: true });
    refuse('messages_tab_disabled', ({ args }) => args.channel === 'U02BOBBOB1');
    await app.slash('project share shopping list with <@U02BOBBOB1|bob>');
    await app.slack.until(() => app.slack.responded.length === 2);
    await settled();
    open();
    await app.slash('tape 3 + 4', { user_id: 'U02BOBBOB1' });
    await app.slack.until(() => app.slack.responded.length === 5);
    expect(app.slack.responded.slice(2).map(({ body }) => lead(body))).toEqual([
      '3 + 4 = 7"',
      MISSED,
      expect.stringMatching(/^You were given the shopping list/),
    ]);
  });
});

describe('a token that is gone', () => {
  it.each(TOKEN_ERRORS)('by %s: who asks by command is answered, and told what is to be done', async (error) => {
    app = await running({ ports: { address: () => 'https://floorhand.example' } });
    refuse(error, ({ method }) => !method.startsWith('oauth'));
    const faults = app.faults.length;
    await dm('U1', 'tape 1 + 2');
    while (app.faults.length === faults) await settled();
    await settled();
    await app.slash('tape 3 + 4');
    await app.slack.until(() => app.slack.responded.length === 4);
    expect(app.slack.responded.map(({ body }) => lead(body))).toEqual([
      '3 + 4 = 7"',
      MISSED,
      TAPE,
      INSTALL.lost('https://floorhand.example/slack/install'),
    ]);
    open();
    await dm('U1', 'tape 4 + 4');
    await app.slack.until(() => stands('U1', '4 + 4 = 8"'));
  });
});

describe('the Home tab that Slack refuses', () => {
  it('is said once a day to whoever opens it', async () => {
    app = await running({ flat: true });
    refuse('not_enabled', ({ method }) => method === 'views.publish');
    const opened = () => app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await opened();
    await app.slack.until(() => app.slack.standing().length === 1);
    await opened();
    await app.slack.until(() => calls('views.publish').length === 2);
    await settled();
    expect(app.slack.standing().map(lead)).toEqual([SLACK.homeNotShown]);
  });

  it('for its size is shown in short, with its undo', async () => {
    app = await running({ flat: true });
    app.slack.refuse(({ method, args }) =>
      method === 'views.publish' && JSON.stringify(args.view).includes('checkboxes') ? 'view_too_large' : undefined,
    );
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await app.slack.until(() => calls('views.publish').length === 2);
    const view = calls('views.publish')[1]?.args.view;
    expect(wordsOf(view)).toMatch(/^Upstairs flat: 5 rooms[\s\S]*project show/);
    expect(pressables(view).map(({ text }) => text?.text)).toContain('Undo the last change');
    expect(app.slack.standing()).toEqual([]);
  });

  it('still shows its cautions, by message where no form opens', async () => {
    app = await running({ flat: true });
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await app.slack.until(() => calls('views.publish').length === 1);
    refuse('expired_trigger_id', ({ method }) => method === 'views.open');
    const here = { channel: undefined, response_url: undefined, view: { type: 'home' } };
    await app.press('Safety', here);
    await app.slack.until(() => app.slack.standing().length === 1);
    expect(wordsOf(app.slack.standing()[0])).toMatch(/Safety[\s\S]*asbestos/i);
  });
});

it('keeps what was missed with the answers of an account, which are deleted with it', async () => {
  app = await running();
  refuse('channel_not_found', ({ method }) => method.startsWith('chat.'));
  closed();
  const faults = app.faults.length;
  await app.slash(PLANKS.replace('planks', 'plnaks'));
  while (app.faults.length === faults) await settled();
  await settled();
  const account = accountKey({ platform: 'slack', id: 'U1', workspace: 'T1' });
  expect(await app.kept.get(`answers:${account}`)).toBe(await app.kept.get(`missed:${account}`));
});
