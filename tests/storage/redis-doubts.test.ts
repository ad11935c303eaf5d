/** What a Redis must be set to, so that it keeps what it acknowledged. */

import { expect, it } from 'vitest';
import { redisDoubts } from '../../src/storage/redis.ts';

const SOUND = { appendonly: 'yes', appendfsync: 'always', maxmemory: '0', 'maxmemory-policy': 'noeviction' };
const requested = (settings: Readonly<Record<string, string>>) => async (name: string) => ({
  [name]: settings[name] ?? '',
});

it.each<[string, Partial<typeof SOUND>, readonly RegExp[]]>([
  ['as it must be', {}, []],
  ['that keeps no file', { appendonly: 'no' }, [/appendonly yes/]],
  ['that flushes each second', { appendfsync: 'everysec' }, [/flushes its file everysec.*appendfsync always/]],
  ['that throws out', { maxmemory: '1000', 'maxmemory-policy': 'allkeys-lru' }, [/noeviction/]],
  ['that could throw out, had it a bound', { 'maxmemory-policy': 'allkeys-lru' }, []],
  ['that refuses when full', { maxmemory: '1000' }, []],
  ['with two things amiss', { appendonly: 'no', maxmemory: '9', 'maxmemory-policy': 'volatile-ttl' }, [/file/, /full/]],
])('a Redis %s', async (_what, settings, expected) => {
  const doubts = await redisDoubts(requested({ ...SOUND, ...settings }));
  expect(doubts).toEqual(expected.map((one) => expect.stringMatching(one)));
});

it('a Redis that does not tell is a doubt; one that does not answer is not asked further', async () => {
  const refusing = async () => Promise.reject(new Error("ERR unknown command 'CONFIG'"));
  expect(await redisDoubts(refusing)).toEqual([expect.stringMatching(/doesn’t show its settings/)]);
  const silent = async () => Promise.reject(new Error('Socket closed unexpectedly'));
  await expect(redisDoubts(silent)).rejects.toThrow('Socket closed');
});
