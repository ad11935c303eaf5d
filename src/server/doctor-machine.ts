/** What the doctor finds of this machine (Node, writable folders, ports, tokens), and how it reports. Writes nothing. */

import { constants, promises } from 'node:fs';
import { createServer } from 'node:net';
import { dirname, resolve } from 'node:path';
import type { Config } from './config.ts';

/** `doubt`: it runs but may not work properly; `fault`: it doesn't run. */
type Health = 'ok' | 'doubt' | 'fault';

export interface Finding {
  readonly about: string;
  readonly health: Health;
  readonly said: string;
  readonly todo?: string;
}

const MARKS: Readonly<Record<Health, string>> = { ok: 'ok   ', doubt: 'look ', fault: 'FAULT' };

/** One line each, and a summary. */
export function findingsText(findings: readonly Finding[]): string {
  const width = Math.max(...findings.map(({ about }) => about.length));
  const indent = ' '.repeat(MARKS.ok.length + width + 4);
  const lines = findings.flatMap(({ about, health, said, todo }) => [
    `${MARKS[health]}  ${about.padEnd(width)}  ${said}`,
    ...(todo === undefined ? [] : [`${indent}${todo}`]),
  ]);
  return `${[...lines, '', summary(findings)].join('\n')}\n`;
}

function summary(findings: readonly Finding[]): string {
  const count = (health: Health): number => findings.filter((one) => one.health === health).length;
  const [faults, doubts] = [count('fault'), count('doubt')];
  if (faults > 0)
    return `${faults} ${faults === 1 ? 'thing keeps' : 'things keep'} it from running. Nothing was changed.`;
  const looks = doubts === 0 ? '' : ` ${doubts} ${doubts === 1 ? 'thing wants' : 'things want'} a look.`;
  return `It can run.${looks} Nothing was changed.`;
}

/** 1 if anything keeps it from running. */
export function exitCodeOf(findings: readonly Finding[]): 0 | 1 {
  return findings.some(({ health }) => health === 'fault') ? 1 : 0;
}

export function ok(about: string, said: string): Finding {
  return { about, health: 'ok', said };
}

export function doubt(about: string, said: string, todo: string): Finding {
  return { about, health: 'doubt', said, todo };
}

export function fault(about: string, said: string, todo: string): Finding {
  return { about, health: 'fault', said, todo };
}

/** The oldest Node version that works (package.json). */
const OLDEST = [20, 19] as const;

export function nodeFinding(version: string): Finding {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [oldest, least] = OLDEST;
  if (major > oldest || (major === oldest && minor >= least)) return ok('Node', version);
  return fault('Node', version, `Install Node ${oldest}.${least} or newer; 24 is what it is tried with most.`);
}

/** Whether a folder can be written to, or created if it doesn't exist. */
export async function folderFinding(about: string, folder: string, variable: string): Promise<Finding> {
  let there = resolve(folder);
  try {
    for (;;) {
      const found = await promises.stat(there).catch((cause: NodeJS.ErrnoException) => {
        if (cause.code === 'ENOENT') return undefined;
        throw cause;
      });
      if (found?.isDirectory()) break;
      if (found) return fault(about, `${there} is no folder`, `Set ${variable} to a folder.`);
      if (dirname(there) === there) throw new Error('no folder');
      there = dirname(there);
    }
    await promises.access(there, constants.W_OK | constants.X_OK);
  } catch {
    return fault(about, `${folder} cannot be written to`, `Let this user write to it, or set ${variable} to another.`);
  }
  return ok(about, there === resolve(folder) ? folder : `${folder}, which will be made`);
}

export async function portFinding(
  about: string,
  at: { readonly host: string; readonly port: number },
  variable: string,
): Promise<Finding> {
  const where = `${at.host}:${at.port}`;
  const code = await new Promise<string>((done) => {
    const server = createServer();
    server.once('error', (cause: NodeJS.ErrnoException) => done(cause.code ?? 'unknown'));
    server.listen(at, () => server.close(() => done('')));
  });
  if (code === '') return ok(about, `${where} is free`);
  if (code === 'EADDRINUSE')
    return doubt(about, `${where} is in use`, `Fine if the bot runs already; else set ${variable} to another.`);
  const why = code === 'EACCES' ? 'not allowed to this user' : `not to be had (${code})`;
  return fault(about, `${where} is ${why}`, `Set ${variable} to another, such as one above 1024.`);
}

/** Milliseconds of clock skew to warn about: Slack and Discord signatures are refused after a few minutes. */
const SKEW = 30_000;
/** A clock before this date must be wrong. */
const BEFORE = Date.UTC(2026, 0, 1);

