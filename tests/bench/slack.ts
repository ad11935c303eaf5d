/** Slack on loopback through the real Bolt app: request out to answer in, against a bare handler with a fixed text; memory. */

import { fork } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { App, HTTPReceiver, LogLevel } from '@slack/bolt';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { lateWork, type Request } from '../../src/chat/ports.ts';
import { inTurn } from '../../src/chat/rate-limit.ts';
import { closePictures, toPng } from '../../src/drawing/png.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { startSlack } from '../../src/platforms/slack/start.ts';
import type { SlackParts } from '../../src/platforms/slack/types.ts';
import { listen, routed } from '../../src/server/http.ts';
import { openStore } from '../../src/storage/store.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import type { Ran, Run } from './slack-clock.ts';

const CLOCK = fileURLToPath(new URL('./slack-clock.js', import.meta.url));
const SECRET = 'a signing secret of the bench';
const TAPE = { slash: `tape 15'2 1/2" - 2 x 4'0 3/8"` } as const;
const PLANKS = { slash: `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton` } as const;
/** About 18,000 planks. */
const HUGE = {
  direct: `planks room: ${['a', 'b', 'c', 'd', 'e', 'f'].map((name) => `room ${name} 66x57`).join('; ')}, plank: 5 x 36, 20 per carton`,
} as const;
/** Memory may grow so much over the long run before it counts as growing, MB. */
const FLAT = 30;

export const slack: Bench = {
  name: 'slack',
  async run(size) {
    const folder = mkdtempSync(join(tmpdir(), 'floorhand-bench-'));
    const clock = await clockProcess();
    try {
      const bare = await measuredBare(clock, size);
      return [...figures('bare handler', bare), ...(await measuredBot(clock, size, bare, folder))];
    } finally {
      clock.end();
      rmSync(folder, { recursive: true, force: true });
      await Promise.all([closeWorkers(), closePictures()]);
    }
  },
};

interface Clock {
  readonly api: string;
  run(run: Run): Promise<Ran>;
  end(): void;
}

/** One process that is Slack. */
async function clockProcess(): Promise<Clock> {
  const child = fork(CLOCK);
  const next = <T>(): Promise<T> => new Promise((resolve) => child.once('message', (given) => resolve(given as T)));
  const { api } = await next<{ api: string }>();
  return {
    api,
    run: async (given) => {
      const ran = next<{ ran: Ran }>();
      child.send(given);
      return (await ran).ran;
    },
    end: () => child.disconnect(),
  };
}

interface Paces {
  /** Of the bot's process, ms an ask. */
  readonly cpu: number;
  readonly alone: readonly number[];
  readonly paced: readonly number[];
  readonly slowestAck: number;
}

async function pacesOf(clock: Clock, url: string, ask: Run['ask'], size: Size): Promise<Paces> {
  const count = size === 'quick' ? 50 : 500;
  const given = { url, secret: SECRET, ask };
  await clock.run({ ...given, count: 30 });
  const before = process.cpuUsage();
  const alone = await clock.run({ ...given, count });
  const { user, system } = process.cpuUsage(before);
  const paced = await clock.run({ ...given, count, perSecond: 50 });
  const cpu = (user + system) / 1000 / count;
  return { cpu, alone: alone.times, paced: paced.times, slowestAck: Math.max(alone.slowestAck, paced.slowestAck) };
}

/** A Bolt app with its own receiver that answers everything with one fixed text. */
async function measuredBare(clock: Clock, size: Size): Promise<Paces> {
  const receiver = new HTTPReceiver({ signingSecret: SECRET, logLevel: LogLevel.ERROR });
  const app = new App({
    token: 'xoxb-bare',
    receiver,
    logLevel: LogLevel.ERROR,
    clientOptions: { slackApiUrl: clock.api },
  });
  app.command(/./, async ({ ack, respond }) => {
    await ack();
    await respond({
      text: 'Seven feet.',
      response_type: 'ephemeral',
      blocks: [{ type: 'section', text: { type: 'plain_text', text: 'Seven feet.' } }],
    });
  });
  const port = await freePort();
  await app.start(port);
  const paces = await pacesOf(clock, `http://127.0.0.1:${port}/slack/events`, TAPE, size);
  await app.stop();
  return paces;
}

