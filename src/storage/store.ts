/** The store: saved records and plain values on the back end that the address names, opened by the first who needs it. */

import { createHash } from 'node:crypto';
import { Keyv } from 'keyv';
import { type RateLimiterAbstract, RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import {
  type Clock,
  type CountTerms,
  type Engine,
  Lost,
  MACHINE_CLOCK,
  type OpenedEngine,
  openedOnce,
  PATIENCE,
  type Patience,
  patiently,
  settledWrite,
} from './engine.ts';
import { nameWrite, type ShelfTerms, shelfOn } from './shelf.ts';
import type { Allowed, Asking } from './types.ts';
import { type KeyValueStore, Outage, type Store } from './types.ts';

// Plain values through Keyv: what cannot be read counts as not there, and is told.

/** Kept values. Every method throws Outage when the engine does not answer. */
export function keptOn(open: OpenedEngine, { clock, patience, fault }: ShelfTerms): KeyValueStore {
  const keyvs = new WeakMap<Engine, Keyv>();
  async function run<T>(work: (keyv: Keyv) => Promise<T>): Promise<T> {
    const engine = await open();
    const keyv = keyvs.get(engine) ?? keyvOn(engine);
    keyvs.set(engine, keyv);
    return engine.values.run(() => work(keyv));
  }

  async function get(key: string): Promise<unknown> {
    try {
      return await run((keyv) => keyv.get(key));
    } catch (cause) {
      if (!(cause instanceof SyntaxError)) throw cause;
      fault(new Error(`The value kept as ${key} cannot be read.`, { cause }));
      await run((keyv) => keyv.delete(key));
      return undefined;
    }
  }

  return {
    get: (key) => patiently(clock, patience, () => get(nameOf(key))),
    async set(key, value, milliseconds) {
      const name = nameOf(key);
      const ttl = milliseconds === undefined ? undefined : Math.ceil(milliseconds);
      // Keyv takes 0 for “for good”.
      const put = (keyv: Keyv) => (ttl !== undefined && ttl <= 0 ? keyv.delete(name) : keyv.set(name, value, ttl));
      await patiently(clock, patience, () => run(put));
    },
    delete: (key) => patiently(clock, patience, () => run((keyv) => keyv.delete(nameOf(key)))),
    async claim(key, milliseconds) {
      if (milliseconds <= 0) return false;
      const name = nameOf(key);
      const mine = nameWrite();
      return settledWrite(
        clock,
        patience,
        async () => (await open()).values.claim(name, mine, Math.ceil(milliseconds)),
        async () => (await get(name)) === mine,
      );
    },
  };
}

function keyvOn({ values }: Engine): Keyv {
  // Without a namespace of Keyv's, which takes “a:b” and, in the namespace a, “b” for one key.
  const keyv = new Keyv({ store: values.adapter(), useKeyPrefix: false, throwOnErrors: true });
  keyv.namespace = values.namespace;
  // Errors are thrown as well; nobody needs to be told twice.
  keyv.on('error', () => {});
  return keyv;
}

/** The key as every engine takes it: printable ASCII of at most 200 characters as it is, anything else by its hash. */
function nameOf(key: string): string {
  if (/^[!-~]{1,200}$/.test(key) && !key.startsWith('sha256-')) return key;
  return `sha256-${createHash('sha256').update(key).digest('base64url')}`;
}

// Asks counted by the minute on the store's own connection, so that all processes count together; in memory
// where it does not answer.

const SECONDS = 60;

/** Milliseconds that a count may take: nobody waits for it longer. */
const LONGEST = 250;

/** Milliseconds for which a store that did not answer is not asked again. */
const LEFT_ALONE = 5_000;

type ReadLine = Pick<ShelfTerms, 'clock' | 'fault'>;

/** Asks in a minute. */
export interface AskLimits {
  readonly person: number;
  readonly server: number;
}

/** Counts asks; `open` is left out where one process alone has the store, whose memory knows all. */
export function limitsOn(
  open: OpenedEngine | undefined,
  { person, server }: AskLimits,
  terms: ReadLine,
): (who: Asking, weight: number) => Promise<Allowed> {
  const people = counterOn(open, { keyPrefix: 'person', points: person, duration: SECONDS }, terms);
  const servers = counterOn(open, { keyPrefix: 'server', points: server, duration: SECONDS }, terms);
  return async (who, weight) => {
    const again = await people(who.person, weight);
    if (again > 0 || who.server === undefined) return { again, everybody: false };
    const all = await servers(who.server, weight);
    return { again: all, everybody: all > 0 };
  };
}

/** Milliseconds until so much more may be asked under a key; 0 when it may. Never rejects. */
function counterOn(
  open: OpenedEngine | undefined,
  terms: CountTerms,
  { clock, fault }: ReadLine,
): (key: string, weight: number) => Promise<number> {
  const near = new RateLimiterMemory(terms);
  let far: Promise<RateLimiterAbstract | undefined> | undefined;
  let requestedFrom = Number.NEGATIVE_INFINITY;
  const inStore = async (key: string, points: number): Promise<number> => {
    far ??= open?.().then((engine) => engine.counter?.(terms));
    const counter = await far;
    return counter ? refusal(counter.consume(key, points)) : 0;
  };
  return async (key, weight) => {
    // Whose asks they are is nobody's business in the store.
    const name = createHash('sha256').update(key).digest('base64url').slice(0, 22);
    // An ask that weighs more than a whole minute's must still be possible.
    const points = Math.min(weight, terms.points);
    const here = await refusal(near.consume(name, points));
    if (here > 0 || !open || clock.passed() < requestedFrom) return here;
    try {
      return await Promise.race([inStore(name, points), late(clock)]);
    } catch (cause) {
      // A count is no reason to refuse anybody; the store tells of its outages where something is kept.
      if (!(cause instanceof Lost || cause instanceof Outage)) fault(cause);
      far = undefined;
      requestedFrom = clock.passed() + LEFT_ALONE;
      return 0;
    }
  };
}

/** Rejects once a count took too long by the clock. */
async function late(clock: Clock): Promise<never> {
  await clock.wait(LONGEST);
  throw new Lost(`no count in ${LONGEST} ms`);
}

/** 0 where points were there; the milliseconds until they are again where not. Rejects as the store does. */
async function refusal(consumed: Promise<RateLimiterRes>): Promise<number> {
  try {
    await consumed;
    return 0;
  } catch (cause) {
    if (cause instanceof RateLimiterRes) return Math.max(1, cause.msBeforeNext);
    throw cause;
  }
}

/** Where things are kept. */
export interface StorePlace {
  /** `postgres://…`, `redis://…`, or empty for the data folder. */
  readonly url: string;
  readonly folder: string;
  readonly clock?: Clock;
  readonly patience?: Patience;
  /** The schema or prefix under which all is kept on a server; another keeps apart. */
  readonly space?: string;
}

export interface StoreTerms extends StorePlace {
  /** Tells whoever runs the bot of what went wrong. */
  fault(cause: unknown): void;
}

/** The port, and what only main needs. */
export interface OpenStore extends Store {
  /** Counts asks against limits, together with all who share the store. */
  allowed(limits: AskLimits): (who: Asking, weight: number) => Promise<Allowed>;
  /** Throws Outage when the store does not answer. */
  ping(): Promise<void>;
  /** What stands in the way of keeping what was acknowledged, in sentences; none when nothing does. Throws Outage. */
  doubts(): Promise<readonly string[]>;
  /** Lets what runs finish. Opens nothing that was not open. */
  close(): Promise<void>;
}

/** A store, not opened yet. Throws an Error when the address is of no kind that is known. */
export function openStore(terms: StoreTerms): OpenStore {
  const { clock = MACHINE_CLOCK, patience = PATIENCE, fault } = terms;
  const { open, close } = openedOnce(opener(terms));
  const all = { clock, patience, fault };
  return {
    kept: keptOn(open, all),
    shelf: (kind, codec) => shelfOn(open, kind, codec, all),
    allowed: (limits) => limitsOn(terms.url === '' ? undefined : open, limits, all),
    ping: () => patiently(clock, patience, async () => (await open()).ping()),
    doubts: () => patiently(clock, patience, async () => (await open()).doubts()),
    close,
  };
}

/** How a back end is opened to be read only, for a backup: a data folder that a bot has can be read meanwhile. Throws as openStore does. */
export function recordReader(place: StorePlace): () => Promise<Engine> {
  const { url, folder, clock = MACHINE_CLOCK, patience = PATIENCE } = place;
  if (url !== '') return opener(place);
  return async () => (await import('./embedded.ts')).readEmbedded({ folder, clock, operation: patience.operation });
}

/** How the address's back end is opened, without a store on it. Throws as openStore does. */
export function opener({
  url,
  folder,
  space = 'floorhand',
  clock = MACHINE_CLOCK,
  patience = PATIENCE,
}: StorePlace): () => Promise<Engine> {
  // Imported when opened: an ask that keeps nothing need not wait for what it does not use.
  if (url === '') {
    const terms = { folder, clock, operation: patience.operation };
    return async () => (await import('./embedded.ts')).openEmbedded(terms);
  }
  const { operation } = patience;
  if (/^postgres(ql)?:/.test(url))
    return async () => (await import('./postgres.ts')).openPostgres({ url, schema: space, operation });
  if (/^rediss?:/.test(url))
    return async () => (await import('./redis.ts')).openRedis({ url, prefix: space, operation });
  throw new Error('The address of the store is of no kind that is known; empty keeps all in the data folder.');
}