export function clockFinding(now: number, other?: { readonly of: string; readonly clock: number }): Finding {
  const about = 'Clock';
  const said = new Date(now).toISOString();
  const todo = 'Let the machine keep its time by NTP: what chats sign is refused when it is minutes off.';
  if (now < BEFORE) return fault(about, `${said} is long gone`, todo);
  if (!other) return ok(about, said);
  const apart = Math.round(Math.abs(now - other.clock) / 1000);
  if (Math.abs(now - other.clock) > SKEW) return fault(about, `${apart} s apart from the clock of ${other.of}`, todo);
  return ok(about, `${said}, as ${other.of} has it`);
}

// Whether tokens look right and belong to the same application. Makes no requests.

const PORTAL = 'Copy it again from the application’s page in Discord’s developer portal';
const SLACK_PAGE = 'Copy it again from the app’s settings at Slack';

/**
 * The application's id: set, or decoded from the first part of the bot token, which is the id in base64 (known from
 * use).
 */
export function applicationOf({ token, application }: Config['discord']): string {
  if (application !== '') return application;
  const id = Buffer.from(token.split('.')[0] ?? '', 'base64url').toString('latin1');
  return /^\d{15,22}$/.test(id) ? id : '';
}

export function discordFindings(discord: Config['discord']): readonly Finding[] {
  const { token, publicKey, application } = discord;
  const about = 'Discord';
  if (token === '') {
    const half = publicKey !== '' || application !== '';
    if (!half) return [ok(about, 'not set up')];
    return [fault(about, 'the bot token is missing', 'Set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord.')];
  }
  const parts = token.split('.');
  const id = applicationOf({ ...discord, application: '' });
  const findings: Finding[] = [];
  if (parts.length !== 3 || id === '' || parts.some((part) => !/^[\w-]+$/.test(part)))
    findings.push(
      fault(about, 'the bot token does not look like one (three parts with dots)', `${PORTAL}, under Bot.`),
    );
  else if (application !== '' && application !== id)
    findings.push(
      fault(about, 'the bot token is of another application', 'Set the token and the id of one application.'),
    );
  if (application === '')
    findings.push(
      doubt(
        about,
        'the application’s id is not set',
        'Set FLOORHAND_DISCORD_APPLICATION for npm run discord:register.',
      ),
    );
  const how = publicKey === '' ? 'by its gateway' : 'by signed HTTP at /discord/interactions';
  return findings.length > 0 ? findings : [ok(about, `the token looks right; ${how}`)];
}

/** What the bot asks for in a server, by the bits that Discord's documents give; without any of them it still answers commands. */
const PERMISSIONS = {
  viewChannel: 1n << 10n,
  sendMessages: 1n << 11n,
  attachFiles: 1n << 15n,
  createPrivateThreads: 1n << 36n,
  sendMessagesInThreads: 1n << 38n,
  sendPolls: 1n << 49n,
  pinMessages: 1n << 51n,
};

/** The link that adds the bot to a server. */
export function inviteLink(application: string): string {
  const link = new URL('https://discord.com/oauth2/authorize');
  link.searchParams.set('client_id', application);
  link.searchParams.set('scope', 'bot applications.commands');
  link.searchParams.set('permissions', String(Object.values(PERMISSIONS).reduce((all, one) => all | one)));
  return link.href;
}

/** `lacks`: what is missing to start; `key`: what is wrong with the key, if anything. */
export function slackFindings(
  slack: Config['slack'],
  {
    given,
    lacks,
    key,
  }: { readonly given: boolean; readonly lacks: readonly string[]; readonly key: string | undefined },
): readonly Finding[] {
  const about = 'Slack';
  if (!given) return [ok(about, 'not set up')];
  const { botToken, appToken, signingSecret } = slack;
  const findings: Finding[] = lacks.map((lack) => fault(about, 'something is missing', `Set ${lack}.`));
  if (key !== undefined && slack.key !== '')
    findings.push(fault(about, key, 'Set FLOORHAND_KEY to what this prints: openssl rand -base64 32'));
  // Known from use; Slack doesn't guarantee these formats.
  if (botToken !== '' && !/^xoxb-\d+-(?:\d+-)?\w+$/.test(botToken))
    findings.push(doubt(about, 'the bot token has an unusual form', `${SLACK_PAGE}, under OAuth & Permissions.`));
  if (appToken !== '' && !/^xapp-\d-\w+-\d+-\w+$/.test(appToken))
    findings.push(doubt(about, 'the app-level token has an unusual form', `${SLACK_PAGE}, under Basic Information.`));
  if (signingSecret !== '' && !/^[0-9a-f]{32}$/.test(signingSecret))
    findings.push(doubt(about, 'the signing secret has an unusual form', `${SLACK_PAGE}, under Basic Information.`));
  const http = signingSecret !== '';
  const manifest = http ? 'deploy/slack-manifest-http.yaml' : 'deploy/slack-manifest.yaml';
  if (findings.length > 0) return findings;
  return [ok(about, `${http ? 'by HTTP at /slack/events' : 'by Socket Mode'}; the app is made from ${manifest}`)];
}
