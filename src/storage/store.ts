/** The store: records and plain values on the back end its address names, opened on first use. */

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

/** Every method throws Outage if the engine doesn't answer. */
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
      // Keyv takes 0 to mean no expiry.
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
  // No Keyv namespace: it would treat “a:b” and, in the namespace a, “b” as the same key.
  const keyv = new Keyv({ store: values.adapter(), useKeyPrefix: false, throwOnErrors: true });
  keyv.namespace = values.namespace;
  // Errors are thrown as well, so they needn't be reported twice.
  keyv.on('error', () => {});
  return keyv;
}

/** A key every engine accepts: printable ASCII up to 200 characters as is, anything else as its hash. */
function nameOf(key: string): string {
  if (/^[!-~]{1,200}$/.test(key) && !key.startsWith('sha256-')) return key;
  return `sha256-${createHash('sha256').update(key).digest('base64url')}`;
}

// Rate limits per minute through the store, shared by all processes; in memory when the store doesn't answer.

const SECONDS = 60;

/** Milliseconds a count may take; nobody waits longer for it. */
const LONGEST = 250;

/** Milliseconds for which an unresponsive store is left alone. */
const LEFT_ALONE = 5_000;

type ReadLine = Pick<ShelfTerms, 'clock' | 'fault'>;

export interface AskLimits {
  readonly person: number;
  readonly server: number;
}

/** Counts requests. Leave out `open` when one process alone has the store, since its memory is enough. */
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

/** Milliseconds until that much more is allowed under a key; 0 if it is allowed now. Never rejects. */
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
    // The store doesn't need to know whose requests they are.
    const name = createHash('sha256').update(key).digest('base64url').slice(0, 22);
    // A request that weighs more than a whole minute's limit still has to be possible.
    const points = Math.min(weight, terms.points);
    const here = await refusal(near.consume(name, points));
    if (here > 0 || !open || clock.passed() < requestedFrom) return here;
    try {
      return await Promise.race([inStore(name, points), late(clock)]);
    } catch (cause) {
      // A failed count is no reason to refuse anyone; outages are reported where something is saved.
      if (!(cause instanceof Lost || cause instanceof Outage)) fault(cause);
      far = undefined;
      requestedFrom = clock.passed() + LEFT_ALONE;
      return 0;
    }
  };
}

async function late(clock: Clock): Promise<never> {
  await clock.wait(LONGEST);
  throw new Lost(`no count in ${LONGEST} ms`);
}

/** 0 if there were points left, otherwise milliseconds until there are. Rejects like the store. */
async function refusal(consumed: Promise<RateLimiterRes>): Promise<number> {
  try {
    await consumed;
    return 0;
  } catch (cause) {
    if (cause instanceof RateLimiterRes) return Math.max(1, cause.msBeforeNext);
    throw cause;
  }
}

export interface StorePlace {
  /** `postgres://…`, `redis://…`, or empty for the data folder. */
  readonly url: string;
  readonly folder: string;
  readonly clock?: Clock;
  readonly patience?: Patience;
  /** The schema or key prefix on a server; different ones are separate. */
  readonly space?: string;
}

export interface StoreTerms extends StorePlace {
  /** Reports errors to the operator. */
  fault(cause: unknown): void;
}

/** The port, and what only main needs. */
export interface OpenStore extends Store {
  /** Counts requests against limits, together with everyone who shares the store. */
  allowed(limits: AskLimits): (who: Asking, weight: number) => Promise<Allowed>;
  /** Throws Outage if the store doesn't answer. */
  ping(): Promise<void>;
  /** Sentences on what puts acknowledged data at risk; empty if nothing does. Throws Outage. */
  doubts(): Promise<readonly string[]>;
  /** Lets running operations finish. Opens nothing. */
  close(): Promise<void>;
}

/** A store that isn't open yet. Throws an Error if the kind of address is unknown. */
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

/** Opens a back end read-only for a backup; works for a data folder that a running bot owns. Throws like openStore. */
export function recordReader(place: StorePlace): () => Promise<Engine> {
  const { url, folder, clock = MACHINE_CLOCK, patience = PATIENCE } = place;
  if (url !== '') return opener(place);
  return async () => (await import('./embedded.ts')).readEmbedded({ folder, clock, operation: patience.operation });
}

/** Opens the address's back end without a store on it. Throws like openStore. */
export function opener({
  url,
  folder,
  space = 'floorhand',
  clock = MACHINE_CLOCK,
  patience = PATIENCE,
}: StorePlace): () => Promise<Engine> {
  // Imported when opened: a request that saves nothing shouldn't wait for code it doesn't use.
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
