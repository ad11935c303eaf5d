/** Prometheus metrics about requests, the store, pages, workers and the process; nothing personal. */

import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { RequestMetrics } from '../chat/ports.ts';
import { type KeyValueStore, Outage, type RecordStore, type Store } from '../storage/types.ts';

/** The load on worker threads. */
export interface TaskFigures {
  readonly working: number;
  readonly waiting: number;
  /** Threads that failed or were ended for time or memory, if counted. */
  readonly replaced?: number;
}

export type Works = Readonly<Record<'searches' | 'pictures' | 'files', () => TaskFigures>>;

export interface Metrics {
  requested(ended: RequestMetrics): void;
  /** A request answered, by the route's pattern. */
  page(route: string, method: string, status: number, milliseconds: number): void;
  stored(operation: string, ended: 'done' | 'outage' | 'fault', milliseconds: number): void;
  read(): Promise<{ readonly type: string; readonly text: string }>;
}

const ASK_SECONDS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 3, 10, 30];
const STORE_SECONDS = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.5, 1, 5, 10];

/** `works` and `lastBackup` (milliseconds since 1970, 0 for none) are called whenever the registry is read. */
export function openMetrics(works: Works, lastBackup?: () => number): Metrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry });
  const asks = new Counter({
    name: 'floorhand_asks_total',
    help: 'Questions by platform, command and what came of them.',
    labelNames: ['platform', 'command', 'outcome'],
    registers,
  });
  const answers = new Counter({
    name: 'floorhand_answers_total',
    help: 'Answers by platform and kind: answer, assumed, estimate, question, handbook, hazard, other, or mistaken.',
    labelNames: ['platform', 'kind'],
    registers,
  });
  const first = new Histogram({
    name: 'floorhand_ask_first_seconds',
    help: 'Seconds to the first answer to a question.',
    labelNames: ['platform'],
    buckets: ASK_SECONDS,
    registers,
  });
  const last = new Histogram({
    name: 'floorhand_ask_seconds',
    help: 'Seconds to the last answer to a question, by command.',
    labelNames: ['command'],
    buckets: ASK_SECONDS,
    registers,
  });
  const waits = new Histogram({
    name: 'floorhand_ask_wait_seconds',
    help: 'Seconds that the work of a question waited for worker threads, where any of it needed one.',
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
  if (lastBackup)
    new Gauge({
      name: 'floorhand_backup_last_success_timestamp_seconds',
      help: 'When the newest good backup of the data folder was made, in seconds since 1970; 0 if there is none.',
      registers,
      collect() {
        this.set(Math.floor(lastBackup() / 1000));
      },
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
    requested({ platform, command = 'none', outcome, answered, first: toFirst, last: toLast, wait }) {
      asks.inc({ platform, command, outcome });
      if (answered) answers.inc({ platform, kind: answered });
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

/** Called after each operation. */
export type Stored = (operation: string, ended: 'done' | 'outage' | 'fault', milliseconds: number) => void;

/** Wraps a store to time its operations. */
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
