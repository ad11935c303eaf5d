/** Discord on the loopback through the real client: interaction out to answer in, against a bare handler with a fixed text; memory. */

import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Client, Events, MessageFlags } from 'discord.js';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { lateWork, type Request } from '../../src/chat/ports.ts';
import { inTurn } from '../../src/chat/rate-limit.ts';
import { closePictures, toPng } from '../../src/drawing/png.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { startDiscord } from '../../src/platforms/discord/start.ts';
import { openStore } from '../../src/storage/store.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import type { Ran, Run } from './discord-clock.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';

const CLOCK = fileURLToPath(new URL('./discord-clock.js', import.meta.url));
const TAPE = { slash: 'tape', given: { sum: `15'2 1/2" - 2 x 4'0 3/8"` } } as const;
const PLANKS = { slash: 'floor planks', given: { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' } } as const;
/** Memory may grow so much over the long run before it counts as growing, MB. */
const FLAT = 30;

export const discord: Bench = {
  name: 'discord',
  async run(size) {
    const bare = await measuredBare(size);
    const folder = mkdtempSync(join(tmpdir(), 'floorhand-bench-'));
    try {
      return [...figures('bare handler', bare), ...(await measuredBot(size, bare, folder))];
    } finally {
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

/** One process that is Discord. */
async function clockProcess(): Promise<Clock> {
  const child = fork(CLOCK);
  const next = <T>(): Promise<T> => new Promise((resolve) => child.once('message', (given) => resolve(given as T)));
  const { api } = await next<{ api: string }>();
  const run = async (given: Run): Promise<Ran> => {
    const ran = next<{ ran: Ran }>();
    child.send(given);
    return (await ran).ran;
  };
  return { api, run, end: () => child.disconnect() };
}

interface Paces {
  /** Of the bot's process, ms an ask. */
  readonly cpu: number;
  readonly alone: readonly number[];
  readonly paced: readonly number[];
}

async function pacesOf(clock: Clock, ask: Run['ask'], size: Size): Promise<Paces> {
  const count = size === 'quick' ? 60 : 500;
  await clock.run({ ask, count: 30 });
  const before = process.cpuUsage();
  const alone = (await clock.run({ ask, count })).times;
  const { user, system } = process.cpuUsage(before);
  return { cpu: (user + system) / 1000 / count, alone, paced: (await clock.run({ ask, count, perSecond: 50 })).times };
}

/** A client that answers everything with one fixed text. */
async function measuredBare(size: Size): Promise<Paces> {
  const clock = await clockProcess();
  const client = new Client({ intents: [], rest: { api: clock.api } });
  client.on(Events.InteractionCreate, (interaction) => {
    if (interaction.isRepliable()) void interaction.reply({ content: '7\' 1 3/4"', flags: MessageFlags.Ephemeral });
  });
  const ready = new Promise((resolve) => client.once(Events.ClientReady, resolve));
  await client.login('secret');
  await ready;
  const paces = await pacesOf(clock, TAPE, size);
  await client.destroy();
  clock.end();
  return paces;
}

async function measuredBot(size: Size, bare: Paces, folder: string): Promise<readonly Metric[]> {
  const clock = await clockProcess();
  const fault = (reference: string, cause: unknown): void => {
    process.stderr.write(`fault ${reference}: ${String(cause)}\n`);
  };
  const store = openStore({ url: '', folder, fault: (cause) => fault('store', cause) });
  const { later, done } = lateWork();
  const wait = (milliseconds: number): Promise<void> => sleep(milliseconds, undefined, { ref: false });
  const running = await startDiscord(
    { token: 'secret', api: clock.api },
    {
      answer: inTurn((requested: Request) => answer(requested, commands, { fault, store, later }), wait),
      commands,
      preferences: DEFAULT_PREFERENCES,
      kept: store.kept,
      fault,
      toPng,
      suggest: async () => [],
    },
  );
  await new Promise((resolve) => setTimeout(resolve, 500));
  const tape = await pacesOf(clock, TAPE, size);
  const planks = await clock.run({ ask: PLANKS, count: size === 'quick' ? 10 : 60 });
  const safety = planks.buttons.find(({ label }) => label === 'Safety');
  const kept = await pacesOf(clock, { press: safety?.id ?? '' }, size);
  const plan = planks.buttons.find(({ label }) => label === 'Plan');
  const drawn = await clock.run({ ask: { press: plan?.id ?? '' }, count: size === 'quick' ? 10 : 60 });
  const memory = await memoryOver(clock, size);
  await running.close();
  clock.end();
  await done();
  await store.close();
  return [
    ...against('tape', tape, bare),
    ...against('kept answer', kept, bare),
    metric('discord', 'planks 12 x 14 ft in short: ms, p50', percentile(planks.times, 0.5)),
    metric('discord', 'planks 12 x 14 ft in short: ms, p95', percentile(planks.times, 0.95), { below: 300 }),
    metric('discord', 'plan of 12 x 14 ft opened: ms, p50', percentile(drawn.times, 0.5)),
    metric('discord', 'plan of 12 x 14 ft opened: pictures sent', drawn.files, { atLeast: 1 }),
    ...memory,
  ];
}

function figures(name: string, { cpu, alone, paced }: Paces): readonly Metric[] {
  return [
    metric('discord', `${name}: processor, ms an ask`, cpu),
    metric('discord', `${name}: ms, p50`, percentile(alone, 0.5)),
    metric('discord', `${name}: ms, p99`, percentile(alone, 0.99)),
    metric('discord', `${name}: ms at 50 a second, p50`, percentile(paced, 0.5)),
    metric('discord', `${name}: ms at 50 a second, p99`, percentile(paced, 0.99)),
  ];
}

function against(name: string, found: Paces, bare: Paces): readonly Metric[] {
  const ratio = (share: number, of: 'alone' | 'paced') => percentile(found[of], share) / percentile(bare[of], share);
  return [
    ...figures(name, found),
    metric('discord', `${name}: p50 to bare handler`, ratio(0.5, 'alone'), { below: 1.5 }),
    metric('discord', `${name}: p99 to bare handler`, ratio(0.99, 'alone')),
    metric('discord', `${name}: p50 to bare handler at 50 a second`, ratio(0.5, 'paced'), { below: 1.5 }),
    metric('discord', `${name}: p99 to bare handler at 50 a second`, ratio(0.99, 'paced')),
  ];
}

/** Used memory after collecting, early and late in a long run of asks from as many people. */
async function memoryOver(clock: Clock, size: Size): Promise<readonly Metric[]> {
  setFlagsFromString('--expose_gc');
  const collect: unknown = runInNewContext('gc');
  const used = (): number => {
    if (typeof collect === 'function') for (let i = 0; i < 3; i++) collect();
    return process.memoryUsage().heapUsed / 1e6;
  };
  const count = size === 'quick' ? 500 : 50_000;
  await clock.run({ ask: TAPE, count: count / 10, atOnce: 20, strangers: true });
  const early = used();
  await clock.run({ ask: TAPE, count: (count * 9) / 10, atOnce: 20, strangers: true });
  return [metric('discord', `heap grown from ${count / 10} to ${count} asks, MB`, used() - early, { below: FLAT })];
}
