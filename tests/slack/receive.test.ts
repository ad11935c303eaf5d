/** What people do in Slack, through the real Bolt app against Slack on loopback. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { fullName, headlineOf, listed } from '../../src/input/command-shape.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { pressables, type Running, running, shown, wordsOf } from './running.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
const HEADLINE = 'Buy 10 cartons (100 planks): 92 to lay, 3 for mistakes, 5 left over.';

let app: Running;

beforeEach(async () => {
  app = await running();
});

afterEach(async () => {
  await app.close();
});

/** What has been shown when so many messages have. */
async function messages(count: number): Promise<readonly Readonly<Record<string, unknown>>[]> {
  await app.slack.until(() => shown(app.slack).length >= count);
  return shown(app.slack);
}

/** The first line of what stands for a message where no blocks are seen. */
const lead = (message: Readonly<Record<string, unknown>> | undefined): string =>
  `${message?.text}`.split('\n')[0] ?? '';

describe('the slash command', () => {
  it('answers the asker alone, at once acknowledged with nothing', async () => {
    const response = await app.slash("tape 15' - 2 x 4'");
    expect([response.status, await response.text()]).toEqual([200, '']);
    const [message] = await messages(1);
    expect(message).toMatchObject({ response_type: 'ephemeral', replace_original: false });
    expect(wordsOf(message)).toContain(`= 7'`);
    expect(app.faults).toEqual([]);
  });

  it('lays planks: a heading, the brief, one row of controls for all the rest', async () => {
    await app.slash(PLANKS);
    const [message] = await messages(1);
    const blocks = (message?.blocks ?? []) as { type: string }[];
    expect(blocks.map(({ type }) => type)).toEqual(['header', 'rich_text', 'actions']);
    const labels = pressables(message).map(({ text }) => text?.text);
    expect(labels).toEqual(['Laying guide', 'Plan', 'Safety', undefined, undefined, 'Show to channel']);
    const listed = JSON.stringify(pressables(message));
    for (const one of ['Turn the rows', 'Lay it half', 'Everything as a file', 'Change a detail'])
      expect(listed).toContain(one);
  });

  it('sends every picture of many rooms when asked', async () => {
    await app.slash('planks room: 40x60; 30x20; 20x10, plank: 5 x 36, 20 per carton');
    await messages(1);
    await app.press('Plan');
    await messages(3);
    const completed = app.slack.calls.filter(({ method }) => method === 'files.completeUploadExternal');
    expect(completed.map(({ args }) => args.channel_id)).toEqual(Array.from({ length: 11 }, () => 'DU1'));
  });

  it('reads what a phone sends: curly quotes, entities, tags, non-breaking spaces', async () => {
    await app.slash('planks room: 12’\u00a0x 14’, plank: 6 x 48 in, 10 per carton');
    const [message] = await messages(1);
    expect(lead(message)).toBe(HEADLINE);
    await app.slash('tape 1 &lt; 2 &amp;amp; &lt;@U1&gt; <@U2|ann> <#C1|floor> <https://x.example|a link>');
    const [, second] = await messages(2);
    expect(wordsOf(second)).toContain('1 < 2 &amp; <@U1> @ann #floor a link');
  });

  it.each(['', 'help'])('tells how to ask for “%s”', async (text) => {
    await app.slash(text);
    const [message] = await messages(1);
    expect(message?.text).toContain('commands');
  });

  it('says what to type for a wrong word, and asks it when the button is pressed', async () => {
    await app.slash(PLANKS.replace('planks', 'plnaks'));
    const [message] = await messages(1);
    expect(wordsOf(message)).toContain(`/floorhand ${PLANKS}`);
    await app.press('Take the suggestion');
    const [, second] = await messages(2);
    expect(lead(second)).toBe(HEADLINE);
  });

  it('opens the form of a command that only lacks what must be told', async () => {
    await app.slash('planks');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    expect(app.slack.calls.find(({ method }) => method === 'views.open')?.args.view).toMatchObject({
      type: 'modal',
      title: { text: 'Floor planks' },
    });
    expect(shown(app.slack)).toEqual([]);
  });

  it.each([
    'undo',
    'redo',
    'project show',
    'progress',
    'shopping',
    'found',
    'project measure',
    'share',
    'log',
    'spend',
    'project use',
    'project delete',
    'project archive',
    'sheets',
    'project handoff',
    'project rename',
    'what do I still need to buy',
  ])('without a project “%s” opens no form, but says how to start one', async (text) => {
    await app.close();
    const ports = portsInMemory(() => undefined);
    app = await running({ ports: { answer: (request) => answer(request, commands, ports) } });
    await app.slash(text);
    const [message] = await messages(1);
    expect(app.slack.calls.filter(({ method }) => method === 'views.open')).toEqual([]);
    expect(pressables(message).map((one) => one.text?.text)).toContain('Start a project');
    expect(JSON.stringify(message)).not.toContain('Take the suggestion');
    expect(app.slack.standing()).toHaveLength(1);
  });

  it('tells what is lacking where Slack no longer opens a form, with a button that does', async () => {
    app.slack.refuse(({ method }) => (method === 'views.open' ? 'expired_trigger_id' : undefined));
    await app.slash('planks');
    await messages(1);
    app.slack.refuse(() => undefined);
    await app.press('Fill in a form');
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'views.open').length === 2);
  });

  it.each(commands.map((command) => [fullName(command), command.examples[0]] as const))(
    'answers the example of %s as everywhere',
    async (name, example) => {
      const { ask } = example;
      const headline = headlineOf(example, commands);
      // Those of projects want somebody who has one.
      if (name.startsWith('project ')) {
        await app.close();
        app = await running({ flat: true });
      }
      await app.slash(ask);
      const [message] = await messages(1);
      expect(lead(message).replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>')).toBe(headline);
      expect(app.faults).toEqual([]);
    },
  );
});

