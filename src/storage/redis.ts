/** The Redis back end: one connection for records and for Keyv, every conditional write a script. */

import { once } from 'node:events';
import { createClient, default as KeyvRedis } from '@keyv/redis';
import { type RateLimiterAbstract, RateLimiterRedis } from 'rate-limiter-flexible';
import {
  type CountTerms,
  type Engine,
  type HeldRecord,
  type HeldValue,
  Lost,
  type StoredRecord,
  type StoredRow,
  type Values,
  withinTime,
} from './engine.ts';

// Whether a Redis keeps acknowledged data: on disk before it answers, and never evicted.

/**
 * Sentences on what puts data at risk; `ask` returns a setting by name. Throws what `ask` throws if there is no answer.
 */
export async function redisDoubts(
  ask: (name: string) => Promise<Readonly<Record<string, string>>>,
): Promise<readonly string[]> {
  const settings: Record<string, string> = {};
  try {
    for (const name of ['appendonly', 'appendfsync', 'maxmemory', 'maxmemory-policy'])
      Object.assign(settings, await ask(name));
  } catch (cause) {
    // A managed server may not reveal its settings.
    if (cause instanceof Error && /^(ERR|NOPERM)\b/.test(cause.message))
      return ['This Redis doesn’t show its settings. It must run with appendonly yes, appendfsync always, noeviction.'];
    throw cause;
  }
  const doubts: string[] = [];
  // Redis documentation, “Redis persistence”: only an append-only file that is flushed at every write keeps every
  // write.
  if (settings.appendonly !== 'yes')
    doubts.push('This Redis keeps no append-only file: a restart loses what was acknowledged. Set appendonly yes.');
  else if (settings.appendfsync !== 'always')
    doubts.push(
      `This Redis flushes its file ${settings.appendfsync}: a power cut loses what came last. Set appendfsync always.`,
    );
  if (settings.maxmemory !== '0' && settings['maxmemory-policy'] !== 'noeviction')
    doubts.push('This Redis throws records out when its memory is full. Set maxmemory-policy noeviction.');
  return doubts;
}

// Atomic writes as scripts: condition, record, list of ids, and the write's name.

/** Milliseconds for which a write's name is remembered: longer than any caller keeps checking whether it landed. */
export const REMEMBERED = 3_600_000;

// KEYS: record, write's name, ids of the kind, kinds. ARGV: time to remember, kind, id, then what each needs.

/** ARGV 4: revision, 5: text. */
export const CREATE = `
if redis.call('EXISTS', KEYS[1]) == 1 then return 0 end
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SADD', KEYS[3], ARGV[3])
redis.call('SADD', KEYS[4], ARGV[2])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

/** ARGV 4: revision, 5: text, 6: the required current revision. */
export const PUT = `
if redis.call('HGET', KEYS[1], 'rev') ~= ARGV[6] then return 0 end
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

