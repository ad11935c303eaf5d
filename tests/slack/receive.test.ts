/** What people do in Slack, through the real Bolt app against Slack on loopback. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { fullName, headlineOf, listed } from '../../src/input/command-shape.ts';
import { picturesAlone, pressables, type Running, running, shown, wordsOf } from './running.ts';

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

describe('the slash command', () => {
  it('answers the asker alone, at once acknowledged with nothing', async () => {
    const response = await app.slash("tape 15' - 2 x 4'");
    expect([response.status, await response.text()]).toEqual([200, '']);
    const [message] = await messages(1);
    expect(message).toMatchObject({ response_type: 'ephemeral', replace_original: false });
    expect(wordsOf(message)).toContain(`= 7'`);
    expect(app.faults).toEqual([]);
  });

  it('lays planks: the brief, then the picture by its upload, and buttons for sections and other patterns', async () => {
    await app.slash(PLANKS);
    const [message] = await messages(1);
    expect(message?.text).toBe(HEADLINE);
    const blocks = (message?.blocks ?? []) as { type: string }[];
    expect(blocks.slice(0, 3).map(({ type }) => type)).toEqual(['rich_text', 'rich_text', 'image']);
    expect(blocks[2]).toMatchObject({ slack_file: { id: 'F000000001' } });
    const upload = app.slack.calls.find(({ method }) => method === 'files.getUploadURLExternal');
    expect(upload?.args.filename).toMatch(/^[a-z0-9-]+\.png$/);
    expect(`${upload?.args.alt_text}`.length).toBeGreaterThan(20);
    expect(app.slack.uploads.get('F000000001')?.length).toBe(8);
    const labels = pressables(message).map(({ text }) => text?.text);
    expect(labels).toEqual(
      expect.arrayContaining(['Safety', 'More', 'Show to channel', 'Turn the rows', 'Everything as a file']),
    );
  });

  it('puts the picture into the direct messages first, where the asker is given it, and says so', async () => {
    await app.slash(PLANKS);
    const [message] = await messages(1);
    expect(picturesAlone(app.slack)).toHaveLength(1);
    expect(picturesAlone(app.slack)[0]).toMatchObject({ channel: 'U1', text: HEADLINE });
    expect(wordsOf(message)).toContain('in our direct messages');
  });

  it('shows the first picture of many rooms, and all of them as files when asked', async () => {
    await app.slash('planks room: 40x60; 30x20; 20x10, plank: 5 x 36, 20 per carton');
    const [message] = await messages(1);
    const types = ((message?.blocks ?? []) as { type: string }[]).map(({ type }) => type);
    expect(types.filter((type) => type === 'image')).toHaveLength(1);
    await app.press('Plan');
    await messages(3);
    const completed = app.slack.calls.filter(({ method }) => method === 'files.completeUploadExternal').slice(1);
    expect(completed.map(({ args }) => args.channel_id)).toEqual(Array.from({ length: 11 }, () => 'DU1'));
  });

  it('reads what a phone sends: curly quotes, entities, tags, non-breaking spaces', async () => {
    await app.slash('planks room: 12’\u00a0x 14’, plank: 6 x 48 in, 10 per carton');
    const [message] = await messages(1);
    expect(message?.text).toBe(HEADLINE);
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
    expect(second?.text).toBe(HEADLINE);
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
      expect(`${message?.text}`.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>')).toBe(
        headline,
      );
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
    expect(second?.text).toMatch(/^Buy \d+ cartons/);
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

  it('open each section to the asker', async () => {
    const [message] = shown(app.slack);
    const sections = pressables(message).filter(({ action_id }) => action_id.startsWith('section.'));
    expect(sections.length).toBeGreaterThan(3);
    await app.press('Safety');
    const [, second] = await messages(2);
    expect(wordsOf(second)).toMatch(/Safety[\s\S]*asbestos/);
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
    const uploads = app.slack.calls.filter(({ method }) => method === 'files.getUploadURLExternal').slice(1);
    expect(uploads.map(({ args }) => `${args.filename}`.split('.')[1])).toEqual(expect.arrayContaining(['txt', 'csv']));
    const texts = uploads.map((_, i) => app.slack.uploads.get(`F${String(i + 2).padStart(9, '0')}`)?.toString());
    expect(texts[0]).toContain(HEADLINE);
    const completed = app.slack.calls.filter(({ method }) => method === 'files.completeUploadExternal').slice(1);
    expect(completed.map(({ args }) => args.channel_id)).toEqual(completed.map(() => 'DU1'));
  });

  it('show it to the channel, with the ask, its picture in a message of the app’s own', async () => {
    await app.press('Show to channel');
    const [, second] = await messages(2);
    expect(second).toMatchObject({ channel: 'C1' });
    expect(((second?.blocks ?? []) as { type: string }[]).filter(({ type }) => type === 'image')).toHaveLength(1);
    expect(wordsOf(second)).toContain(PLANKS);
    expect(pressables(second).map(({ text }) => text?.text)).not.toContain('Show to channel');
    await app.press('Safety', { user: { id: 'U2' } });
    await messages(3);
    expect(wordsOf(app.slack.responded.at(-1)?.body)).toContain('Safety');
  });

  it('are nobody else’s before it is shown', async () => {
    await app.press('Safety', { user: { id: 'U2' } });
    const [, second] = await messages(2);
    expect(wordsOf(second)).toContain('no longer kept, or is not yours');
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
    expect(wordsOf(second)).toContain('no longer kept');
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
    expect(message).toMatchObject({ text: HEADLINE, response_type: 'ephemeral' });
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
    expect(message?.text).toBe(HEADLINE);
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
    const opened = app.slack.calls.find(({ method }) => method === 'views.open');
    const fields = pressables(opened?.args.view);
    expect(fields).toHaveLength(Object.keys(command?.options.shape ?? {}).length);
    expect(fields.filter((field) => !('placeholder' in field))).toEqual([]);
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
    expect(message?.text).toMatch(/^Buy \d+ cartons/);
    expect(message?.response_type).toBe('ephemeral');
  });

  it('opens a form from anywhere', async () => {
    await app.interact({ type: 'shortcut', callback_id: 'start' });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
  });

  it('answers a mention in a thread to the asker, in the thread', async () => {
    await app.event({
      type: 'app_mention',
      user: 'U1',
      channel: 'C1',
      thread_ts: '5.5',
      ts: '5.6',
      text: `<@UBOT> ${PLANKS}`,
    });
    const [message] = await messages(1);
    expect(app.slack.calls.find(({ method }) => method === 'chat.postEphemeral')?.args).toMatchObject({
      channel: 'C1',
      user: 'U1',
      thread_ts: '5.5',
      text: HEADLINE,
    });
    expect(message?.text).toBe(HEADLINE);
  });

  it('reads what is written under a picture', async () => {
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', subtype: 'file_share' };
    await app.event({ ...dm, text: '', files: [] });
    await app.event({ ...dm, text: 'nail hit this wire and it sparks', files: [] });
    const [message] = await messages(1);
    expect(message?.text).toMatch(/^This comes first: /);
  });

  it('answers direct messages in their channel, and no message of a bot, an edit or elsewhere', async () => {
    const dm = { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1' };
    await app.event({ ...dm, text: 'x', bot_id: 'B2' });
    await app.event({ ...dm, text: 'x', subtype: 'message_changed' });
    await app.event({ ...dm, text: 'x', channel: 'C1', channel_type: 'channel' });
    await app.event({ ...dm, text: 'x', user: 'UBOT' });
    await app.event({ ...dm, text: `/floorhand \`${PLANKS}\`` });
    await app.event({ ...dm, text: `\`${PLANKS}\`` });
    const both = await messages(2);
    expect(both.map(({ channel }) => channel)).toEqual(['D1', 'D1']);
    expect(both.at(-1)?.text).toBe(HEADLINE);
  });
});
