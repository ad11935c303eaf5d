/** The store: saved records and plain values on the back end that the address names, opened by the first who needs it. */

import type { Ports } from '../chat/ports.ts';
import { type Engine, openedOnce } from './engine.ts';
import { keptOn } from './kept.ts';
import { type AskLimits, limitsOn } from './limits.ts';
import { type Clock, MACHINE_CLOCK, PATIENCE, type Patience, patiently } from './patience.ts';
import { shelfOn } from './shelf.ts';
import type { Store } from './types.ts';

/** Where things are kept. */
export interface Place {
  /** `postgres://…`, `redis://…`, or empty for the data folder. */
  readonly url: string;
  readonly folder: string;
  readonly clock?: Clock;
  readonly patience?: Patience;
  /** The schema or prefix under which all is kept on a server; another keeps apart. */
  readonly space?: string;
}

export interface StoreTerms extends Place {
  /** Tells whoever runs the bot of what went wrong. */
  fault(cause: unknown): void;
}

/** The port, and what only main needs. */
export interface OpenStore extends Store {
  /** Counts asks against limits, together with all who share the store. */
  allowed(limits: AskLimits): NonNullable<Ports['allowed']>;
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
export function reader(place: Place): () => Promise<Engine> {
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
}: Place): () => Promise<Engine> {
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
