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
    expect(wordsOf(view)).not.toContain('Your project');
    await app.press('Start a project', { channel: undefined, response_url: undefined });
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'views.open'));
    expect(app.slack.calls.at(-1)?.args.view).toMatchObject({ title: { text: 'Project new' } });
    expect(app.faults).toEqual([]);
  });

  it('with one tells its rooms and what is left, and its form needs nothing told again', async () => {
    app = await running({ flat: true });
    const view = await home();
    expect(wordsOf(view)).toMatch(/Your project[\s\S]*bedroom/i);
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

  it('ticks off, and shows at once what is left', async () => {
    app = await running({ flat: true });
    await home();
    await app.press('Done: clear the room, hall', {
      channel: undefined,
      response_url: undefined,
      view: { type: 'home' },
    });
    await app.slack.until(() => app.slack.calls.filter(({ method }) => method === 'views.publish').length === 2);
    expect(wordsOf(app.slack.calls.filter(({ method }) => method === 'views.publish').at(-1)?.args)).toContain(
      '1 of 44 stages done',
    );
    expect(shown(app.slack)[0]).toMatchObject({ channel: 'U1' });
  });

  it('is drawn for its own tab alone', async () => {
    app = await running();
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'messages' });
    await app.slash('tape 1 + 2');
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(app.slack.calls.filter(({ method }) => method === 'views.publish')).toEqual([]);
  });
});
