/** Checks everything the bot needs before it starts; changes nothing. */

import { dirname } from 'node:path';
import { keyFlaw, slackIsConfigured, slackLacks } from '../platforms/slack/settings.ts';
import { lookAtStore, type StoreLook } from '../storage/look.ts';
import { StoreUnusable } from '../storage/types.ts';
import { type Config, configDoubts, dataFolder, type Environment, readConfig } from './config.ts';
import {
  applicationOf,
  clockFinding,
  discordFindings,
  doubt,
  type Finding,
  fault,
  folderFinding,
  inviteLink,
  nodeFinding,
  ok,
  portFinding,
  slackFindings,
} from './doctor-machine.ts';
import { chatsAreConfigured } from './platforms.ts';

// Checks the tokens with Discord and Slack; read-only.

const DISCORD = 'https://discord.com/api';
const SLACK = 'https://slack.com/api';
/** Milliseconds for one response. */
const PATIENCE = 10_000;

/** What they say about each token, and their clock next to ours. */
export async function onlineFindings({ discord, slack }: Config, now: () => number): Promise<readonly Finding[]> {
  const found: Finding[] = [];
  if (discord.token !== '') found.push(...(await askDiscord(discord, now)));
  const tokens = [
    ['auth.test', slack.botToken, 'bot token'],
    ['apps.connections.open', slack.appToken, 'app-level token'],
  ] as const;
  for (const [method, token, what] of tokens)
    if (token !== '') found.push(await askSlack(`${slack.api ?? SLACK}/${method}`, token, what));
  return found;
}

async function askDiscord(
  { token, publicKey, api = DISCORD }: Config['discord'],
  now: () => number,
): Promise<readonly Finding[]> {
  const about = 'Discord says';
  const requested = await got(`${api}/v10/applications/@me`, { headers: { authorization: `Bot ${token}` } });
  if (!requested)
    return [doubt(about, 'nothing: it cannot be reached', 'Look at the network, or at FLOORHAND_DISCORD_API.')];
  const { status, body, date } = requested;
  if (status === 401)
    return [fault(about, 'it does not know the bot token', 'Reset the token in the developer portal.')];
  if (status !== 200) return [doubt(about, `status ${status}`, 'Try again in a while.')];
  const clock = Number.isNaN(date) ? [] : [clockFinding(now(), { of: 'Discord', clock: date })];
  const other = publicKey !== '' && body.verify_key !== publicKey.toLowerCase();
  if (other) return [fault(about, 'the public key is another', 'Copy FLOORHAND_DISCORD_PUBLIC_KEY again.'), ...clock];
  return [ok(about, 'the token is known'), ...clock];
}

async function askSlack(url: string, token: string, what: string): Promise<Finding> {
  const about = 'Slack says';
  const requested = await got(url, { method: 'POST', headers: { authorization: `Bearer ${token}` } });
  if (!requested)
    return doubt(about, 'nothing: it cannot be reached', 'Look at the network, or at FLOORHAND_SLACK_API.');
  if (requested.body.ok === true) return ok(about, `the ${what} is known`);
  const why = typeof requested.body.error === 'string' ? requested.body.error : `status ${requested.status}`;
  return fault(about, `the ${what} is refused: ${why}`, 'Install the app again, and copy the token it gives.');
}

interface Got {
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
  /** Milliseconds since 1970 by the other side's clock; NaN if it didn't say. */
  readonly date: number;
}