describe('buttons under an answer', () => {
  beforeEach(async () => {
    await app.slash(PLANKS);
    await messages(1);
  });

  it('show another pattern, chosen from a list', async () => {
    await app.press('Lay it half');
    const [, second] = await messages(2);
    expect(second?.text).toMatch(/^Buy \d+ (?:boxes|cartons)/);
    expect(wordsOf(second)).toContain('half');
  });

  it('open the ask as a form with everything told in it, to change a detail', async () => {
    await app.press('Change a detail');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const opened = app.slack.calls.find(({ method }) => method === 'views.open');
    const initial = pressables(opened?.args.view).flatMap((element) =>
      'initial_value' in element ? [element.initial_value] : [],
    );
    expect(initial).toEqual([`12' x 14'`, '6 x 48 in, 10 per carton']);
  });

  it('open a section in its place, and fold it again', async () => {
    await app.press('Safety');
    await messages(2);
    expect(app.slack.standing()).toHaveLength(1);
    expect(wordsOf(app.slack.standing())).toMatch(/Buy 10 cartons[\s\S]*Safety[\s\S]*asbestos/);
    await app.press('Why this number');
    await messages(3);
    expect(wordsOf(app.slack.standing())).not.toMatch(/Safety\n/);
    await app.press('Back to the short answer');
    await messages(4);
    expect(app.slack.standing()).toHaveLength(1);
    expect(wordsOf(app.slack.standing())).not.toContain('How sure');
    expect(app.faults).toEqual([]);
  });

  it('open one in the thread of an answer that everybody reads', async () => {
    await app.event({ type: 'app_mention', user: 'U1', channel: 'C1', ts: '5.6', text: `<@UBOT> ${PLANKS}` });
    await messages(2);
    const container = { type: 'message', message_ts: '1001.0001', channel_id: 'C1', thread_ts: '5.6' };
    await app.press('Safety', { container });
    await messages(3);
    expect(app.slack.standing().slice(1)).toMatchObject([
      { channel: 'C1', thread_ts: '5.6' },
      { channel: 'C1', thread_ts: '5.6' },
    ]);
    expect(wordsOf(app.slack.standing().at(-1))).toMatch(/Safety[\s\S]*asbestos/);
  });

  it('of answers from before there were sections open what they did', async () => {
    const [message] = shown(app.slack);
    const value = pressables(message).find(({ action_id }) => action_id === 'section.safety')?.value;
    const older = (action_id: string) => ({ actions: [{ type: 'button', action_id, block_id: 'b', value }] });
    await app.press('Safety', older('sources'));
    const [, second] = await messages(2);
    expect(wordsOf(second)).toMatch(/Sources[\s\S]*\((?:published|reported|common practice|from memory)\)/);
    await app.press('Safety', older('section.nothing'));
    const [, , third] = await messages(3);
    expect(wordsOf(third)).toContain('older version');
  });

  it('send everything as files to the direct messages', async () => {
    await app.press('Everything as a file');
    await messages(3);
    const uploads = app.slack.calls.filter(({ method }) => method === 'files.getUploadURLExternal');
    expect(uploads.map(({ args }) => `${args.filename}`.split('.')[1])).toEqual(expect.arrayContaining(['txt', 'csv']));
    const texts = uploads.map((_, i) => app.slack.uploads.get(`F${String(i + 1).padStart(9, '0')}`)?.toString());
    expect(texts[0]).toContain(HEADLINE);
    const completed = app.slack.calls.filter(({ method }) => method === 'files.completeUploadExternal');
    expect(completed.map(({ args }) => args.channel_id)).toEqual(completed.map(() => 'DU1'));
    expect(completed.length).toBeGreaterThan(1);
  });

  it('show it to the channel, with the ask, for everybody to press', async () => {
    await app.press('Show to channel');
    const [, second] = await messages(2);
    expect(second).toMatchObject({ response_type: 'in_channel' });
    expect(wordsOf(second)).toContain(PLANKS);
    expect(pressables(second).map(({ text }) => text?.text)).not.toContain('Show to channel');
    await app.press('Safety', {
      user: { id: 'U2' },
      container: { type: 'message', message_ts: '7.7', channel_id: 'C1', is_ephemeral: false },
    });
    await messages(3);
    expect(wordsOf(app.slack.standing().at(-1))).toContain('Safety');
    expect(app.slack.standing().at(-1)).toMatchObject({ channel: 'C1', thread_ts: '7.7' });
  });

  it('are nobody else’s before it is shown', async () => {
    await app.press('Safety', { user: { id: 'U2' } });
    const [, second] = await messages(2);
    expect(wordsOf(second)).toContain('is gone, or it isn’t yours');
    await app.press('Show to channel', { user: { id: 'U2' } });
    const [, , third] = await messages(3);
    expect(third).toMatchObject({ response_type: 'ephemeral' });
  });

  it('say so when the answer is gone after its week, or the button is of no kind we know', async () => {
    // An answer is kept behind its message: what a button gives of it tells that it is.
    await app.press('Safety');
    await messages(2);
    app.kept.pass(8 * 24 * 3600 * 1000);
    await app.press('Safety');
    const [, , second] = await messages(3);
    expect(wordsOf(second)).toContain('answer is gone');
    const action = { type: 'button', action_id: 'toast.1', block_id: 'b', value: 'x', action_ts: '1' };
    await app.press('Safety', { actions: [action] });
    const [, , , third] = await messages(4);
    expect(wordsOf(third)).toContain('older version');
  });
});

