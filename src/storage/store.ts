/** The store: records and plain values on the back end its address names, opened on first use. */

import { createHash } from 'node:crypto';
import { Keyv } from 'keyv';
import {
  type Clock,
  type Engine,
  MACHINE_CLOCK,
  type OpenedEngine,
  openedOnce,
  PATIENCE,
  type Patience,
  patiently,
  settledWrite,
} from './engine.ts';
import type { FolderUse } from './folder-users.ts';
import type { AskLimits } from './request-limits.ts';
import { nameWrite, type ShelfTerms, shelfOn } from './shelf.ts';
import type { Allowed, Asking, KeyValueStore, Store } from './types.ts';

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

export interface StorePlace {
  /** `postgres://…`, `redis://…`, or empty for the data folder. */
  readonly url: string;
  readonly folder: string;
  readonly clock?: Clock;
  readonly patience?: Patience;
  /** What a data folder is opened for; a bot if absent. */
  readonly use?: FolderUse;
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
  /**
   * Makes the data folder's backup of the day unless it is there, and resolves with when the newest was made;
   * undefined on a database server, which has backups of its own. Throws StoreUnusable if the data file is damaged.
   */
  backUp(): Promise<number | undefined>;
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
    allowed(limits) {
      // Imported here because a terminal counts no requests.
      const counting = import('./request-limits.ts').then(({ limitsOn }) =>
        limitsOn(terms.url === '' ? undefined : open, limits, all),
      );
      return async (who, weight) => (await counting)(who, weight);
    },
    ping: () => patiently(clock, patience, async () => (await open()).ping()),
    doubts: () => patiently(clock, patience, async () => (await open()).doubts()),
    async backUp() {
      if (terms.url !== '') return undefined;
      const { backUpToday } = await import('./backup.ts');
      return backUpToday(terms.folder, await open(), clock.now());
    },
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
  use = 'bot',
  space = 'floorhand',
  clock = MACHINE_CLOCK,
  patience = PATIENCE,
}: StorePlace): () => Promise<Engine> {
  // Imported when opened: a request that saves nothing shouldn't wait for code it doesn't use.
  if (url === '') {
    const terms = { folder, use, clock, operation: patience.operation };
    return async () => (await import('./embedded.ts')).openEmbedded(terms);
  }
  const { operation } = patience;
  if (/^postgres(ql)?:/.test(url))
    return async () => (await import('./postgres.ts')).openPostgres({ url, schema: space, operation });
  if (/^rediss?:/.test(url))
    return async () => (await import('./redis.ts')).openRedis({ url, prefix: space, operation });
  throw new Error('The address of the store is of no kind that is known; empty keeps all in the data folder.');
}
