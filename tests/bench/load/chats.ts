/** Both chats on loopback, with people who ask in them: by signed HTTP to any of several processes, or by the gateway and Socket Mode. */

import { generateKeyPairSync, sign } from 'node:crypto';
import { commands } from '../../../commands/all.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import { SLACK } from '../../../src/text/chat-text.ts';
import { slash } from '../../discord/interactions.ts';
import { field } from '../../discord/json-field.ts';
import { type Loopback as Discord, discordLoopback } from '../../discord/loopback.ts';
import { type Loopback as Slack, loopback as slackLoopback } from '../../slack/loopback.ts';
import { signature } from '../../slack/signature.ts';
import { type AnsweredRequest, Asking, type Person } from './asked.ts';
import type { Environment } from './bot-process.ts';

/** How long somebody waits for an answer before they give up, ms. */
const PATIENCE = 60_000;
const SECRET = 'a signing secret of the loopback';
/** What comes beside an answer. */
const BESIDE: readonly string[] = [SLACK.pictureIntro, SLACK.picturesSent, SLACK.fileIntro];

export interface Chats {
  readonly discord: Discord;
  readonly slack: Slack;
  /** What a bot's environment must tell to be in these chats. */
  readonly environment: Environment;
  /** Where requests go, the next process in turn first. */
  reach(urls: readonly string[]): void;
  /** Asks, and resolves with the first answer, or when nobody takes it or answers. */
  ask(person: Person, line: string): Promise<AnsweredRequest>;
  /** Waits until no answer came for so many milliseconds. */
  quiet(milliseconds: number): Promise<void>;
  close(): Promise<void>;
}

/** The chats. With `connected` the bot connects to them; else they send it requests. */
export async function bothChats({ connected }: { readonly connected: boolean }): Promise<Chats> {
  const asking = new Asking();
  const discord = await discordLoopback({ check: false, keep: 10 });
  discord.onRequest(({ token, body, kind }, status) => {
    if (token === undefined || status >= 300) return;
    // A defer says that the bot has it, and is no answer.
    if (kind === 'callback' && field(body, 'type') === 5) asking.taken(token);
    else if (kind === 'callback' || kind === 'edit') asking.heard(token, field(body, 'data') ?? body);
    // Behind an answer comes the rest of it; where there is none, why there is none.
    else if (kind === 'follow-up') asking.heardFirst(token, body);
  });
  // By person: the response address of their ask, once it took no answer; then answers go to them by other ways.
  const closed = new Map<string, string>();
  const addresses = new Map<string, string>();
  const slack = await slackLoopback({
    heard(given, status) {
      if ('path' in given) {
        if (status < 300) asking.heard(given.path, given.body);
        else closed.set(addresses.get(given.path) ?? '', given.path);
      } else if (status < 300 && /^chat\.(post|update)/.test(given.method)) {
        // The channel of somebody's direct messages is D before their id, once it is open.
        const path = closed.get(String(given.args.user ?? given.args.channel).replace(/^D/, ''));
        if (path !== undefined && !BESIDE.includes(String(given.args.text))) asking.heard(path, given.args);
      }
    },
  });
  const keys = generateKeyPairSync('ed25519');
  // The last 32 bytes of its DER form are the key itself (RFC 8410).
  const publicKey = keys.publicKey.export({ type: 'spki', format: 'der' }).subarray(-32).toString('hex');
  let urls: readonly string[] = [];
  let turn = 0;
  let [requested, envelopes] = [0, 0];

  /** Sends a request as a balancer does: to the next process, and on to another one where none listens. */
  const post = async (path: string, body: string, headers: Readonly<Record<string, string>>): Promise<string> => {
    let why = 'no process';
    const first = turn++;
    for (let tries = 0; tries < urls.length; tries++) {
      const url = `${urls[(first + tries) % urls.length]}${path}`;
      try {
        const response = await fetch(url, { method: 'POST', body, headers });
        await response.text();
        if (response.ok) return '';
        why = `status ${response.status}`;
        if (response.status !== 503) return why;
      } catch (cause) {
        const code = field((cause as Error).cause, 'code');
        why = String(code ?? cause);
        // One that broke off may have had it: only where none listened is it sent again.
        if (code !== 'ECONNREFUSED') return why;
      }
    }
    return why;
  };

  const discordAsk = async (person: Person, line: string) => {
    const parsed = parseLine(line, commands);
    if (!parsed.ok) throw new Error(`not a line of options: ${line}`);
    const interaction = slash(fullName(parsed.command), Object.fromEntries(parsed.optionTexts), { user: person.id });
    const begun = asking.begin(interaction.token, person, line);
    if (connected) discord.dispatch(interaction);
    else {
      discord.know(interaction);
      const body = JSON.stringify(interaction);
      const stamp = String(Math.floor(Date.now() / 1000));
      const signed = sign(null, Buffer.from(stamp + body), keys.privateKey).toString('hex');
      const headers = { 'x-signature-ed25519': signed, 'x-signature-timestamp': stamp };
      const why = await post('/discord/interactions', body, { 'content-type': 'application/json', ...headers });
      if (why === '') asking.taken(interaction.token);
      else asking.refused(interaction.token, why);
    }
    return begun;
  };

  const slackAsk = async (person: Person, line: string) => {
    requested += 1;
    const response_url = slack.responseUrl();
    const given = { command: '/floorhand', text: line, user_id: person.id, team_id: 'T1', channel_id: 'C1' };
    const payload = { ...given, trigger_id: `TR${process.pid}.${requested}`, response_url };
    const { pathname } = new URL(response_url);
    const begun = asking.begin(pathname, person, line);
    addresses.set(pathname, person.id);
    if (connected) {
      const envelope_id = `e${++envelopes}`;
      await slack.envelope({ envelope_id, type: 'slash_commands', accepts_response_payload: true, payload });
    } else {
      const body = new URLSearchParams(payload).toString();
      const headers = signature(body, SECRET, Math.floor(Date.now() / 1000));
      const type = { 'content-type': 'application/x-www-form-urlencoded' };
      const why = await post('/slack/events', body, { ...type, ...headers });
      if (why === '') asking.taken(pathname);
      else asking.refused(pathname, why);
    }
    return begun;
  };

  return {
    discord,
    slack,
    environment: {
      FLOORHAND_DISCORD_TOKEN: 'loopback-token',
      FLOORHAND_DISCORD_API: discord.api,
      FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-loopback',
      FLOORHAND_SLACK_API: slack.api,
      ...(connected
        ? { FLOORHAND_SLACK_APP_TOKEN: 'xapp-loopback' }
        : { FLOORHAND_DISCORD_PUBLIC_KEY: publicKey, FLOORHAND_SLACK_SIGNING_SECRET: SECRET }),
    },
    reach(given) {
      urls = given;
    },
    async ask(person, line) {
      const begun = await (person.chat === 'discord' ? discordAsk : slackAsk)(person, line);
      let timer: NodeJS.Timeout | undefined;
      const enough = new Promise<void>((resolve) => {
        timer = setTimeout(resolve, PATIENCE);
      });
      await Promise.race([begun.answered, enough]);
      clearTimeout(timer);
      return begun.requested;
    },
    async quiet(milliseconds) {
      await asking.quiet(milliseconds);
      addresses.clear();
      closed.clear();
    },
    async close() {
      await Promise.all([discord.close(), slack.close()]);
    },
  };
}