describe('forms', () => {
  /** Fills in the form that was opened last. */
  async function submit(given: Readonly<Record<string, string>>, hash = 'h1'): Promise<Response> {
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const view = app.slack.calls.filter(({ method }) => method === 'views.open').at(-1)?.args.view as object;
    const values = Object.fromEntries(
      Object.entries(given).map(([option, value]) => [option, { told: { type: 'plain_text_input', value } }]),
    );
    return app.interact({ type: 'view_submission', view: { ...view, id: 'V1', hash, state: { values } } });
  }

  it('are answered where they were opened from', async () => {
    await app.slash('planks');
    const response = await submit({ room: "12' x 14'", plank: '6 x 48 in, 10 per carton' });
    expect(await response.text()).toBe('');
    const [message] = await messages(1);
    expect(message).toMatchObject({ response_type: 'ephemeral' });
    expect(lead(message)).toBe(HEADLINE);
  });

  it('tell what cannot be read at its field, and keep what was typed', async () => {
    await app.slash('planks');
    const response = await submit({ room: '12 x', plank: '6 x 48 in, 10 per carton', gap: 'banana' });
    const body = (await response.json()) as { errors: Record<string, string> };
    expect(body).toMatchObject({ response_action: 'errors' });
    expect(Object.keys(body.errors).sort()).toEqual(['gap', 'room']);
    expect(shown(app.slack)).toEqual([]);
    await submit({ room: "12' x 14'", plank: '6 x 48 in, 10 per carton' }, 'h2');
    const [message] = await messages(1);
    expect(lead(message)).toBe(HEADLINE);
  });

  it('are closed at once by an emergency in a field, whatever cannot be read', async () => {
    await app.slash('planks');
    const response = await submit({ room: 'i smell gas in the hall', plank: 'banana' });
    expect(await response.text()).toBe('');
    const [message] = await messages(1);
    expect(message?.text).toMatch(/^This comes first: Leave now, touch no switch/);
  });

  it('open again with everything told', async () => {
    await app.slash('planks room: 12 x 14 x 9, plank: 6 x 48 in, 10 per carton, pattern: half');
    await messages(1);
    await app.press('Fill in a form');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const opened = app.slack.calls.find(({ method }) => method === 'views.open');
    const initial = pressables(opened?.args.view).flatMap((element) =>
      'initial_value' in element ? [element.initial_value] : [],
    );
    expect(initial).toEqual(['12 x 14 x 9', '6 x 48 in, 10 per carton', 'half']);
  });

  it.each(
    listed(commands)
      .filter(({ options }) => Object.keys(options.shape).length > 0)
      .map((command) => [fullName(command)]),
  )('open for %s from the Home tab, with an example in every field', async (name) => {
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.publish'));
    const command = commands.find((one) => fullName(one) === name);
    const label = `${command?.name}: ${command?.summary}`;
    await app.press(label.length > 75 ? `${label.slice(0, 74)}…` : label, {
      channel: undefined,
      response_url: undefined,
    });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const opened = app.slack.calls.find(({ method }) => method === 'views.open')?.args.view as object;
    const count = Object.keys(command?.options.shape ?? {}).length;
    const inputs = (view: unknown) => pressables(view).filter((field) => 'placeholder' in field);
    expect(inputs(opened)).toHaveLength(Math.min(4, count));
    if (count <= 4) return;
    await more(opened);
    const wide = app.slack.calls.find(({ method }) => method === 'views.update')?.args.view;
    expect(inputs(wide)).toHaveLength(count);
    expect(pressables(wide).filter((field) => !('placeholder' in field))).toEqual([]);
  });

  /** Presses “More details” in a form, with what was typed in it. */
  async function more(view: object, values: Readonly<Record<string, unknown>> = {}): Promise<void> {
    await app.interact({
      type: 'block_actions',
      container: { type: 'view', view_id: 'V1' },
      view: { ...view, id: 'V1', hash: 'h0', state: { values } },
      actions: [{ type: 'button', action_id: 'fields', block_id: 'b', action_ts: '1' }],
    });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.update'));
  }

  it('keep what was typed when the other fields are shown, and what is told for fields that are not', async () => {
    await app.slash(
      `planks room: 12 x 14 x 9, plank: 6 x 48 in, 10 per carton, pattern: half, gap: 1/2 in, kerf: 1/8 in`,
    );
    await messages(1);
    await app.press('Fill in a form');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const view = app.slack.calls.find(({ method }) => method === 'views.open')?.args.view as object;
    const told = (value: string) => ({ told: { type: 'plain_text_input', value } });
    const visible = { plank: told('6 x 48 in, 10 per carton'), pattern: told('half') };
    await more(view, { room: told(`12' x 14'`), ...visible });
    const wide = app.slack.calls.find(({ method }) => method === 'views.update')?.args;
    expect(wide).toMatchObject({ view_id: 'V1', hash: 'h0' });
    expect(JSON.stringify(wide)).toMatch(/:"12' x 14'"[\s\S]*"initial_value":"1\/8 in"/);
    await submit({ room: `12' x 14'`, plank: '6 x 48 in, 10 per carton', pattern: 'half' });
    const [, second] = await messages(2);
    expect(wordsOf(second)).toContain('half');
    await app.press('Change a detail');
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'views.open').length === 2);
    expect(JSON.stringify(app.slack.calls.at(-1)?.args.view)).toContain('"initial_value":"1/8 in"');
  });

  it('opened from nowhere in particular say where the answer comes', async () => {
    await app.interact({ type: 'shortcut', callback_id: 'start' });
    const response = await submit({ room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' });
    expect(await response.json()).toMatchObject({ response_action: 'update', view: { type: 'modal' } });
    const [message] = await messages(1);
    expect(message).toMatchObject({ channel: 'U1' });
  });
});

