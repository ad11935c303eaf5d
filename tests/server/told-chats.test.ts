/** What is told of chats: which of terminal and bot it makes, and what is lacking, before anything is opened. */

import { describe, expect, it } from 'vitest';
import { readConfig } from '../../src/server/config.ts';
import { chatsAreConfigured, chatsLack } from '../../src/server/platforms.ts';

const KEY = Buffer.alloc(32, 7).toString('base64');
const one = { FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-1', FLOORHAND_SLACK_APP_TOKEN: 'xapp-1' };
const many = {
  FLOORHAND_SLACK_CLIENT_ID: 'id',
  FLOORHAND_SLACK_CLIENT_SECRET: 'secret',
  FLOORHAND_SLACK_STATE_SECRET: 'state',
  FLOORHAND_SLACK_SIGNING_SECRET: 'signing',
};

describe('chats', () => {
  it.each<[Readonly<Record<string, string>>, boolean, readonly RegExp[]]>([
    [{}, false, []],
    [{ FLOORHAND_STORE: 'redis://cache', FLOORHAND_KEY: 'short' }, false, []],
    [{ FLOORHAND_DISCORD_TOKEN: 'a.b.c' }, true, []],
    [{ FLOORHAND_DISCORD_APPLICATION: '42' }, true, [/^Discord: set FLOORHAND_DISCORD_TOKEN/]],
    [{ FLOORHAND_DISCORD_PUBLIC_KEY: 'ab'.repeat(32) }, true, [/^Discord: set FLOORHAND_DISCORD_TOKEN/]],
    [one, true, []],
    [{ ...one, FLOORHAND_KEY: 'short' }, true, [/^Slack: FLOORHAND_KEY is no 32 bytes.*openssl/]],
    [{ FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-1' }, true, [/^Slack: set FLOORHAND_SLACK_APP_TOKEN.*SIGNING_SECRET/]],
    [many, true, [/^Slack: set FLOORHAND_KEY/]],
    [{ ...many, FLOORHAND_KEY: `${KEY},${KEY}` }, true, []],
    [
      { FLOORHAND_SLACK_BOT_TOKEN: 'xoxb-1', FLOORHAND_DISCORD_APPLICATION: '42', FLOORHAND_KEY: 'short' },
      true,
      [/^Discord/, /^Slack: set/, /^Slack: FLOORHAND_KEY/],
    ],
  ])('of %j: told %s, lacking as said', (environment, given, lacks) => {
    const config = readConfig(environment);
    expect(chatsAreConfigured(config)).toBe(given);
    expect(chatsLack(config)).toEqual(lacks.map((lack) => expect.stringMatching(lack)));
  });
});