export const REMOVE = `
if redis.call('DEL', KEYS[1]) == 0 then return 0 end
redis.call('SREM', KEYS[3], ARGV[3])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

/** Overwrites. ARGV 4: revision, 5: text. */
export const FILL = `
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SADD', KEYS[3], ARGV[3])
redis.call('SADD', KEYS[4], ARGV[2])
return 1`;

const LONGEST_WAIT = 1_000;
const PAGE = 500;

/** Error replies that no retry gets past; any other may pass. */
const OURS = /^(ERR|WRONGTYPE|NOPERM|NOSCRIPT|EXECABORT)\b/;

export interface RedisTerms {
  readonly url: string;
  /** Goes before every key. */
  readonly prefix: string;
  /** Milliseconds for one answer. */
  readonly operation: number;
}

/** Doesn't contact the server before the first operation. */
export function openRedis(terms: RedisTerms): Engine {
  return new Redis(terms);
}

function clientOf({ url, operation }: RedisTerms) {
  const client = createClient({
    url,
    // What can't be sent now has to fail now: a queued write could be made after the caller was told that it wasn't.
    disableOfflineQueue: true,
    socket: {
      connectTimeout: operation,
      reconnectStrategy: (tries) => Math.min(LONGEST_WAIT, 20 * 2 ** tries) * (0.5 + Math.random() / 2),
    },
  });
  // The next caller gets the error.
  client.on('error', () => {});
  return client;
}

class Redis implements Engine {
  readonly values: Values;
  readonly #terms: RedisTerms;
  readonly #keyv: KeyvRedis<string>;
  #client: ReturnType<typeof clientOf>;
  /** The connection in progress, shared by all who wait for it. */
  #awaited: Promise<unknown> | undefined;

  constructor(terms: RedisTerms) {
    this.#terms = terms;
    this.#client = clientOf(terms);
    this.#keyv = new KeyvRedis<string>(this.#client as never, { keyPrefixSeparator: ':', throwOnErrors: true });
    this.values = {
      adapter: () => this.#keyv,
      namespace: `${terms.prefix}:kept`,
      run: (work) => this.#answer(work),
      claim: (key, value, milliseconds) =>
        this.#answer(async () => {
          const terms = { condition: 'NX', expiration: { type: 'PX', value: milliseconds } } as const;
          return (await this.#client.set(this.#key('kept', key), JSON.stringify({ value }), terms)) === 'OK';
        }),
    };
  }

  read(kind: string, id: string): Promise<StoredRow | undefined> {
    return this.#answer(async () => {
      const [rev, text] = await this.#client.hmGet(this.#key('record', kind, id), ['rev', 'text']);
      return rev == null || text == null ? undefined : { rev: Number(rev), text };
    });
  }

  create(kind: string, id: string, { rev, text }: StoredRow, write: string): Promise<boolean> {
    return this.#script(CREATE, kind, id, write, [String(rev), text]);
  }

  put(kind: string, id: string, { rev, text }: StoredRow, after: number, write: string): Promise<boolean> {
    return this.#script(PUT, kind, id, write, [String(rev), text, String(after)]);
  }

  remove(kind: string, id: string, write: string): Promise<boolean> {
    return this.#script(REMOVE, kind, id, write, []);
  }

  landed(write: string): Promise<boolean> {
    return this.#answer(async () => (await this.#client.exists(this.#key('write', write))) === 1);
  }

  async *ids(kind: string): AsyncGenerator<string> {
    // A scan may return a member twice while the set grows.
    const seen = new Set<string>();
    for (let cursor = '0'; ; ) {
      const page = await this.#answer(() => this.#client.sScan(this.#key('ids', kind), cursor, { COUNT: PAGE }));
      for (const id of page.members) {
        if (seen.has(id)) continue;
        seen.add(id);
        yield id;
      }
      cursor = String(page.cursor);
      if (cursor === '0') return;
    }
  }

  counter({ keyPrefix, ...terms }: CountTerms): RateLimiterAbstract {
    // Goes through our own client, which is replaced after a lost connection.
    const storeClient = {
      eval: (script: string, given: { keys: string[]; arguments: string[] }) =>
        this.#answer(() => this.#client.eval(script, given)),
    };
    return new RateLimiterRedis({
      ...terms,
      keyPrefix: this.#key('asks', keyPrefix),
      storeClient,
      useRedisPackage: true,
    });
  }

  async ping(): Promise<void> {
    await this.#answer(() => this.#client.ping());
  }

  doubts(): Promise<readonly string[]> {
    return this.#answer(() => redisDoubts((name) => this.#client.configGet(name)));
  }

  /** Each entry is whole; one changed during the scan may appear in its old or new state. */
  async *all(): AsyncGenerator<StoredRecord> {
    const kinds = await this.#answer(() => this.#client.sMembers(this.#key('kinds')));
    for (const kind of kinds) {
      for await (const id of this.ids(kind)) {
        const row = await this.read(kind, id);
        if (row) yield { record: { kind, id, ...row } };
      }
    }
    const prefix = this.#key('kept', '');
    const seen = new Set<string>();
    for (let cursor = '0'; ; ) {
      const terms = { MATCH: `${prefix.replace(/[\\[\]*?]/g, '\\$&')}*`, COUNT: PAGE };
      const page = await this.#answer(() => this.#client.scan(cursor, terms));
      for (const key of page.keys) {
        if (seen.has(key)) continue;
        seen.add(key);
        const [text, left] = await this.#answer(() => Promise.all([this.#client.get(key), this.#client.pTTL(key)]));
        if (text === null) continue;
        yield { kept: { key: key.slice(prefix.length), text, ...(left < 0 ? {} : { expires: Date.now() + left }) } };
      }
      cursor = String(page.cursor);
      if (cursor === '0') return;
    }
  }

  async empty(): Promise<boolean> {
    for await (const _ of this.all()) return false;
    return true;
  }

  async fill(held: readonly StoredRecord[]): Promise<void> {
    await this.#answer(() =>
      Promise.all(held.map((one) => ('record' in one ? this.#fill(one.record) : this.#keep(one.kept)))),
    );
  }

  async close(): Promise<void> {
    if (!this.#client.isOpen) return;
    if (this.#client.isReady) await this.#client.close();
    else this.#client.destroy();
  }

  async #fill({ kind, id, rev, text }: HeldRecord): Promise<void> {
    await this.#client.eval(FILL, this.#told(kind, id, '', [String(rev), text]));
  }

  async #keep({ key, text, expires }: HeldValue): Promise<void> {
    if (expires !== undefined && expires <= Date.now()) return;
    const until = expires === undefined ? {} : ({ expiration: { type: 'PXAT', value: expires } } as const);
    await this.#client.set(this.#key('kept', key), text, until);
  }

  #script(script: string, kind: string, id: string, write: string, rest: readonly string[]): Promise<boolean> {
    return this.#answer(async () => (await this.#client.eval(script, this.#told(kind, id, write, rest))) === 1);
  }

  #told(kind: string, id: string, write: string, rest: readonly string[]) {
    const keys = [['record', kind, id], ['write', write], ['ids', kind], ['kinds']].map((parts) => this.#key(...parts));
    return { keys, arguments: [String(REMEMBERED), kind, id, ...rest] };
  }

  #key(...parts: readonly string[]): string {
    return [this.#terms.prefix, ...parts].join(':');
  }

  async #answer<T>(ask: () => Promise<T>): Promise<T> {
    const client = this.#client;
    try {
      return await withinTime(this.#terms.operation, this.#ready().then(ask));
    } catch (cause) {
      const message = cause instanceof Error ? cause.message : String(cause);
      if (cause instanceof SyntaxError || OURS.test(message)) throw cause;
      // No answer in time, perhaps not even to the handshake: anything that arrives on this connection later is
      // ignored.
      if (cause instanceof Lost && client === this.#client) this.#renew();
      throw new Lost(message, { cause });
    }
  }

  async #ready(): Promise<void> {
    const client = this.#client;
    if (client.isReady) return;
    // Callers get the outcome from an event: `ready`, or an error.
    if (!client.isOpen) client.connect().catch(() => {});
    this.#awaited ??= once(client, 'ready').finally(() => {
      this.#awaited = undefined;
    });
    await this.#awaited;
  }

  #renew(): void {
    const old = this.#client;
    this.#awaited = undefined;
    this.#client = clientOf(this.#terms);
    this.#keyv.client = this.#client as never;
    if (old.isOpen) old.destroy();
  }
}