describe('shortcuts, mentions, direct messages', () => {
  it('works out the quantities of somebody’s message, for the one who asks', async () => {
    await app.interact({
      type: 'message_action',
      callback_id: 'work-out',
      channel: { id: 'C1' },
      response_url: app.slack.responseUrl(),
      message: {
        type: 'message',
        user: 'U9',
        ts: '1.1',
        text: 'my bedroom is 11’ by 12’6”, planks are 7x48, 10 in a box. how many?',
      },
    });
    const [message] = await messages(1);
    expect(message?.text).toMatch(/^Buy \d+ boxes/);
    expect(message?.response_type).toBe('ephemeral');
  });

  it('opens a form from anywhere', async () => {
    await app.interact({ type: 'shortcut', callback_id: 'start' });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
  });

  it.each([
    ['in its own thread', {}, '5.6'],
    ['in the thread that it stands in', { thread_ts: '5.5' }, '5.5'],
  ])('answers a mention once, %s, for everybody', async (_where, more, thread_ts) => {
    await app.event({ type: 'app_mention', user: 'U1', channel: 'C1', ts: '5.6', text: `<@UBOT> ${PLANKS}`, ...more });
    await messages(1);
    await app.slash('tape 7 + 7');
    await messages(2);
    expect(app.slack.calls.filter(({ method }) => method.startsWith('chat.'))).toMatchObject([
      { method: 'chat.postMessage', args: { channel: 'C1', thread_ts } },
    ]);
    expect(app.faults).toEqual([]);
  });

  it('answers a mention about somebody’s own project to them alone, when they say so', async () => {
    await app.close();
    app = await running({ flat: true });
    const mention = { type: 'app_mention', user: 'U1', channel: 'C1', ts: '5.6' };
    await app.event({ ...mention, text: '<@UBOT> what do I still need to buy?' });
    const [question] = await messages(1);
    expect(question).toMatchObject({ channel: 'C1', thread_ts: '5.6' });
    expect(wordsOf(question)).toContain('everybody here would read it');
    const container = { type: 'message', message_ts: '1001.0001', channel_id: 'C1', thread_ts: '5.6' };
    await app.press('Use my project', { container });
    await messages(2);
    expect(app.slack.responded.map(({ body }) => body)).toMatchObject([{ response_type: 'ephemeral' }]);
    expect(wordsOf(app.slack.responded)).toMatch(/to buy/i);
    await app.event({ ...mention, text: '<@UBOT> project shopping' });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'chat.postEphemeral'));
    expect(app.faults).toEqual([]);
  });

  it('fills nothing from a project into an answer that everybody reads', async () => {
    await app.close();
    app = await running({ flat: true });
    await app.event({ type: 'app_mention', user: 'U1', channel: 'C1', ts: '5.6', text: '<@UBOT> planks' });
    const [message] = await messages(1);
    expect(message).toMatchObject({ channel: 'C1' });
    expect(JSON.stringify(message)).not.toMatch(/bedroom|living|Upstairs/);
    await app.event({ type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'planks' });
    const [, own] = await messages(2);
    expect(JSON.stringify(own)).toMatch(/bedroom/);
  });

  it.each(['file_share', 'thread_broadcast', 'me_message'])('hears what is written in a %s', async (subtype) => {
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', subtype };
    await app.event({ ...dm, text: 'nail hit this wire and it sparks', files: [] });
    const [message] = await messages(1);
    expect(message?.text).toMatch(/^This comes first: /);
  });

  it('says that it cannot read a picture without words', async () => {
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', subtype: 'file_share' };
    await app.event({ ...dm, text: '', files: [] });
    const [message] = await messages(1);
    expect(message?.text).toMatch(/^I can’t read pictures/);
  });

  it('answers a message anew when its words are changed, and not when only its preview is', async () => {
    const changed = (text: string, before: string) => ({
      type: 'message',
      subtype: 'message_changed',
      channel: 'D1',
      channel_type: 'im',
      ts: '2.1',
      message: { type: 'message', user: 'U1', text, ts: '1.1' },
      previous_message: { type: 'message', user: 'U1', text: before, ts: '1.1' },
    });
    await app.event(changed('tape 1 + 2', 'tape 1 + 2'));
    await app.event(changed('tape 1 + 2', 'tape 1 +'));
    const [message] = await messages(1);
    expect(lead(message)).toBe('1 + 2 = 3"');
    await app.slash('tape 7 + 7');
    expect(await messages(2)).toHaveLength(2);
  });

  it('greets once in the direct messages, with three ways to begin', async () => {
    const opened = { type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'messages' };
    await app.event(opened);
    const [message] = await messages(1);
    expect(message).toMatchObject({ channel: 'D1' });
    expect(pressables(message)).toHaveLength(3);
    await app.event(opened);
    await app.press('Start a project', { channel: { id: 'D1' } });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    expect(shown(app.slack)).toHaveLength(1);
  });

  it('answers direct messages in their channel, and no message of a bot, an edit or elsewhere', async () => {
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1' };
    await app.event({ ...dm, text: 'x', bot_id: 'B2' });
    await app.event({ ...dm, text: 'x', subtype: 'channel_join' });
    await app.event({ ...dm, text: 'x', channel: 'C1', channel_type: 'channel' });
    await app.event({ ...dm, text: 'x', user: 'UBOT' });
    await app.event({ ...dm, text: `/floorhand \`${PLANKS}\`` });
    await app.event({ ...dm, text: `\`${PLANKS}\`` });
    const both = await messages(2);
    expect(both.map(({ channel }) => channel)).toEqual(['D1', 'D1']);
    expect(lead(both.at(-1))).toBe(HEADLINE);
  });
});
