/** Starts the bot on its chat platforms, and stops it once running work is finished. */

import { setTimeout as sleep } from 'node:timers/promises';
import { catalog } from '../../commands/index.ts';
import { isEmergency } from '../chat/hazard-answers.ts';
import { answer } from '../chat/pipeline.ts';
import { lateWork, type Request } from '../chat/ports.ts';
import { inTurn } from '../chat/rate-limit.ts';
import { closeFiles, fileFigures } from '../documents/make.ts';
import { closePictures, pictureFigures } from '../drawing/png.ts';
import { GOODBYE, type Platform, type PlatformContext, type RunningPlatform } from '../platforms/platform.ts';
import { backUpDaily, backupsIn } from '../storage/backup.ts';
import { type OpenStore, openStore } from '../storage/store.ts';
import { StoreUnusable } from '../storage/types.ts';
import { accountName, type PlatformName } from '../text/answer-text.ts';
import { boundTasks, closeWorkers, taskFigures } from '../workers/pool.ts';
import { type Config, configDoubts, dataFolder, type Environment, secretsOf } from './config.ts';
import { type Ending, endingWith, firstSignal } from './ending.ts';
import { listen, type Route, routed } from './http.ts';
import { type Log, logTo } from './logger.ts';
import { type Metrics, watchedStore } from './metrics.ts';
import { contextOf, wait } from './platform-context.ts';
import { platforms } from './platforms.ts';
import { warm } from './warm-up.ts';

export interface StartedPlatforms {
  /** Their routes on the HTTP server. */
  readonly routes: readonly Route[];
  /** Chats that receive no events at the moment. */
  connected(): readonly string[];
}

/** Starts every configured chat and what runs with them. Rejects if one can't start. */
export async function startPlatforms(
  context: PlatformContext,
  ending: Ending,
  among: readonly Platform[] = platforms,
): Promise<StartedPlatforms> {
  const wanted = among.filter(
    ({ runs, settings }) => runs === 'beside' || (runs === 'configured' && settings.configured(context.config)),
  );
  const started: (readonly [PlatformName, RunningPlatform])[] = [];
  for (const platform of wanted) {
    const { name } = platform;
    const running = await began(accountName(name), platform.start(context));
    const { close } = running;
    if (close) ending.add('takes', name, close);
    started.push([name, running]);
  }
  return {
    routes: started.flatMap(([, { routes }]) => routes),
    connected: () => started.flatMap(([name, { connected }]) => (connected() ? [] : [name])),
  };
}

/** Answers in turn, within the rate limits of the user and the server. */
function answerInTurn({ limits }: Config, ports: PlatformContext['ports']): PlatformContext['answer'] {
  const allowed = ports.store.allowed({ person: limits.asksPerMinute, server: limits.serverAsksPerMinute });
  return inTurn(
    (request: Request) => answer(request, catalog, { ...ports, allowed }),
    wait,
    ({ text }) => isEmergency(text),
  );
}

/** Rejects with the platform that didn't start, and the cause. */
async function began<T>(platform: string, starting: Promise<T>): Promise<T> {
  try {
    return await starting;
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause);
    const more = 'Whether it can be reached and knows the token: npm run doctor -- --online';
    throw new Error(`${platform} did not start: ${said}\n${more}`, { cause });
  }
}

// Whether the bot can answer right now, and what is wrong if it can't.

interface Looked {
  readonly store: Pick<OpenStore, 'ping'>;
  /** Chats that receive no events. */
  connected(): readonly string[];
  ending(): boolean;
}

/** One check of the store at a time, however many probes there are. */
export function readiness({ store, connected, ending }: Looked): () => Promise<readonly string[]> {
  let looking: Promise<readonly string[]> | undefined;
  return async () => {
    if (ending()) return ['stopping'];
    looking ??= store
      .ping()
      .then(
        () => [],
        () => ['store'],
      )
      .finally(() => {
        looking = undefined;
      });
    return [...(await looking), ...connected()];
  };
}

