/** The Home tab: useful without a project, and with one it tells what stands. */

import { afterEach, describe, expect, it } from 'vitest';
import { pressables, type Running, running, shown, wordsOf } from './running.ts';

let app: Running;

afterEach(async () => {
  await app.close();
});

async function home(): Promise<unknown> {
  await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' });
  await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.publish'));
  return app.slack.calls.find(({ method }) => method === 'views.publish')?.args.view;
}

describe('the Home tab', () => {
  it('without a project tells how to ask, with forms to start', async () => {
    app = await running();
    const view = await home();
    expect(wordsOf(view)).toContain('/floorhand help');
    // No sample of ours to copy and order by.
    expect(wordsOf(view)).not.toMatch(/\d/);
    expect(pressables(view).length).toBeGreaterThan(3);
    expect(JSON.stringify(view).match(/"style":"primary"/g)).toHaveLength(1);
    await app.press('Start a project', { channel: undefined, response_url: undefined });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    expect(app.slack.calls.at(-1)?.args.view).toMatchObject({ title: { text: 'Project new' } });
    expect(app.faults).toEqual([]);
  });

  it('with one tells its rooms and what is left, and its form needs nothing told again', async () => {
    app = await running({ flat: true });
    const view = await home();
    // The project stands first, its headline as a heading.
    expect((view as { blocks: { type: string }[] }).blocks[0]).toMatchObject({
      type: 'header',
      text: { text: expect.stringMatching(/^Upstairs flat: 5 rooms/) },
    });
    expect(wordsOf(view)).toMatch(/stages done[\s\S]*to buy[\s\S]*is shared[\s\S]*bedroom/i);
    expect(pressables(view).map(({ text }) => text?.text)).not.toContain('Start a project');
    await app.press('Planks for my rooms', { channel: undefined, response_url: undefined });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const opened = app.slack.calls.find(({ method }) => method === 'views.open')?.args.view as {
      blocks: { optional?: boolean }[];
    };
    expect(opened.blocks.filter(({ optional }) => optional === false)).toEqual([]);
    await app.interact({ type: 'view_submission', view: { ...opened, id: 'V1', hash: 'h', state: { values: {} } } });
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(shown(app.slack)[0]).toMatchObject({ channel: 'U1', text: expect.stringMatching(/^Buy \d+ cartons/) });
    expect(app.faults).toEqual([]);
  });

  const views = () => app.slack.calls.filter(({ method }) => method === 'views.publish').map(({ args }) => args.view);
  const here = { channel: undefined, response_url: undefined, view: { type: 'home' } };

  it('has boxes to tick, shows at once what is left, and takes it back', async () => {
    app = await running({ flat: true });
    const view = await home();
    const boxes = pressables(view).filter(({ type }) => type === 'checkboxes');
    expect(boxes).toHaveLength(2);
    await app.press('Clear the room, hall', here);
    await app.slack.until(() => views().length === 2);
    expect(wordsOf(views()[1])).toContain('1 of 44 stages done');
    await app.press('Knife blades', here);
    await app.slack.until(() => views().length === 3);
    expect(wordsOf(views()[2])).toContain('4 things left to buy');
    await app.press('Undo the last change', here);
    await app.slack.until(() => views().length === 4);
    expect(wordsOf(views()[3])).toMatch(/Undone[\s\S]*5 things left to buy/);
    // Nothing of it comes as a message.
    expect(shown(app.slack)).toEqual([]);
    expect(app.faults).toEqual([]);
  });

  it('answers a press over the tab itself, and its cautions too', async () => {
    app = await running({ flat: true });
    await home();
    const answers = () =>
      app.slack.calls.filter(({ method }) => method === 'views.update').map(({ args }) => args.view);
    await app.press('How many cartons?', here);
    await app.slack.until(() => answers().length === 1);
    expect(wordsOf(answers()[0])).toMatch(/^[\s\S]*Buy \d+ cartons/);
    await app.press('Safety', here);
    await app.slack.until(() => answers().length === 2);
    expect(wordsOf(answers()[1])).toMatch(/Safety[\s\S]*asbestos/i);
    expect(shown(app.slack)).toEqual([]);
    expect(app.faults).toEqual([]);
  });

  it('opens a form for what is not worked out yet, with nothing of an example in it', async () => {
    app = await running({ flat: true });
    const view = await home();
    expect(wordsOf(view)).not.toContain('project pick');
    await app.press('Baseboards', here);
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    const opened = app.slack.calls.find(({ method }) => method === 'views.open')?.args.view;
    expect(JSON.stringify(opened)).not.toContain('initial_value');
    expect(app.faults).toEqual([]);
  });

  it('is drawn for its own tab alone', async () => {
    app = await running();
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'messages' });
    await app.slash('tape 1 + 2');
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(app.slack.calls.filter(({ method }) => method === 'views.publish')).toEqual([]);
  });
});

describe('a project that is shared', () => {
  const share = (what: string) => app.slash(`project share ${what} with <@U02BOBBOB1|bob>`);
  const invited = () => app.slack.calls.filter(({ args }) => args.channel === 'U02BOBBOB1').map(({ args }) => args);

  it('is told to its helper once, who opens it by one press', async () => {
    app = await running({ flat: true });
    await share('shopping list');
    await app.slack.until(() => invited().length === 1 && shown(app.slack).length === 2);
    expect(invited()[0]?.text).toMatch(/^You were given the shopping list of “Upstairs flat”/);
    await app.press('Open', { user: { id: 'U02BOBBOB1' }, channel: { id: 'D7' } });
    await app.slack.until(() => app.slack.calls.some(({ args }) => args.channel === 'D7'));
    expect(wordsOf(app.slack.calls.find(({ args }) => args.channel === 'D7')?.args)).toContain('Upstairs flat');
    expect(invited()).toHaveLength(1);
    expect(app.faults).toEqual([]);
  });

  it('is what a helper without a project means', async () => {
    app = await running({ flat: true });
    await share('shopping list');
    await app.slack.until(() => invited().length === 1 && shown(app.slack).length === 2);
    await app.slash('project shopping', { user_id: 'U02BOBBOB1' });
    await app.slack.until(() => shown(app.slack).length === 3);
    expect(app.slack.standing().at(-1)?.text).toMatch(/to buy/i);
  });

  it('whose helper cannot be reached is said to whoever shared it', async () => {
    app = await running({ flat: true });
    app.slack.refuse(({ args }) => (args.channel === 'U02BOBBOB1' ? 'messages_tab_disabled' : undefined));
    await share('shopping list');
    await app.slack.until(() => app.slack.responded.length === 2);
    expect(wordsOf(app.slack.responded[1])).toContain('couldn’t send them a message');
  });
});
