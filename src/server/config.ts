/** The configuration, read from the environment and secret files; reports every error at once. */

import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { distance } from 'fastest-levenshtein';
import type { z } from 'zod';
import type { DiscordConfig, SlackSettings } from '../platforms/platform.ts';
import { settingFacts, settings } from './environment.ts';

// Settings from environment variables, with secrets from files, and variables that match no setting.

export type Environment = Readonly<Record<string, string | undefined>>;

/** Settings as texts, and errors that each start with the variable's name. */
interface ReadLine {
  readonly given: Readonly<Record<string, string>>;
  readonly faults: readonly string[];
  /** Variables that have no effect and do no harm. */
  readonly doubts: readonly string[];
}

const NOT_OURS = /^FLOORHAND_(TEST_\w+|REQUIRE_SERVICES)$/;
/** Letters that may differ for a name to count as a typo of a setting; fewer in a short name. */
const SLIP = 2;

/** An empty variable counts as not set. */
function settingsFromEnvironment(environment: Environment): ReadLine {
  const facts = settingFacts();
  const given: Record<string, string> = {};
  const faults: string[] = [];
  const doubts: string[] = [];
  for (const { name, secret } of facts) {
    const value = environment[name] ?? '';
    const file = secret ? (environment[`${name}_FILE`] ?? '') : '';
    if (value !== '' && file !== '') faults.push(`${name}: set twice, here and in ${name}_FILE; unset one of them`);
    else if (file !== '') {
      const read = contentOf(file);
      if ('why' in read) faults.push(`${name}_FILE: the file ${file} ${read.why}`);
      else given[name] = read.text;
    } else if (value !== '') given[name] = value;
  }
  const names = facts.flatMap(({ name, secret }) => (secret ? [name, `${name}_FILE`] : [name]));
  for (const [name, value] of Object.entries(environment)) {
    if (!name.startsWith('FLOORHAND_') || names.includes(name) || NOT_OURS.test(name) || !value) continue;
    if (name.endsWith('_FILE') && names.includes(name.slice(0, -5))) {
      faults.push(`${name}: only secrets are read from files; set ${name.slice(0, -5)} itself`);
      continue;
    }
    const near = names.find((one) => distance(one, name) <= slipOf(one));
    if (near) faults.push(`${name}: there is no such setting; you may mean ${near}`);
    else doubts.push(`${name}: there is no such setting, and nothing reads it`);
  }
  return { given, faults, doubts };
}

function slipOf(name: string): number {
  return Math.min(SLIP, Math.max(1, Math.floor((name.length - 'FLOORHAND_'.length) / 4)));
}

/** Without the newline that editors add. */
function contentOf(file: string): { readonly text: string } | { readonly why: string } {
  try {
    const text = readFileSync(file, 'utf8').replace(/\r?\n$/, '');
    return text === '' ? { why: 'is empty' } : { text };
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    const said: Readonly<Record<string, string>> = {
      ENOENT: 'is not there',
      EACCES: 'may not be read by this user',
      EISDIR: 'is a folder',
    };
    return { why: said[code] ?? `cannot be read (${code})` };
  }
}

/** What the operator has chosen. */
export interface Config {
  readonly units: 'imperial' | 'metric';
  readonly decimal: '.' | ',';
  readonly currency: string;
  /** The terminal's history file; empty for none. */
  readonly history: string;
  /** Folder for pictures in the terminal's answers. */
  readonly pictures: string;
  /** Address of the project database; empty to use the data folder. */
  readonly store: string;
  /** Empty for the system's default. */
  readonly data: string;
  /** Where the HTTP server listens. */
  readonly http: { readonly host: string; readonly port: number };
  /** Public address of the HTTP server, without a trailing slash; empty if unknown. */
  readonly address: string;
  readonly log: 'silent' | 'error' | 'warn' | 'info' | 'debug';
  /** Where metrics can be read: on a port of their own, and on the HTTP server with a token; nowhere without either. */
  readonly metrics: { readonly at?: { readonly host: string; readonly port: number }; readonly token: string };
  readonly limits: Limits;
  readonly discord: DiscordConfig;
  readonly slack: SlackSettings;
}

/** Limits per person, per server and per request. */
interface Limits {
  readonly asksPerMinute: number;
  readonly serverAsksPerMinute: number;
  /** 0: as many as the machine can handle. */
  readonly workers: number;
  /** Searches that may wait, in total and per person. */
  readonly queue: number;
  readonly queuePerPerson: number;
  /** Seconds and megabytes per search. */
  readonly askSeconds: number;
  readonly askMegabytes: number;
}