async function measuredBot(clock: Clock, size: Size, bare: Paces, folder: string): Promise<readonly Metric[]> {
  let faults = 0;
  // A rate limit of Slack's own is in the log, and no fault of ours.
  const limited = (cause: unknown): boolean => cause instanceof Error && cause.name === 'Limited';
  const fault = (cause: unknown): void => {
    if (!limited(cause)) faults += 1;
  };
  const store = openStore({ url: '', folder, fault });
  const { later, done } = lateWork();
  const wait = (milliseconds: number): Promise<void> => sleep(milliseconds, undefined, { ref: false });
  const ports: SlackParts = {
    answer: inTurn(
      (requested: Request) => answer(requested, commands, { fault: (_, cause) => fault(cause), store, later }),
      wait,
    ),
    commands,
    preferences: DEFAULT_PREFERENCES,
    kept: store.kept,
    shared: false,
    holds: async () => false,
    fault: (_reference, cause) => fault(cause),
    toPng,
    patience: () => new Promise(() => undefined),
    wait,
    now: Date.now,
  };
  const none = { appToken: '', clientId: '', clientSecret: '', stateSecret: '', key: '' };
  const app = await startSlack({ ...none, botToken: 'xoxb-bot', signingSecret: SECRET, api: clock.api }, ports);
  const server = await listen(routed(app.pages, fault), { host: '127.0.0.1', port: 0 });
  const url = `http://127.0.0.1:${server.port}/slack/events`;
  try {
    const tape = await pacesOf(clock, url, TAPE, size);
    const planks = await clock.run({ url, secret: SECRET, ask: PLANKS, count: size === 'quick' ? 10 : 60 });
    const crowd = size === 'quick' ? 10 : 60;
    const crowded = await clock.run({ url, secret: SECRET, ask: PLANKS, count: crowd, atOnce: crowd });
    const kept = await pacesOf(clock, url, sectionButton(planks.last), size);
    const direct = await pacesOf(clock, url, { direct: TAPE.slash }, size);
    const mention = await pacesOf(clock, url, { mention: TAPE.slash }, size);
    const plan = { press: 'section.plan', value: sectionButton(planks.last).value };
    const troubled = await besideFiles(clock, url, plan, size);
    const huge = await besideHuge(clock, url, size);
    const grown = await growth(clock, url, size);
    return [
      ...figures('tape', tape, bare),
      ...figures('section of a kept answer', kept, bare),
      ...figures('tape by direct message', direct),
      ...figures('tape in a mention', mention),
      ...troubled,
      ...huge,
      metric('slack', '12 x 14 ft planks with picture, ms, p50', percentile(planks.times, 0.5)),
      metric('slack', '12 x 14 ft planks with picture, ms, p95', percentile(planks.times, 0.95), { below: 300 }),
      metric('slack', 'slowest acknowledgement, ms', Math.max(tape.slowestAck, kept.slowestAck, planks.slowestAck), {
        below: 3000,
      }),
      metric('slack', `slowest acknowledgement of ${crowd} planks at once, ms`, crowded.slowestAck, { below: 3000 }),
      metric('slack', `memory grown over ${grown.asks} asks, MB`, grown.megabytes, { below: FLAT }),
      metric('slack', 'faults', faults, { below: 1 }),
    ];
  } finally {
    await app.stop();
    await server.close();
    await done();
    await store.close();
  }
}

/** Direct messages while pictures are on their way that Slack takes late, and then limits: neither keeps them waiting. */
async function besideFiles(
  clock: Clock,
  url: string,
  plan: { readonly press: string; readonly value: string },
  size: Size,
): Promise<readonly Metric[]> {
  const found: Metric[] = [];
  for (const files of ['late', 'limited'] as const) {
    const given = { url, secret: SECRET, files };
    const count = size === 'quick' ? 8 : 40;
    // One clock sends both: pictures first, and what is said while they are on their way.
    const ran = await clock.run({ ...given, ask: plan, count, atOnce: count, beside: { direct: TAPE.slash } });
    found.push(
      metric('slack', `pictures that Slack takes ${files}, ms, p50`, percentile(ran.times, 0.5)),
      metric('slack', `tape by direct message beside pictures taken ${files}, ms, p95`, percentile(ran.besides, 0.95), {
        below: 2000,
      }),
    );
  }
  return found;
}

