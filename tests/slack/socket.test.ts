/** Socket Mode, through the real Bolt receiver against a socket on loopback. */

import { afterEach, expect, it } from 'vitest';
import { type Running, running, shown, wordsOf } from './running.ts';

let app: Running;

afterEach(async () => {
  await app.close();
});

const settings = { appToken: 'xapp-1', signingSecret: '' };

function slash(envelope_id: string, text: string, trigger_id = envelope_id): Readonly<Record<string, unknown>> {
  return {
    envelope_id,
    type: 'slash_commands',
    accepts_response_payload: true,
    payload: {
      command: '/floorhand',
      text,
      user_id: 'U1',
      team_id: 'T1',
      channel_id: 'C1',
      trigger_id,
      response_url: app.slack.responseUrl(),
    },
  };
}

it('acknowledges and answers over the socket, and needs no address', async () => {
  app = await running({ settings });
  await app.slack.envelope(slash('e1', 'tape 1 + 2'));
  await app.slack.until(() => shown(app.slack).length === 1);
  expect(app.slack.acknowledged[0]).toMatchObject({ envelope_id: 'e1' });
  expect((await app.post('x')).status).toBe(404);
  expect(app.faults).toEqual([]);
});

it('acts once on what comes again', async () => {
  app = await running({ settings });
  await app.slack.envelope(slash('e1', 'tape 1 + 2', 'TR-same'));
  await app.slack.envelope({ ...slash('e2', 'tape 1 + 2', 'TR-same'), retry_attempt: 1 });
  await app.slack.envelope(slash('e3', 'tape 7 + 7'));
  await app.slack.until(() => wordsOf(shown(app.slack)).includes('7 + 7') && shown(app.slack).length >= 2);
  expect(shown(app.slack)).toHaveLength(2);
  expect(app.slack.acknowledged.map(({ envelope_id }) => envelope_id)).toEqual(['e1', 'e2', 'e3']);
});

it('tells problems of a form over the socket', async () => {
  app = await running({ settings });
  const view = {
    type: 'modal',
    callback_id: 'ask-form',
    id: 'V1',
    hash: 'h',
    private_metadata: JSON.stringify({ command: 'floor planks', where: { user: 'U1' } }),
    state: { values: { room: { told: { type: 'plain_text_input', value: '12 x' } } } },
  };
  await app.slack.envelope({
    envelope_id: 'e1',
    type: 'interactive',
    accepts_response_payload: true,
    payload: { type: 'view_submission', trigger_id: 'TR1', team: { id: 'T1' }, user: { id: 'U1' }, view },
  });
  await app.slack.until(() => app.slack.acknowledged.length === 1);
  expect(app.slack.acknowledged[0]?.payload).toMatchObject({
    response_action: 'errors',
    errors: { room: expect.any(String) },
  });
});
