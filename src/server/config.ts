/** The configuration, read from the environment and secret files; reports every error at once. */

import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { distance } from 'fastest-levenshtein';
import type { z } from 'zod';
import type { DiscordConfig, SlackSettings } from '../platforms/platform.ts';
import { settingFacts, settings } from './environment.ts';

// What the environment tells of settings: secrets out of files, and variables that no setting has.

export type Environment = Readonly<Record<string, string | undefined>>;

/** Settings as texts, and what cannot be read, each in a line that begins with its variable. */
interface ReadLine {
  readonly given: Readonly<Record<string, string>>;
  readonly faults: readonly string[];
  /** What was told and has no use, which hinders nothing. */
  readonly doubts: readonly string[];
}

/** The tests' own. */
const NOT_OURS = /^FLOORHAND_(TEST_\w+|REQUIRE_SERVICES)$/;
/** Letters to change at most for a name to be a slip of a setting's; fewer in a short one. */
const SLIP = 2;

/** Reads variables and the files of secrets; an empty variable counts as not set. */
function settingsFromEnvironment(environment: Environment): ReadLine {
  const facts = settingFacts();
  const given: Record<string, string> = {};
  const faults: string[] = [];
  const doubts: string[] = [];
  for (const { name, secret } of facts) {
    const value = environment[name] ?? '';
    const file = secret ? (environment[`${name}_FILE`] ?? '') : '';
    if (value !== '' && file !== '') faults.push(`${name}: told twice, here and in ${name}_FILE; unset one of them`);
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

/** The text of a secret's file without the line end that editors leave. */
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

/** What whoever runs the bot has chosen. */
export interface Config {
  readonly units: 'imperial' | 'metric';
  readonly decimal: '.' | ',';
  readonly currency: string;
  /** File for the terminal's history; empty for none. */
  readonly history: string;
  /** Folder for the pictures of the terminal's answers. */
  readonly pictures: string;
  /** Address of the server that keeps projects; empty for the data folder. */
  readonly store: string;
  /** The data folder; empty for the one that the system has for it. */
  readonly data: string;
  /** Where the HTTP server listens. */
  readonly http: { readonly host: string; readonly port: number };
  /** The address that people reach the HTTP server by, without a slash at its end; empty where it is not told. */
  readonly address: string;
  readonly log: 'silent' | 'error' | 'warn' | 'info' | 'debug';
  /** Where metrics are read: at a place of their own, and on the HTTP server with a token; nowhere without either. */
  readonly metrics: { readonly at?: { readonly host: string; readonly port: number }; readonly token: string };
  readonly limits: Limits;
  readonly discord: DiscordConfig;
  readonly slack: SlackSettings;
}

/** What one person, one server and one ask may take. */
interface Limits {
  readonly asksPerMinute: number;
  readonly serverAsksPerMinute: number;
  /** Worker threads; 0 for as many as the machine bears. */
  readonly workers: number;
  /** Searches that may wait, of all and of one person. */
  readonly queue: number;
  readonly queuePerPerson: number;
  /** Seconds and megabytes that a search may take. */
  readonly askSeconds: number;
  readonly askMegabytes: number;
}

/** Reads the configuration; empty variables count as not set. Throws an Error that names every fault, and no secret. */
export function readConfig(environment: Environment): Config {
  const { given, faults } = settingsFromEnvironment(environment);
  const result = settings.safeParse(given);
  const issues = result.error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? [];
  if (!result.success || faults.length > 0)
    throw new Error(`The configuration cannot be read.\n${[...issues, ...faults].join('\n')}`);
  return configOf(result.data);
}

/** What the environment tells that nothing reads, a sentence each. */
export function configDoubts(environment: Environment): readonly string[] {
  return settingsFromEnvironment(environment).doubts;
}

/** Every secret that was told, and the parts of an address that are one: what no log may hold. */
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

// Where the data folder is when nobody chose one: where the system has a person's data.

/** The folder chosen, else `floorhand` in the person's data home (XDG base directories; LOCALAPPDATA on Windows). */
export function dataFolder(chosen: string, environment: Readonly<Record<string, string | undefined>>): string {
  if (chosen !== '') return chosen;
  const { XDG_DATA_HOME: given = '', LOCALAPPDATA: local = '' } = environment;
  // The specification has relative paths count as not set.
  if (isAbsolute(given)) return join(given, 'floorhand');
  if (isAbsolute(local)) return join(local, 'floorhand');
  return join(homedir(), '.local', 'share', 'floorhand');
}