async function got(url: string, init: RequestInit): Promise<Got | undefined> {
  try {
    const response = await fetch(url, { ...init, signal: AbortSignal.timeout(PATIENCE) });
    const body: unknown = await response.json().catch(() => ({}));
    const date = Date.parse(response.headers.get('date') ?? '');
    return { status: response.status, body: isFields(body) ? body : {}, date };
  } catch {
    return undefined;
  }
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/**
 * Why it can't be reached, by Node's error code, SQLSTATE (PostgreSQL, appendix A) or the first word of a Redis error.
 */
const WHY: Readonly<Record<string, string>> = {
  ECONNREFUSED: 'nothing listens at that host and port',
  ENOTFOUND: 'no such host is known',
  EAI_AGAIN: 'the name of the host cannot be looked up just now',
  ETIMEDOUT: 'the host does not answer',
  ECONNRESET: 'the connection was cut',
  Lost: 'it takes the connection and does not answer',
  '28P01': 'it refuses the user or the password',
  '28000': 'it refuses the user or the password',
  '3D000': 'it has no such database',
  '53300': 'it has too many connections already',
  '57P03': 'it is just starting',
  WRONGPASS: 'it refuses the user or the password',
  NOAUTH: 'it wants a password',
  ERR: 'it refuses what it was given, such as a password where it has none',
  NOPERM: 'the user may not do what is needed',
  EACCES: 'this user may not read it',
};

/** Whether the project store responds, and its clock next to ours. */
async function storeFindings(
  { store: url, data }: { readonly store: string; readonly data: string },
  environment: Environment,
  now: () => number,
): Promise<readonly Finding[]> {
  const folder = dataFolder(data, environment);
  const about = 'Store';
  const place = url === '' ? [await folderFinding('Data folder', folder, 'FLOORHAND_DATA')] : [];
  const of = url === '' ? 'the data folder' : url.startsWith('postgres') ? 'Postgres' : 'Redis';
  let look: StoreLook;
  try {
    look = await lookAtStore({ url, folder });
  } catch (cause) {
    if (cause instanceof StoreUnusable) {
      const [said = '', ...todo] = cause.message.split('\n');
      return [...place, fault(about, said, todo.join(' ')), clockFinding(now())];
    }
    const code = codeOf(cause);
    const todo =
      url === ''
        ? 'Let this user read it, or set FLOORHAND_DATA to another folder.'
        : 'Start it, or mend FLOORHAND_STORE: host, port, user, password, database.';
    const why = WHY[code] === undefined ? code : `${code}: ${WHY[code]}`;
    return [...place, fault(about, `${of} cannot be looked into (${why})`, todo), clockFinding(now())];
  }
  const { doubts, made, clock, file } = look;
  const held = file && `${of} is sound: ${file.texts} texts, ${file.pages} pages`;
  return [
    ...place,
    ok(about, held ?? `${of} answers; ${made ? 'projects are kept there' : 'nothing is kept there yet'}`),
    ...(url === '' && made ? [backupFinding(look, now())] : []),
    ...doubts.map((said) => doubt(about, said, 'src/storage/README.md says why.')),
    clockFinding(now(), clock === undefined ? undefined : { of, clock }),
  ];
}

/** Days after which a backup is old: one is made each day that floorhand runs. */
const OLD_BACKUP = 2;

function backupFinding({ backup }: StoreLook, now: number): Finding {
  const about = 'Backup';
  if (!backup) return doubt(about, 'there is none yet', 'It is made by itself when floorhand runs, once a day.');
  const { path, made, flaw } = backup;
  const said = `${path}, made ${new Date(made).toISOString()}`;
  if (flaw !== undefined) return doubt(about, `${path} cannot be used: ${flaw}`, 'Make one: npm run backup -- FILE.');
  if (now - made > OLD_BACKUP * 86_400_000)
    return doubt(about, said, 'It is old. One is made each day that floorhand runs; or: npm run backup -- FILE.');
  return ok(about, said);
}

/** Node's code, Redis' word or the error's class. Never the message, which may contain the address and its password. */
function codeOf(cause: unknown): string {
  if (!(cause instanceof Error)) return 'unknown';
  if ('code' in cause && cause.code !== undefined) return String(cause.code);
  // Node tried several addresses of one host.
  if (cause instanceof AggregateError && cause.errors.length > 0) return codeOf(cause.errors[0]);
  const [, word] = /^(WRONGPASS|NOAUTH|NOPERM|ERR)\b/.exec(cause.message) ?? [];
  return word ?? cause.name;
}

export interface DoctorTerms {
  readonly node: string;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Whether to check the tokens with Discord and Slack. */
  readonly online: boolean;
  /** Checks the font, pictures and workers. */
  readonly works?: () => Promise<readonly Finding[]>;
}

/** In the order in which they are best fixed. Never rejects. */
export async function findings(
  environment: Environment,
  { node, now, online, works = worksOrWhyNot }: DoctorTerms,
): Promise<readonly Finding[]> {
  const first = [nodeFinding(node), ...settingsFindings(environment)];
  const config = configOf(environment);
  if (!config) return [...first, ...(await works())];
  const { slack, discord } = config;
  const chats = chatsAreConfigured(config);
  const given = {
    given: slackIsConfigured(slack),
    lacks: slackIsConfigured(slack) ? slackLacks(slack) : [],
    key: keyFlaw(slack.key),
  };
  return [
    ...first,
    ok('Runs as', chats ? 'the bot, without the terminal' : 'the terminal: no chat is set up'),
    ...discordFindings(discord),
    ...slackFindings(slack, given),
    ...(await storeFindings(config, environment, now)),
    ...(await placeFindings(config, chats)),
    ...(await works()),
    ...(online ? await onlineFindings(config, now) : []),
    ...inviteFindings(config),
  ];
}

/** Loaded only now, so that a missing package doesn't prevent the other checks. */
async function worksOrWhyNot(): Promise<readonly Finding[]> {
  try {
    const { worksFindings } = await import('./doctor-works.ts');
    return await worksFindings();
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    return [fault('Installed', `something is missing (${code})`, 'Install again from nothing: npm ci.')];
  }
}

function settingsFindings(environment: Environment): readonly Finding[] {
  const about = 'Settings';
  try {
    readConfig(environment);
  } catch (cause) {
    const lines = cause instanceof Error ? cause.message.split('\n').slice(1) : [String(cause)];
    return lines.map((line) => fault(about, line, 'README.md has all settings in a table.'));
  }
  const doubts = configDoubts(environment);
  if (doubts.length > 0)
    return doubts.map((said) => doubt(about, said, 'Unset it, or look for its new name in README.md.'));
  return [ok(about, 'all can be read')];
}

function configOf(environment: Environment): Config | undefined {
  try {
    return readConfig(environment);
  } catch {
    return undefined;
  }
}

/** The terminal's folders, or the bot's addresses. */
async function placeFindings(config: Config, chats: boolean): Promise<readonly Finding[]> {
  const { history, pictures, http, metrics, address } = config;
  if (!chats) {
    const kept = history === '' ? [] : [await folderFinding('History', dirname(history), 'FLOORHAND_HISTORY')];
    return [await folderFinding('Pictures', pictures, 'FLOORHAND_PICTURES'), ...kept];
  }
  const link = 'Set FLOORHAND_ADDRESS to the https address that people reach it by.';
  return [
    await portFinding('HTTP', http, 'FLOORHAND_PORT'),
    ...(metrics.at ? [await portFinding('Metrics', metrics.at, 'FLOORHAND_METRICS')] : []),
    address === '' ? doubt('Address', 'links of share pages lead to this machine only', link) : ok('Address', address),
  ];
}

function inviteFindings({ discord }: Config): readonly Finding[] {
  const application = applicationOf(discord);
  return discord.token === '' || application === '' ? [] : [ok('Invite link', inviteLink(application))];
}
