/** Prometheus metrics about requests, the store, pages, workers and the process; nothing personal. */

import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { RequestMetrics } from '../chat/ports.ts';
import { type KeyValueStore, Outage, type RecordStore, type Store } from '../storage/types.ts';

/** What worker threads have to do. */
export interface TaskFigures {
  readonly working: number;
  readonly waiting: number;
  /** Threads ended for their time or memory, or that failed, where it is counted. */
  readonly replaced?: number;
}

/** Each kind of work that worker threads do. */
export type Works = Readonly<Record<'searches' | 'pictures' | 'files', () => TaskFigures>>;

export interface Metrics {
  requested(ended: RequestMetrics): void;
  /** A request that was answered, by the route's own pattern. */
  page(route: string, method: string, status: number, milliseconds: number): void;
  stored(operation: string, ended: 'done' | 'outage' | 'fault', milliseconds: number): void;
  read(): Promise<{ readonly type: string; readonly text: string }>;
}

const ASK_SECONDS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 3, 10, 30];
const STORE_SECONDS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.5, 1, 5, 10];

/** A registry of its own; `works` are asked whenever it is read. */
export function openMetrics(works: Works): Metrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry });
  const asks = new Counter({
    name: 'floorhand_asks_total',
    help: 'Asks by platform, command and what came of them.',
    labelNames: ['platform', 'command', 'outcome'],
    registers,
  });
  const first = new Histogram({
    name: 'floorhand_ask_first_seconds',
    help: 'Seconds to the first answer of an ask.',
    labelNames: ['platform'],
    buckets: ASK_SECONDS,
    registers,
  });
  const last = new Histogram({
    name: 'floorhand_ask_seconds',
    help: 'Seconds to the last answer of an ask, by command.',
    labelNames: ['command'],
    buckets: ASK_SECONDS,
    registers,
  });
  const waits = new Histogram({
    name: 'floorhand_ask_wait_seconds',
    help: 'Seconds that the work of an ask waited for worker threads, where any of it needed one.',
    buckets: ASK_SECONDS,
    registers,
  });
  const stored = new Histogram({
    name: 'floorhand_store_seconds',
    help: 'Seconds that the store took, by operation and how it ended.',
    labelNames: ['operation', 'ended'],
    buckets: STORE_SECONDS,
    registers,
  });
  const pages = new Histogram({
    name: 'floorhand_http_seconds',
    help: 'Seconds to answer a request, by route, method and status.',
    labelNames: ['route', 'method', 'status'],
    buckets: STORE_SECONDS,
    registers,
  });
  for (const state of ['working', 'waiting'] as const)
    new Gauge({
      name: `floorhand_tasks_${state}`,
      help: `Tasks that worker threads are ${state === 'working' ? 'at' : 'to take up'}, by what they make.`,
      labelNames: ['of'],
      registers,
      collect() {
        for (const [of, figures] of Object.entries(works)) this.set({ of }, figures()[state]);
      },
    });
  new Counter({
    name: 'floorhand_workers_replaced_total',
    help: 'Worker threads of searches ended for their time or memory, or that failed.',
    registers,
    collect() {
      this.reset();
      this.inc(works.searches().replaced ?? 0);
    },
  });
  return {
    requested({ platform, command = 'none', outcome, first: toFirst, last: toLast, wait }) {
      asks.inc({ platform, command, outcome });
      if (wait > 0) waits.observe(wait / 1000);
      if (outcome === 'none') return;
      first.observe({ platform }, toFirst / 1000);
      last.observe({ command }, toLast / 1000);
    },
    page: (route, method, status, milliseconds) =>
      pages.observe({ route, method, status: String(status) }, milliseconds / 1000),
    stored: (operation, ended, milliseconds) => stored.observe({ operation, ended }, milliseconds / 1000),
    read: async () => ({ type: registry.contentType, text: await registry.metrics() }),
  };
}

// A store whose operations are timed, and which is otherwise the store it was.

/** Told of each operation that ended, and how. */
export type Stored = (operation: string, ended: 'done' | 'outage' | 'fault', milliseconds: number) => void;

/** The same store, its operations told of. */
export function watchedStore<S extends Store>(store: S, stored: Stored): S {
  async function timed<T>(operation: string, work: () => Promise<T>): Promise<T> {
    const began = performance.now();
    try {
      const done = await work();
      stored(operation, 'done', performance.now() - began);
      return done;
    } catch (cause) {
      stored(operation, cause instanceof Outage ? 'outage' : 'fault', performance.now() - began);
      throw cause;
    }
  }
  const { kept } = store;
  const watchedKept: KeyValueStore = {
    get: (key) => timed('get', () => kept.get(key)),
    set: (key, value, milliseconds) => timed('set', () => kept.set(key, value, milliseconds)),
    delete: (key) => timed('delete', () => kept.delete(key)),
    claim: (key, milliseconds) => timed('claim', () => kept.claim(key, milliseconds)),
  };
  const shelf: Store['shelf'] = <T>(...named: Parameters<typeof store.shelf<T>>): RecordStore<T> => {
    const one = store.shelf<T>(...named);
    return {
      load: (id) => timed('load', () => one.load(id)),
      create: (id, value) => timed('create', () => one.create(id, value)),
      change: (id, change) => timed('change', () => one.change(id, change)),
      remove: (id) => timed('remove', () => one.remove(id)),
      ids: () => one.ids(),
    };
  };
  return { ...store, kept: watchedKept, shelf };
}
