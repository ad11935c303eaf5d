/** The bot as whoever runs it starts it: a process of its own, with Discord and Slack on loopback. */

import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { type Loopback as Discord, discordLoopback } from '../discord/loopback.ts';
import { type Loopback as Slack, loopback as slackLoopback } from '../slack/loopback.ts';
import { signature } from '../slack/signature.ts';

const MAIN = fileURLToPath(
  new URL(import.meta.url.includes('/dist/') ? '../../src/main.js' : '../../dist/src/main.js', import.meta.url),
);
const FORM = 'application/x-www-form-urlencoded';

export interface BotTerms {
  readonly data: string;
  readonly discordToken: string;
  readonly slackToken: string;
  readonly signingSecret: string;
  readonly more?: Readonly<Record<string, string>>;
}

export interface BotProcess {
  readonly child: ChildProcess;
  readonly discord: Discord;
  readonly slack: Slack;
  /** Milliseconds from the start of the process until it was ready. */
  readonly startTook: number;
  /** Where its HTTP server and its metrics are. */
  readonly http: string;
  readonly metrics: string;
  /** All that it wrote, on standard output and standard error. */
  written(): string;
  lines(): readonly Readonly<Record<string, unknown>>[];
  /** Resolves once it has told that state; rejects when it ends without. */
  until(state: string): Promise<void>;
  /** A slash command, signed as Slack signs it; the status of what came back. */
  slash(text: string, more?: Readonly<Record<string, string>>): Promise<number>;
  /** Resolves with the exit code, or the signal that ended it. */
  readonly ended: Promise<number | string>;
  /** Ends it at once, where it still runs, and the loopbacks. */
  close(): Promise<void>;
}

/** Starts one, and resolves once it is ready. Rejects when it ends before. */
export async function botProcess(terms: BotTerms): Promise<BotProcess> {
  const [discord, slack] = await Promise.all([discordLoopback({ check: false, keep: 2000 }), slackLoopback()]);
  const own = Object.entries(process.env).filter(([name]) => !name.startsWith('FLOORHAND_'));
  const began = performance.now();
  const child = spawn(process.execPath, [MAIN], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...Object.fromEntries(own),
      FLOORHAND_DATA: terms.data,
      FLOORHAND_PORT: '0',
      FLOORHAND_METRICS: '0',
      FLOORHAND_DISCORD_TOKEN: terms.discordToken,
      FLOORHAND_DISCORD_API: discord.api,
      FLOORHAND_SLACK_BOT_TOKEN: terms.slackToken,
      FLOORHAND_SLACK_SIGNING_SECRET: terms.signingSecret,
      FLOORHAND_SLACK_API: slack.api,
      ...terms.more,
    },
  });
  const ended = new Promise<number | string>((resolve) =>
    child.once('exit', (code, signal) => resolve(code ?? signal ?? 'lost')),
  );
  const parts: string[] = [];
  const lines: Readonly<Record<string, unknown>>[] = [];
  let seen: () => void = () => {};
  child.stdout.on('data', (part) => parts.push(String(part)));
  createInterface({ input: child.stderr }).on('line', (line) => {
    parts.push(`${line}\n`);
    if (!line.startsWith('{')) return;
    lines.push(JSON.parse(line));
    seen();
  });
  const state = (name: string) => lines.find((line) => line.state === name);
  const until = async (name: string): Promise<void> => {
    const given = new Promise<void>((resolve) => {
      const before = seen;
      seen = () => {
        before();
        if (state(name)) resolve();
      };
      seen();
    });
    if ((await Promise.race([given, ended])) !== undefined && !state(name))
      throw new Error(`the bot ended before it was ${name}: ${parts.join('')}`);
  };
  const stop = async (): Promise<void> => {
    child.kill('SIGKILL');
    await ended;
    await Promise.all([discord.close(), slack.close()]);
  };
  try {
    await until('connected');
  } catch (cause) {
    await stop();
    throw cause;
  }
  const http = `http://127.0.0.1:${state('listening')?.port}`;
  let permissions = 0;
  return {
    child,
    discord,
    slack,
    startTook: performance.now() - began,
    http,
    metrics: `http://127.0.0.1:${state('metrics')?.port}`,
    written: () => parts.join(''),
    lines: () => lines,
    until,
    async slash(text, more = {}) {
      const body = new URLSearchParams({
        command: '/floorhand',
        text,
        user_id: 'U1',
        team_id: 'T1',
        channel_id: 'C1',
        trigger_id: `TR${++permissions}`,
        response_url: slack.responseUrl(),
        ...more,
      }).toString();
      const stamp = Math.floor(Date.now() / 1000);
      const headers = { 'content-type': FORM, ...signature(body, terms.signingSecret, stamp) };
      const answered = await fetch(`${http}/slack/events`, { method: 'POST', body, headers });
      await answered.text();
      return answered.status;
    },
    ended,
    close: stop,
  };
}