/** Empty variables count as not set. Throws an Error that names every mistake but no secret. */
export function readConfig(environment: Environment): Config {
  const { given, faults } = settingsFromEnvironment(environment);
  const result = settings.safeParse(given);
  const issues = result.error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? [];
  if (!result.success || faults.length > 0)
    throw new Error(`The configuration cannot be read.\n${[...issues, ...faults].join('\n')}`);
  return configOf(result.data);
}

/** Variables that nothing reads, one sentence each. */
export function configDoubts(environment: Environment): readonly string[] {
  return settingsFromEnvironment(environment).doubts;
}

/** Every secret, including the secret parts of an address: what no log may contain. */
export function secretsOf(environment: Environment): readonly string[] {
  const { given } = settingsFromEnvironment(environment);
  const whole = settingFacts().flatMap(({ name, secret }) => (secret ? (given[name] ?? []) : []));
  const passwords = whole.flatMap((one) => (URL.canParse(one) ? passwordsOf(new URL(one)) : []));
  const keys = (given.FLOORHAND_KEY ?? '').split(',');
  return [...new Set([...whole, ...passwords, ...keys])].filter((one) => one.length >= 4);
}

function passwordsOf({ password }: URL): readonly string[] {
  try {
    return [password, decodeURIComponent(password)];
  } catch {
    return [password];
  }
}

function configOf(read: z.output<typeof settings>): Config {
  return {
    units: read.FLOORHAND_UNITS,
    decimal: read.FLOORHAND_DECIMAL,
    currency: read.FLOORHAND_CURRENCY,
    history: read.FLOORHAND_HISTORY,
    pictures: read.FLOORHAND_PICTURES,
    store: read.FLOORHAND_STORE,
    data: read.FLOORHAND_DATA,
    http: { host: read.FLOORHAND_HOST, port: read.FLOORHAND_PORT },
    address: read.FLOORHAND_ADDRESS,
    log: read.FLOORHAND_LOG,
    metrics: {
      ...(read.FLOORHAND_METRICS ? { at: read.FLOORHAND_METRICS } : {}),
      token: read.FLOORHAND_METRICS_TOKEN,
    },
    limits: {
      asksPerMinute: read.FLOORHAND_ASKS_PER_MINUTE,
      serverAsksPerMinute: read.FLOORHAND_SERVER_ASKS_PER_MINUTE,
      workers: read.FLOORHAND_WORKERS,
      queue: read.FLOORHAND_QUEUE,
      queuePerPerson: read.FLOORHAND_QUEUE_PER_PERSON,
      askSeconds: read.FLOORHAND_ASK_SECONDS,
      askMegabytes: read.FLOORHAND_ASK_MEGABYTES,
    },
    discord: {
      token: read.FLOORHAND_DISCORD_TOKEN,
      publicKey: read.FLOORHAND_DISCORD_PUBLIC_KEY,
      application: read.FLOORHAND_DISCORD_APPLICATION,
      guild: read.FLOORHAND_DISCORD_GUILD,
      ...(read.FLOORHAND_DISCORD_SHARDS ? { shards: read.FLOORHAND_DISCORD_SHARDS } : {}),
      ...(read.FLOORHAND_DISCORD_API ? { api: read.FLOORHAND_DISCORD_API } : {}),
    },
    slack: {
      botToken: read.FLOORHAND_SLACK_BOT_TOKEN,
      appToken: read.FLOORHAND_SLACK_APP_TOKEN,
      signingSecret: read.FLOORHAND_SLACK_SIGNING_SECRET,
      clientId: read.FLOORHAND_SLACK_CLIENT_ID,
      clientSecret: read.FLOORHAND_SLACK_CLIENT_SECRET,
      stateSecret: read.FLOORHAND_SLACK_STATE_SECRET,
      key: read.FLOORHAND_KEY,
      ...(read.FLOORHAND_SLACK_API ? { api: read.FLOORHAND_SLACK_API } : {}),
    },
  };
}

/** The folder chosen, or `floorhand` in the user's data home (XDG base directories; LOCALAPPDATA on Windows). */
export function dataFolder(chosen: string, environment: Readonly<Record<string, string | undefined>>): string {
  if (chosen !== '') return chosen;
  const { XDG_DATA_HOME: given = '', LOCALAPPDATA: local = '' } = environment;
  // The specification says to ignore relative paths.
  if (isAbsolute(given)) return join(given, 'floorhand');
  if (isAbsolute(local)) return join(local, 'floorhand');
  return join(homedir(), '.local', 'share', 'floorhand');
}
