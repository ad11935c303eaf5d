/** The configuration, read from the environment: every fault told at once. */

import { z } from 'zod';

/** An address that is told tokens: by https, or on this machine. */
const serviceAddress = z
  .string()
  .default('')
  .refine((told) => told === '' || isServiceAddress(told), 'an https address, or one of this machine by http');

const configuration = z.object({
  FLOORHAND_UNITS: z.enum(['imperial', 'metric']).default('imperial'),
  FLOORHAND_DECIMAL: z.enum(['.', ',']).default('.'),
  FLOORHAND_CURRENCY: z
    .string()
    .regex(/^[A-Z]{3}$/, 'an ISO 4217 code such as USD')
    .default('USD'),
  FLOORHAND_HISTORY: z.string().default(''),
  FLOORHAND_PICTURES: z.string().default('pictures'),
  FLOORHAND_STORE: z
    .string()
    .regex(/^(|postgres(ql)?:\/\/.+|rediss?:\/\/.+)$/, 'empty, postgres://… or redis://…')
    .default(''),
  FLOORHAND_DATA: z.string().default(''),
  FLOORHAND_HOST: z.string().default('127.0.0.1'),
  FLOORHAND_PORT: z
    .string()
    .regex(/^\d{1,5}$/, 'a port such as 3000')
    .default('3000')
    .transform(Number)
    .refine((port) => port <= 65535, 'a port such as 3000'),
  FLOORHAND_KEY: z.string().default(''),
  FLOORHAND_DISCORD_TOKEN: z.string().default(''),
  FLOORHAND_DISCORD_PUBLIC_KEY: z
    .string()
    .regex(/^(|[0-9a-f]{64})$/i, 'the application’s public key, 64 hexadecimal digits')
    .default(''),
  FLOORHAND_DISCORD_APPLICATION: z.string().regex(/^\d*$/, 'the application’s id, digits only').default(''),
  FLOORHAND_DISCORD_GUILD: z.string().regex(/^\d*$/, 'a server’s id, digits only').default(''),
  FLOORHAND_DISCORD_SHARDS: z
    .string()
    .default('')
    .transform((text, context) => {
      if (text === '') return undefined;
      const [, first = '', last = first, of = ''] = /^(\d{1,4})(?:-(\d{1,4}))?\/(\d{1,4})$/.exec(text) ?? [];
      const shards = { first: Number(first), last: Number(last), of: Number(of) };
      if (first !== '' && shards.first <= shards.last && shards.last < shards.of) return shards;
      context.addIssue({ code: 'custom', message: 'the shards of this process and how many there are, such as 0-3/8' });
      return z.NEVER;
    }),
  FLOORHAND_DISCORD_API: serviceAddress,
  FLOORHAND_SLACK_BOT_TOKEN: z
    .string()
    .regex(/^(|xoxb-.+)$/, 'a bot token, which begins with xoxb-')
    .default(''),
  FLOORHAND_SLACK_APP_TOKEN: z
    .string()
    .regex(/^(|xapp-.+)$/, 'an app-level token, which begins with xapp-')
    .default(''),
  FLOORHAND_SLACK_SIGNING_SECRET: z.string().default(''),
  FLOORHAND_SLACK_CLIENT_ID: z.string().default(''),
  FLOORHAND_SLACK_CLIENT_SECRET: z.string().default(''),
  FLOORHAND_SLACK_STATE_SECRET: z.string().default(''),
  FLOORHAND_SLACK_API: serviceAddress,
});

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
  /** Where the HTTP server listens, when a chat needs one. */
  readonly http: { readonly host: string; readonly port: number };
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

/** Reads the configuration; empty variables count as not set. Throws an Error that names every fault. */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const told = Object.fromEntries(
    Object.entries(environment).filter(([, value]) => value !== undefined && value !== ''),
  );
  const result = configuration.safeParse(told);
  if (!result.success) {
    const faults = result.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    throw new Error(`The configuration cannot be read.\n${faults.join('\n')}`);
  }
  const read = result.data;
  return {
    units: read.FLOORHAND_UNITS,
    decimal: read.FLOORHAND_DECIMAL,
    currency: read.FLOORHAND_CURRENCY,
    history: read.FLOORHAND_HISTORY,
    pictures: read.FLOORHAND_PICTURES,
    store: read.FLOORHAND_STORE,
    data: read.FLOORHAND_DATA,
    http: { host: read.FLOORHAND_HOST, port: read.FLOORHAND_PORT },
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

function isServiceAddress(told: string): boolean {
  if (!URL.canParse(told)) return false;
  const { protocol, hostname, search, hash } = new URL(told);
  const here = ['localhost', '127.0.0.1', '[::1]'].includes(hostname);
  return (protocol === 'https:' || (protocol === 'http:' && here)) && search === '' && hash === '';
}
