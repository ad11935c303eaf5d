/** The configuration, read from the environment and the files of secrets: every fault told at once. */

import type { z } from 'zod';
import { settingFacts, settings } from './settings.ts';
import { type Environment, toldSettings } from './told-settings.ts';

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
  /** What Discord needs; empty where it is not told. */
  readonly discord: {
    readonly token: string;
    /** Told: interactions come by HTTP, signed with this key. */
    readonly publicKey: string;
    /** Where commands are registered, and the one server they are tried in. */
    readonly application: string;
    readonly guild: string;
    readonly shards?: { readonly first: number; readonly last: number; readonly of: number };
    /** Where its REST interface is, if not at its own address: a proxy that keeps many processes to one rate limit. */
    readonly api?: string;
  };
  /** What Slack needs; empty where it is not told. */
  readonly slack: {
    readonly botToken: string;
    readonly appToken: string;
    readonly signingSecret: string;
    readonly clientId: string;
    readonly clientSecret: string;
    readonly stateSecret: string;
    /** Seals the tokens of workspaces in the store; several with commas, the one in use first. */
    readonly key: string;
    /** Where its Web API is, if not at its own address. */
    readonly api?: string;
  };
}

/** What one person, one server and one ask may take. */
export interface Limits {
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
  const { told, faults } = toldSettings(environment);
  const result = settings.safeParse(told);
  const issues = result.error?.issues.map(({ path, message }) => `${path.join('.')}: ${message}`) ?? [];
  if (!result.success || faults.length > 0)
    throw new Error(`The configuration cannot be read.\n${[...issues, ...faults].join('\n')}`);
  return configOf(result.data);
}

/** What the environment tells that nothing reads, a sentence each. */
export function configDoubts(environment: Environment): readonly string[] {
  return toldSettings(environment).doubts;
}

/** Every secret that was told, and the parts of an address that are one: what no log may hold. */
export function secretsOf(environment: Environment): readonly string[] {
  const { told } = toldSettings(environment);
  const whole = settingFacts().flatMap(({ name, secret }) => (secret ? (told[name] ?? []) : []));
  const passwords = whole.flatMap((one) => (URL.canParse(one) ? passwordsOf(new URL(one)) : []));
  const keys = (told.FLOORHAND_KEY ?? '').split(',');
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
