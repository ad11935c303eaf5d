/** Slack's raw bodies, signed and taken by the bot's own receiver; whatever it sends to Slack is taken by nobody. */

import { setTimeout as sleep } from 'node:timers/promises';
import { parseLine } from '../../../src/chat/grammar.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import { startSlack } from '../../../src/platforms/slack/start.ts';
import { signature } from '../../slack/signature.ts';
import { bent, type Draw, damaged } from './bend.ts';
import type { Lane, LaneParts } from './lane.ts';

const SECRET = 'fuzz';
const FORM = 'application/x-www-form-urlencoded';
/** Buttons of answers that were sent lately, to be pressed. */
const PRESSABLE = 200;

interface Button {
  readonly action_id: string;
  readonly value: string;
}

/** Takes the place of `fetch`, by which all that the app sends goes: nothing leaves the process. */
export async function slackLane(parts: LaneParts): Promise<Lane> {
  const buttons: Button[] = [];
  globalThis.fetch = async (_, init) => {
    if (typeof init?.body === 'string') note(init.body, buttons);
    return Response.json({ ok: true, ts: '1.1', channel: { id: 'D1' }, message: {}, files: [], ...UPLOADED });
  };
  const wait = (milliseconds: number): Promise<void> => sleep(Math.min(milliseconds, 100), undefined, { ref: false });
  const given = { appToken: '', clientId: '', clientSecret: '', stateSecret: '', key: '' };
  const settings = { ...given, botToken: 'xoxb-fuzz', signingSecret: SECRET, api: 'http://slack.test/api/' };
  const running = await startSlack(settings, {
    ...parts,
    kept: parts.store.kept,
    shared: true,
    holds: async () => true,
    patience: () => new Promise(() => undefined),
    wait,
    now: Date.now,
  });
  const [page] = running.pages;
  if (!page) throw new Error('Slack has no page');
  let sent = 0;
  return {
    name: 'slack',
    async send(line, draw) {
      const { body, type } = bodyOf(line, String(++sent), buttons, parts, draw);
      const bytes = draw.random() < 0.05 ? damaged(Buffer.from(body), draw) : Buffer.from(body);
      const text = new TextDecoder().decode(bytes);
      const secret = draw.random() < 0.01 ? 'another' : SECRET;
      const headers = { 'content-type': type, ...signature(text, secret, Math.floor(Date.now() / 1000)) };
      const response = await page.handle(
        new Request('http://bot/slack/events', { method: 'POST', body: bytes, headers }),
      );
      await response.text();
      return response.status;
    },
    close: () => running.stop(),
  };
}

const UPLOADED = {
  upload_url: 'http://slack.test/upload',
  file_id: 'F1',
  user_id: 'UBOT',
  bot_id: 'B1',
  team_id: 'T1',
};

function note(body: string, buttons: Button[]): void {
  for (const [, action_id = '', value = ''] of body.matchAll(/"action_id":"([^"]+)"[^{}]*"value":"([^"]*)"/g)) {
    buttons.push({ action_id, value });
  }
  if (buttons.length > PRESSABLE) buttons.splice(0, buttons.length - PRESSABLE);
}

function bodyOf(
  line: string,
  id: string,
  buttons: readonly Button[],
  { commands }: LaneParts,
  draw: Draw,
): { readonly body: string; readonly type: string } {
  const user = `U${Math.floor(draw.random() * 300)}`;
  const hook = { response_url: `http://slack.test/respond/${id}`, trigger_id: `T${id}` };
  const bend = (value: unknown): unknown => (draw.random() < 0.25 ? bent(value, draw) : value);
  const interactive = (payload: unknown) => ({
    type: FORM,
    body: new URLSearchParams({ payload: JSON.stringify(bend(payload)) }).toString(),
  });
  const event = (given: object) => ({
    type: 'application/json',
    body: JSON.stringify(
      bend({ type: 'event_callback', team_id: 'T1', event_id: `E${id}`, event_time: 1, event: given }),
    ),
  });
  const place = { team: { id: 'T1' }, channel: { id: 'C1' }, user: { id: user }, ...hook };
  const way = draw.random();
  if (way < 0.5) {
    const slash = { command: '/floorhand', text: line, user_id: user, team_id: 'T1', channel_id: 'C1', ...hook };
    return { type: FORM, body: new URLSearchParams(slash).toString() };
  }
  if (way < 0.6) return event({ type: 'app_mention', user, text: `<@UBOT> ${line}`, channel: 'C1', ts: '1.1' });
  if (way < 0.7) return event({ type: 'message', channel_type: 'im', user, text: line, channel: 'D1', ts: '1.1' });
  if (way < 0.72) return event({ type: 'app_home_opened', tab: 'home', user });
  if (way < 0.82) {
    const button = buttons[Math.floor(draw.random() * buttons.length)] ?? { action_id: 'sources', value: 'none' };
    const container = { type: 'message', message_ts: '1.1', channel_id: 'C1' };
    return interactive({
      type: 'block_actions',
      actions: [{ type: 'button', block_id: 'b', ...button }],
      container,
      ...place,
    });
  }
  if (way < 0.9) {
    const message = { type: 'message', text: line, ts: '1.1' };
    return interactive({ type: 'message_action', callback_id: 'work-out', message, ...place });
  }
  const parsed = parseLine(line, commands);
  const given = parsed.ok ? [...parsed.optionTexts] : [['room', line] as const];
  const values = Object.fromEntries(
    given.map(([option, value]) => [option, { told: { type: 'plain_text_input', value } }]),
  );
  const command = parsed.ok ? fullName(parsed.command) : 'floor planks';
  const view = { id: `V${id}`, hash: id, callback_id: 'ask-form', state: { values }, type: 'modal' };
  const carried = JSON.stringify({ command, where: { user, channel: 'C1' } });
  return interactive({ type: 'view_submission', view: { ...view, private_metadata: carried }, ...place });
}
