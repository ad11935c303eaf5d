/** The bot in its chats, from its start to an end that finishes what was begun. */

import { setTimeout as sleep } from 'node:timers/promises';
import { lateWork } from '../chat/background-work.ts';
import { closeFiles, fileFigures } from '../documents/make.ts';
import { closePictures, pictureFigures } from '../drawing/png.ts';
import { type OpenStore, openStore } from '../storage/store.ts';
import { boundTasks, closeWorkers, taskFigures } from '../workers/pool.ts';
import { startChats } from './chats.ts';
import { type Config, configDoubts, secretsOf } from './config.ts';
import { dataFolder } from './data-folder.ts';
import { type Ending, endingWith } from './ending.ts';
import { type Log, logTo } from './log.ts';
import type { Metrics } from './metrics.ts';
import { pageRoutes } from './page.ts';
import { readiness } from './readiness.ts';
import { listen, type Route, routed } from './server.ts';
import { firstSignal } from './signals.ts';
import type { Environment } from './told-settings.ts';
import { warm } from './warm.ts';
import { watchedStore } from './watched-store.ts';

/** Milliseconds for which a server that ends still answers, so that whoever asks learns that it is not ready. */
const GOODBYE = 300;

/** Runs until it is asked to end; the exit code. Rejects when it cannot start. */
export async function runBot(config: Config, environment: Environment): Promise<number> {
  const log = logTo({ level: config.log, secrets: secretsOf(environment), output: process.stderr });
  for (const doubt of configDoubts(environment)) log.doubt(doubt);
  log.state('starting');
  const began = performance.now();
  const ending = endingWith({
    passed: () => performance.now(),
    wait: (milliseconds) => sleep(milliseconds, undefined, { ref: false }),
    told: (part, how, ms) => log.state(how === 'ended' ? 'closing' : 'late', { part, ms: Math.round(ms) }),
    fault: (cause) => log.fault('process', cause),
  });
  const { asked, code } = firstSignal((cause) => log.fault('process', cause));
  try {
    await Promise.race([start(config, environment, { log, ending }), asked]);
    if (!ending.begun()) log.state('connected', { ms: Math.round(performance.now() - began) });
    await asked;
  } catch (cause) {
    log.fault('start', cause);
    throw cause;
  } finally {
    log.state('stopping');
    const stopping = performance.now();
    const whole = await ending.end();
    log.state(whole ? 'stopped' : 'late', { part: 'all', ms: Math.round(performance.now() - stopping) });
  }
  return code();
}

interface Run {
  readonly log: Log;
  readonly ending: Ending;
}

async function start(config: Config, environment: Environment, { log, ending }: Run): Promise<void> {
  boundTasks(config.limits);
  const metrics = await metricsOf(config);
  const bare = openStore({
    url: config.store,
    folder: dataFolder(config.data, environment),
    fault: (cause) => log.fault('store', cause),
  });
  const store: OpenStore = metrics ? watchedStore(bare, metrics.stored) : bare;
  ending.add('keeps', 'store', () => store.close());
  ending.add('keeps', 'workers', closeWorkers);
  ending.add('keeps', 'pictures', closePictures);
  ending.add('keeps', 'files', closeFiles);
  await lookAt(store, config.store === '', log);
  await warm(config, log);
  const { later, done } = lateWork();
  ending.add('works', 'later', done);
  const asked: Log['asked'] = (ended) => {
    log.asked(ended);
    metrics?.asked(ended);
  };
  const address = (): string | undefined => (config.address === '' ? undefined : config.address);
  const ports = { fault: log.fault, asked, store, later, address };
  const chats = await startChats(config, ports, ending);
  const ready = readiness({ store, connected: chats.connected, ending: ending.begun });
  const routes = [...chats.routes, ...(await pageRoutes(config, ports))];
  await serve(config, { metrics, routes, ready }, { log, ending });
}

type Served = {
  readonly metrics: Metrics | undefined;
  readonly routes: readonly Route[];
  readonly ready: ReturnType<typeof readiness>;
};

async function serve({ http, metrics: told }: Config, { metrics, routes, ready }: Served, run: Run): Promise<void> {
  const { metricsRoute, probes } = await import('./probes.ts');
  const { log, ending } = run;
  const fault = (cause: unknown): void => log.fault('http', cause);
  const figures = metrics && told.token !== '' ? [metricsRoute(metrics, told.token)] : [];
  const server = await listen(routed([...probes(ready), ...figures, ...routes], fault, metrics?.page), http);
  log.state('listening', { port: server.port });
  const close = async (): Promise<void> => {
    await sleep(GOODBYE);
    await server.close();
  };
  ending.add('takes', 'http', close, () => {
    server.cut();
    // What is still searched for ends with what was found so far.
    return closeWorkers();
  });
  if (!metrics || !told.at) return;
  const own = await listen(routed([metricsRoute(metrics, '')], fault), told.at);
  log.state('metrics', { port: own.port });
  ending.add('keeps', 'metrics', () => own.close(), own.cut);
}

/** Figures are only gathered where somebody reads them. */
async function metricsOf({ metrics: { at, token } }: Config): Promise<Metrics | undefined> {
  if (!at && token === '') return undefined;
  const { openMetrics } = await import('./metrics.ts');
  return openMetrics({ searches: taskFigures, pictures: pictureFigures, files: fileFigures });
}

/** Tells what stands in the way of keeping what is acknowledged. Throws when there is a data folder and it cannot be had. */
async function lookAt(store: OpenStore, embedded: boolean, log: Log): Promise<void> {
  try {
    for (const doubt of await store.doubts()) log.doubt(doubt);
  } catch (cause) {
    // A server may come up later; a folder that another bot has is not let go by waiting.
    if (embedded) throw cause;
    log.fault('store', cause);
  }
}
