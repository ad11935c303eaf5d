/** The configuration: standards, what is read, and every fault at once. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readConfig } from '../../src/host/config.ts';

const STANDARD = {
  units: 'imperial',
  decimal: '.',
  currency: 'USD',
  history: '',
  pictures: 'pictures',
  store: '',
  data: '',
  http: { host: '127.0.0.1', port: 3000 },
  discord: { token: '', publicKey: '', application: '', guild: '' },
  slack: {
    botToken: '',
    appToken: '',
    signingSecret: '',
    clientId: '',
    clientSecret: '',
    stateSecret: '',
    key: '',
  },
};

describe('the configuration', () => {
  it('needs nothing set, and an empty variable counts as not set', () => {
    expect(readConfig({})).toEqual(STANDARD);
    expect(readConfig({ FLOORHAND_UNITS: '', FLOORHAND_HISTORY: undefined, HOME: '/home/somebody' })).toEqual(STANDARD);
  });

  it('is read', () => {
    const environment = {
      FLOORHAND_UNITS: 'metric',
      FLOORHAND_DECIMAL: ',',
      FLOORHAND_CURRENCY: 'EUR',
      FLOORHAND_HISTORY: 'asks.txt',
      FLOORHAND_PICTURES: 'plans',
      FLOORHAND_STORE: 'postgres://bot@db/floors',
      FLOORHAND_DATA: '/srv/floors',
      FLOORHAND_HOST: '0.0.0.0',
      FLOORHAND_PORT: '8080',
      FLOORHAND_KEY: 'a2V5',
      FLOORHAND_DISCORD_TOKEN: 'secret',
      FLOORHAND_DISCORD_PUBLIC_KEY: 'ab'.repeat(32),
      FLOORHAND_DISCORD_APPLICATION: '42',
      FLOORHAND_DISCORD_GUILD: '43',
      FLOORHAND_DISCORD_SHARDS: '0-3/8',
      FLOORHAND_DISCORD_API: 'https://proxy.example/api',
      FLOORHAND_SLACK_API: 'http://127.0.0.1:8080/api/',
      FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-1',
      FLOORHAND_SLACK_APP_TOKEN: 'xapp-1',
      FLOORHAND_SLACK_SIGNING_SECRET: 'signing',
      FLOORHAND_SLACK_CLIENT_ID: 'id',
      FLOORHAND_SLACK_CLIENT_SECRET: 'secret',
      FLOORHAND_SLACK_STATE_SECRET: 'state',
    };
    const told = {
      units: 'metric',
      decimal: ',',
      currency: 'EUR',
      history: 'asks.txt',
      pictures: 'plans',
      store: 'postgres://bot@db/floors',
      data: '/srv/floors',
      http: { host: '0.0.0.0', port: 8080 },
      discord: {
        token: 'secret',
        publicKey: 'ab'.repeat(32),
        application: '42',
        guild: '43',
        shards: { first: 0, last: 3, of: 8 },
        api: 'https://proxy.example/api',
      },
      slack: {
        botToken: 'xoxb-1',
        appToken: 'xapp-1',
        signingSecret: 'signing',
        clientId: 'id',
        clientSecret: 'secret',
        stateSecret: 'state',
        key: 'a2V5',
        api: 'http://127.0.0.1:8080/api/',
      },
    };
    expect(readConfig(environment)).toEqual(told);
  });

  it('names every fault at once', () => {
    const bad = { FLOORHAND_UNITS: 'Metric', FLOORHAND_DECIMAL: 'comma', FLOORHAND_CURRENCY: 'usd' };
    expect(() => readConfig(bad)).toThrow(
      /cannot be read\.\nFLOORHAND_UNITS: .*imperial.*metric.*\nFLOORHAND_DECIMAL: .*\nFLOORHAND_CURRENCY: .*ISO 4217/,
    );
  });

  it.each(['0x50', '-1', '65536', '3000.5', 'http'])('refuses %s for a port', (port) =>
    expect(() => readConfig({ FLOORHAND_PORT: port })).toThrow(/FLOORHAND_PORT: a port/),
  );

  it('tells a token in the wrong place', () => {
    const swapped = { FLOORHAND_SLACK_BOT_TOKEN: 'xapp-1', FLOORHAND_SLACK_APP_TOKEN: 'xoxb-1' };
    expect(() => readConfig(swapped)).toThrow(/BOT_TOKEN: .*xoxb-[^\n]*\n.*APP_TOKEN: .*xapp-/);
  });

  it.each(['', 'postgres://db/x', 'postgresql://db/x', 'redis://cache', 'rediss://cache:6380/1'])(
    'takes “%s” for a store',
    (address) => expect(readConfig({ FLOORHAND_STORE: address }).store).toBe(address),
  );

  it.each(['mysql://db/x', 'postgres', '/srv/floors', 'http://db'])('refuses %s for a store', (address) =>
    expect(() => readConfig({ FLOORHAND_STORE: address })).toThrow(/FLOORHAND_STORE: .*postgres:/),
  );

  it.each(['http://proxy.example/api', 'ftp://127.0.0.1', 'proxy', 'https://proxy.example/?to=discord'])(
    'tells tokens to no %s',
    (address) => {
      const both = { FLOORHAND_DISCORD_API: address, FLOORHAND_SLACK_API: address };
      expect(() => readConfig(both)).toThrow(/DISCORD_API: an https address.*\n.*SLACK_API: an https address/);
    },
  );

  it.each(['8', '3-1/8', '0-8/8', '4/4', 'all', '-1/2'])('takes %s for no shards', (text) => {
    expect(() => readConfig({ FLOORHAND_DISCORD_SHARDS: text })).toThrow(/DISCORD_SHARDS: .*0-3\/8/);
  });

  it('of the example file is the standard one, and the file names every variable', () => {
    const example = readFileSync(new URL('../../.env.example', import.meta.url), 'utf8');
    const variables = Object.fromEntries(
      [...example.matchAll(/^(\w+)=(.*)$/gm)].map(([, name = '', value = '']) => [name, value]),
    );
    expect(readConfig(variables)).toEqual(STANDARD);
    const source = readFileSync(new URL('../../src/host/config.ts', import.meta.url), 'utf8');
    expect(Object.keys(variables).sort()).toEqual([...new Set(source.match(/FLOORHAND_\w+/g))].sort());
  });
});