/** Runs until it is stopped; the exit code. Rejects if it can't start. */
export async function runBot(config: Config, environment: Environment): Promise<number> {
  const log = logTo({ level: config.log, secrets: secretsOf(environment), output: process.stderr });
  for (const doubt of configDoubts(environment)) log.doubt(doubt);
  log.state('starting');
  const began = performance.now();
  const ending = endingWith({
    passed: () => performance.now(),
    wait,
    given: (part, how, ms) => log.state(how === 'ended' ? 'closing' : 'late', { part, ms: Math.round(ms) }),
    fault: (cause) => log.fault('process', cause),
  });
  const { requested, code } = firstSignal((cause) => log.fault('process', cause));
  try {
    await Promise.race([start(config, environment, { log, ending }), requested]);
    if (!ending.begun()) log.state('connected', { ms: Math.round(performance.now() - began) });
    await requested;
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
  const folder = dataFolder(config.data, environment);
  const metrics = await metricsOf(config, folder);
  const bare = openStore({ url: config.store, folder, use: 'bot', fault: (cause) => log.fault('store', cause) });
  const store: OpenStore = metrics ? watchedStore(bare, metrics.stored) : bare;
  ending.add('keeps', 'store', () => store.close());
  ending.add('keeps', 'workers', closeWorkers);
  ending.add('keeps', 'pictures', closePictures);
  ending.add('keeps', 'files', closeFiles);
  await lookAt(store, config.store === '', log);
  ending.add(
    'works',
    'store',
    backUpDaily(store.backUp, (cause) => faultOrDoubt(log, cause)),
  );
  await warm(config, log);
  const { later, done } = lateWork();
  ending.add('works', 'later', done);
  const requested: Log['requested'] = (ended) => {
    log.requested(ended);
    metrics?.requested(ended);
  };
  const address = (): string | undefined => (config.address === '' ? undefined : config.address);
  const ports = { fault: log.fault, requested, store, later, address };
  const { routes, connected } = await startPlatforms(
    contextOf(config, ports, { answer: answerInTurn(config, ports) }),
    ending,
  );
  const ready = readiness({ store, connected, ending: ending.begun });
  await serve(config, { metrics, routes, ready }, { log, ending });
}

type Served = {
  readonly metrics: Metrics | undefined;
  readonly routes: readonly Route[];
  readonly ready: ReturnType<typeof readiness>;
};

async function serve({ http, metrics: given }: Config, { metrics, routes, ready }: Served, run: Run): Promise<void> {
  const { metricsRoute, probes } = await import('./http.ts');
  const { log, ending } = run;
  const fault = (cause: unknown): void => log.fault('http', cause);
  const figures = metrics && given.token !== '' ? [metricsRoute(metrics, given.token)] : [];
  const server = await listen(routed([...probes(ready), ...figures, ...routes], fault, metrics?.page), http);
  log.state('listening', { port: server.port });
  const close = async (): Promise<void> => {
    await sleep(GOODBYE);
    await server.close();
  };
  ending.add('takes', 'http', close, () => {
    server.cut();
    // A running search ends with the best result so far.
    return closeWorkers();
  });
  if (!metrics || !given.at) return;
  const own = await listen(routed([metricsRoute(metrics, '')], fault), given.at);
  log.state('metrics', { port: own.port });
  ending.add('keeps', 'metrics', () => own.close(), own.cut);
}

/** Metrics are only collected if someone can read them. */
async function metricsOf({ metrics: { at, token }, store }: Config, folder: string): Promise<Metrics | undefined> {
  if (!at && token === '') return undefined;
  const { openMetrics } = await import('./metrics.ts');
  const lastBackup = store === '' ? () => backupsIn(folder)[0]?.made ?? 0 : undefined;
  return openMetrics({ searches: taskFigures, pictures: pictureFigures, files: fileFigures }, lastBackup);
}

/** Of a store that somebody must look after, the sentence that says so; of anything else, no message. */
function faultOrDoubt(log: Log, cause: unknown): void {
  if (cause instanceof StoreUnusable) log.doubt(cause.message);
  else log.fault('store', cause);
}

/** Reports what keeps data from being saved. Throws if the data folder can't be used. */
async function lookAt(store: OpenStore, embedded: boolean, log: Log): Promise<void> {
  try {
    for (const doubt of await store.doubts()) log.doubt(doubt);
  } catch (cause) {
    // A database may come up later; a folder another bot has locked won't become free by waiting.
    if (embedded) throw cause;
    log.fault('store', cause);
  }
}