/** Acknowledgements while three people ask for the largest floors, and the longest that the bot's main thread worked on end. */
async function besideHuge(clock: Clock, url: string, size: Size): Promise<readonly Metric[]> {
  const given = { url, secret: SECRET, strangers: true };
  // What is compiled once is no part of it.
  if (size === 'full') await clock.run({ ...given, ask: HUGE, count: 1 });
  const stretches = stretchesOfMain();
  const ran = await clock.run({ ...given, ask: HUGE, count: 3, atOnce: 3, beside: TAPE });
  const longest = stretches();
  return [
    metric('slack', 'three floors of 18,000 planks at once, ms, slowest', percentile(ran.times, 1)),
    metric('slack', 'acknowledgement beside them, ms, p50', percentile(ran.acksBeside, 0.5)),
    metric('slack', 'acknowledgement beside them, ms, slowest', percentile(ran.acksBeside, 1), { below: 500 }),
    ...(longest === undefined
      ? []
      : [metric('slack', 'longest stretch of the main thread, ms of processor', longest, { below: 500 })]),
  ];
}

/** Watches how much processor time the main thread takes from one turn of its loop to the next; undefined where the system does not tell. */
function stretchesOfMain(): () => number | undefined {
  const file = `/proc/self/task/${process.pid}/schedstat`;
  if (!existsSync(file)) return () => undefined;
  const used = (): number => Number(readFileSync(file, 'utf8').split(' ')[0]) / 1e6;
  let [longest, before] = [0, used()];
  const timer = setInterval(() => {
    const now = used();
    longest = Math.max(longest, now - before);
    before = now;
  }, 5);
  return () => {
    clearInterval(timer);
    return longest;
  };
}

/** A button that opens a section of an answer: its action, and the id that it carries. */
function sectionButton(message: Readonly<Record<string, unknown>>): { readonly press: string; readonly value: string } {
  const found = /"action_id":"(section\.safety)"[^}]*\}?[^}]*"value":"([\w-]+)"/.exec(JSON.stringify(message));
  const [, press, value] = found ?? [];
  if (press === undefined || value === undefined) throw new Error('an answer without a button for its safety');
  return { press, value };
}

/** p50 and p99 at both paces, and how they stand to the bare handler's. */
function figures(what: string, { cpu, alone, paced }: Paces, bare?: Paces): readonly Metric[] {
  const each = (name: string, times: readonly number[], to: readonly number[] | undefined): readonly Metric[] =>
    ([0.5, 0.99] as const).flatMap((share) => {
      const value = percentile(times, share);
      const called = `${what}, ${name}, p${share * 100}`;
      const own = metric('slack', `${called}, ms`, value);
      if (!to) return [own];
      return [own, metric('slack', `${called}, times the bare one`, value / percentile(to, share), { below: 1.5 })];
    });
  const own = metric('slack', `${what}, processor of the bot, ms an ask`, cpu);
  return [own, ...each('one at a time', alone, bare?.alone), ...each('50 a second', paced, bare?.paced)];
}

/** What the heap grows by over many asks of many people, once everything that is loaded once is loaded. */
async function growth(clock: Clock, url: string, size: Size): Promise<{ asks: number; megabytes: number }> {
  const asks = size === 'quick' ? 1_000 : 50_000;
  const given = { url, secret: SECRET, ask: TAPE, atOnce: 16, strangers: true };
  const sweep = collector();
  await clock.run({ ...given, count: asks / 5 });
  const before = sweep();
  await clock.run({ ...given, count: asks });
  return { asks, megabytes: (sweep() - before) / 1024 ** 2 };
}

/** Bytes in use after everything unused is collected. */
function collector(): () => number {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  return () => {
    collect();
    collect();
    return process.memoryUsage().heapUsed;
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
